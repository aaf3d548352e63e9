/** How long a writer waits for its turn before the book is said to be busy, milliseconds. */
export const WAIT_MS = 20_000;
