import { LONGEST_PHOTO_SIDE, MOST_PHOTO_BYTES, MOST_PHOTO_PIXELS, sayPhotoSize } from '@/shared/photos/photo-limits';
import { err, type Result } from '@/shared/result/result';
import { type ImageSize, readImageSize } from './image-size';

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

/** {@link judgePhoto} of a file as it was chosen: reads its beginning only, however large it is. */
export async function judgePhotoFile(file: Blob): Promise<Result<ImageSize, PhotoRefusal>> {
  return judgePhoto(file.size, new Uint8Array(await file.slice(0, 2 * 1024 * 1024).arrayBuffer()));
}

/** What to tell the person about a refused photo, and what to do. `instead`: what could be done without any photo. */
export function photoRefusalWords(refusal: PhotoRefusal, instead?: string): string {
  const or = instead ? `, or ${instead}` : '';
  switch (refusal.code) {
    case 'empty':
      return `That file is empty. Take the photo again${or}.`;
    case 'not-an-image':
      return `That file is not a picture we can open. Choose a JPEG, PNG, WebP or GIF photo${or}.`;
    case 'unreadable-header':
      return `That picture is damaged: its size cannot be read. Take the photo again${or}.`;
    case 'too-many-bytes':
      return `That photo is ${sayPhotoSize(refusal.bytes)}. The most is ${sayPhotoSize(MOST_PHOTO_BYTES)}. Take it with a smaller size setting, or crop it.`;
    case 'too-many-pixels':
      return `That photo is ${refusal.width} × ${refusal.height} pixels. The most is ${MOST_PHOTO_PIXELS / 1e6} million, ${LONGEST_PHOTO_SIDE} on a side. Crop it, or take it with a smaller size setting.`;
  }
}
