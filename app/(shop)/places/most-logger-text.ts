/** So many characters of a logger's lines are taken at once: about ten thousand lines. */
export const MOST_LOGGER_TEXT = 400_000;
