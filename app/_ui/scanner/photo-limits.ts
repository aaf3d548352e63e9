import { err, type Result } from '@/shared/result/result';
import { type ImageSize, readImageSize } from './image-size';

export const MOST_PHOTO_BYTES = 30 * 1024 * 1024;
export const MOST_PHOTO_PIXELS = 40_000_000;
/** The longest side a browser's canvas is sure to hold. */
const LONGEST_PHOTO_SIDE = 16_384;

export type PhotoRefusal =
  | { readonly code: 'empty' }
  | { readonly code: 'not-an-image' }
  | { readonly code: 'unreadable-header' }
  | { readonly code: 'too-many-bytes'; readonly bytes: number }
  | { readonly code: 'too-many-pixels'; readonly width: number; readonly height: number };

/**
 * Whether a chosen file may be opened as a picture: at most {@link MOST_PHOTO_BYTES} and {@link MOST_PHOTO_PIXELS}, both
 * bounds included, judged by its header before anything is unpacked.
 */
export function judgePhoto(byteCount: number, header: Uint8Array): Result<ImageSize, PhotoRefusal> {
  if (byteCount === 0) return err({ code: 'empty' });
  if (byteCount > MOST_PHOTO_BYTES) return err({ code: 'too-many-bytes', bytes: byteCount });
  const size = readImageSize(header);
  if (!size.ok) return err({ code: size.error.code });
  const { width, height } = size.value;
  if (width * height > MOST_PHOTO_PIXELS || Math.max(width, height) > LONGEST_PHOTO_SIDE) {
    return err({ code: 'too-many-pixels', width, height });
  }
  return size;
}

/** What to tell the person about a refused photo, and what to do. */
export function photoRefusalWords(refusal: PhotoRefusal): string {
  switch (refusal.code) {
    case 'empty':
      return 'That file is empty. Take the photo again, or type the code.';
    case 'not-an-image':
      return 'That file is not a picture we can open. Choose a JPEG, PNG, WebP or GIF photo, or type the code.';
    case 'unreadable-header':
      return 'That picture is damaged: its size cannot be read. Take the photo again, or type the code.';
    case 'too-many-bytes':
      return `That photo is ${(refusal.bytes / 1024 / 1024).toFixed(1)} MB. The most is 30 MB. Take it with a smaller size setting, or crop it to the label.`;
    case 'too-many-pixels':
      return `That photo is ${refusal.width} × ${refusal.height} pixels. The most is 40 million, ${LONGEST_PHOTO_SIDE} on a side. Crop it to the label.`;
  }
}
