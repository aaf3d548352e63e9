/** How many things come into the book in one act, and so how many labels one print must hold: more is a slip of a finger. */
export const MOST_AT_ONCE = 500;
