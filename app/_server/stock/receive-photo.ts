import { randomUUID } from 'node:crypto';
import fs from 'node:fs/promises';
import path from 'node:path';
import sharp, { type OutputInfo } from 'sharp';
import type { Refusal } from '@/app/_server/refusal';
import type { KeptPhoto } from '@/app/_server/stock/keep-photo';
import { bookFiles } from '@/prisma/book-files';
import { MOST_PHOTO_BYTES, MOST_PHOTO_PIXELS, sayPhotoSize } from '@/shared/photos/photo-limits';
import { err, ok, type Result } from '@/shared/result/result';

const KEPT_SIDE = 2048;
/** What cameras and phones write. The decoder reads more, drawings and documents among it, and those have no business here. */
const TAKEN = ['jpeg', 'png', 'webp', 'gif', 'heif'];

/**
 * Checks an uploaded picture, strips what the camera wrote into it (place, time, owner), brings it to at most 2048 px
 * and keeps it with the book, under a name never used before. The size is read from the header first, so a small file
 * that would unpack to a huge picture is refused before it is unpacked. Call it through `withPhoto`: a file that no entry
 * names is in nobody's way and nobody's book.
 */
export async function receivePhoto(upload: Buffer, caption: string): Promise<Result<KeptPhoto, Refusal>> {
  if (upload.length > MOST_PHOTO_BYTES) {
    return err({
      code: 'photo-too-large',
      field: 'photo',
      facts: { size: sayPhotoSize(upload.length), most: sayPhotoSize(MOST_PHOTO_BYTES) },
    });
  }
  const options = { limitInputPixels: MOST_PHOTO_PIXELS, failOn: 'error' as const };
  let pixels = 0;
  let format = '';
  try {
    const head = await sharp(upload, { ...options, limitInputPixels: false }).metadata();
    format = head.format;
    pixels = (head.width ?? 0) * (head.height ?? 0) * (head.pages ?? 1);
  } catch {
    return err({ code: 'photo-not-an-image', field: 'photo' });
  }
  if (!TAKEN.includes(format)) return err({ code: 'photo-not-an-image', field: 'photo' });
  if (pixels > MOST_PHOTO_PIXELS) {
    return err({
      code: 'photo-too-many-pixels',
      field: 'photo',
      facts: { megapixels: Math.round(pixels / 1e6), most: MOST_PHOTO_PIXELS / 1e6 },
    });
  }
  let kept: { data: Buffer; info: OutputInfo };
  try {
    kept = await sharp(upload, options)
      .rotate()
      .resize(KEPT_SIDE, KEPT_SIDE, { fit: 'inside', withoutEnlargement: true })
      .jpeg({ quality: 82, mozjpeg: true })
      .toBuffer({ resolveWithObject: true });
  } catch {
    return err({ code: format === 'heif' ? 'photo-heic-unreadable' : 'photo-not-an-image', field: 'photo' });
  }
  const file = `${randomUUID().replaceAll('-', '')}.jpg`;
  const folder = bookFiles().photos;
  await fs.mkdir(folder, { recursive: true });
  // Written beside and renamed, so a full disk leaves no half picture under a good name.
  const partial = path.join(folder, `${randomUUID()}.part`);
  try {
    await fs.writeFile(partial, kept.data, { flush: true });
    await fs.rename(partial, path.join(folder, file));
  } catch (error) {
    await fs.rm(partial, { force: true });
    throw error;
  }
  return ok({
    file,
    width: kept.info.width,
    height: kept.info.height,
    bytes: kept.data.length,
    caption: caption.trim().slice(0, 200),
  });
}
