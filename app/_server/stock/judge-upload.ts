import sharp from 'sharp';
import type { Refusal } from '@/app/_server/refusal';
import { MOST_PHOTO_BYTES, MOST_PHOTO_PIXELS, sayPhotoSize } from '@/shared/photos/photo-limits';
import { err, ok, type Result } from '@/shared/result/result';

/** What cameras and phones write. The decoder reads more, drawings and documents among it, and those have no business here. */
const TAKEN = ['jpeg', 'png', 'webp', 'gif', 'heif'];

/** How an upload that was judged is to be opened. */
export const OPENED = { limitInputPixels: MOST_PHOTO_PIXELS, failOn: 'error' as const };

/** A picture's format, and its size as it is held upright. */
export type JudgedUpload = { format: string; width: number; height: number };

/**
 * Whether an upload may be unpacked as a picture. Its size is read from the header, so a small file that would unpack to a
 * huge picture is refused before it is unpacked.
 */
export async function judgeUpload(upload: Buffer): Promise<Result<JudgedUpload, Refusal>> {
  if (upload.length > MOST_PHOTO_BYTES) {
    return err({
      code: 'photo-too-large',
      field: 'photo',
      facts: { size: sayPhotoSize(upload.length), most: sayPhotoSize(MOST_PHOTO_BYTES) },
    });
  }
  if (upload.length === 0) return err({ code: 'photo-not-an-image', field: 'photo' });
  const head = await sharp(upload, { ...OPENED, limitInputPixels: false })
    .metadata()
    .catch(() => undefined);
  if (!head || !TAKEN.includes(head.format)) return err({ code: 'photo-not-an-image', field: 'photo' });
  const pixels = (head.width ?? 0) * (head.height ?? 0) * (head.pages ?? 1);
  if (pixels > MOST_PHOTO_PIXELS) {
    return err({
      code: 'photo-too-many-pixels',
      field: 'photo',
      facts: { megapixels: Math.round(pixels / 1e6), most: MOST_PHOTO_PIXELS / 1e6 },
    });
  }
  return ok({ format: head.format, ...head.autoOrient });
}

/** Why a picture whose header was good could not be unpacked. */
export function refusedUnpacked({ format }: JudgedUpload): Result<never, Refusal> {
  return err({ code: format === 'heif' ? 'photo-heic-unreadable' : 'photo-not-an-image', field: 'photo' });
}
