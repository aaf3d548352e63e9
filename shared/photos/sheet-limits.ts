/** The largest data sheet that is taken in, bytes: far above any maker's PDF. Included. */
export const MOST_SHEET_BYTES = 15 * 1024 * 1024;
