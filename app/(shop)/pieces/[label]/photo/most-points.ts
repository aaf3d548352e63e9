/** More points round one line than anybody taps; each costs the server work. */
export const MOST_POINTS = 300;
/** More gaps than a slab has that is still one piece. */
export const MOST_GAPS = 10;
