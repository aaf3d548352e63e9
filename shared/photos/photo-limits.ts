/** The largest picture file that is taken in, bytes: beyond what a phone's camera writes. Included. */
export const MOST_PHOTO_BYTES = 30 * 1024 * 1024;
/**
 * The most a picture may unpack to, pixels: above the 48 million of a phone's largest photo, and far below what fills a
 * small server's memory. Included.
 */
export const MOST_PHOTO_PIXELS = 50_000_000;
/** The longest side of a picture, pixels: what a browser's canvas is sure to hold. Included. */
export const LONGEST_PHOTO_SIDE = 16_384;

/** The shorter side a photo must have to be measured by, pixels: below it two pixels are too much of a slab. Included. */
export const LEAST_MEASURED_SIDE = 600;

/**
 * A file's size for a sentence beside the limit: megabytes of 1024 × 1024 bytes, rounded up to a tenth, so that what is
 * over the limit never reads as the limit itself.
 * Example: one byte over 30 MB → `30.1 MB`; 30 MB → `30 MB`.
 */
export function sayPhotoSize(bytes: number): string {
  return `${Math.ceil((bytes / 1024 / 1024) * 10) / 10} MB`;
}
