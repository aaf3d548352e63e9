/** The largest picture file that is taken in, bytes: beyond what a phone's camera writes. */
export const MOST_PHOTO_BYTES = 30 * 1024 * 1024;
/** The most a picture may unpack to, pixels: beyond any phone's camera, and far below what fills a small server's memory. */
export const MOST_PHOTO_PIXELS = 50_000_000;
