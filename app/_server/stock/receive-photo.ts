import { createHash, randomUUID } from 'node:crypto';
import fs from 'node:fs/promises';
import path from 'node:path';
import sharp, { type OutputInfo } from 'sharp';
import type { Refusal } from '@/app/_server/refusal';
import type { KeptPhoto } from '@/app/_server/stock/keep-photo';
import { bookFiles } from '@/prisma/book-files';
import { MOST_PHOTO_BYTES, MOST_PHOTO_PIXELS } from '@/shared/photos/photo-limits';
import { err, ok, type Result } from '@/shared/result/result';

const KEPT_SIDE = 2048;

/**
 * Checks an uploaded picture, strips what the camera wrote into it (place, time, owner), brings it to at most 2048 px
 * and keeps it with the book. The size is read from the header first, so a small file that would unpack to a huge
 * picture is refused before it is unpacked. Given the key of the press it came with, the same picture pressed again is
 * the same file, so that the second press is known for the first.
 */
export async function receivePhoto(upload: Buffer, caption: string, key?: string): Promise<Result<KeptPhoto, Refusal>> {
  if (upload.length > MOST_PHOTO_BYTES) {
    return err({
      code: 'photo-too-large',
      field: 'photo',
      facts: { megabytes: Math.round(upload.length / 1e6), most: 30 },
    });
  }
  const options = { limitInputPixels: MOST_PHOTO_PIXELS, failOn: 'error' as const };
  let pixels = 0;
  try {
    const head = await sharp(upload, { ...options, limitInputPixels: false }).metadata();
    pixels = (head.width ?? 0) * (head.height ?? 0) * (head.pages ?? 1);
  } catch {
    return err({ code: 'photo-not-an-image', field: 'photo' });
  }
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
    return err({ code: 'photo-not-an-image', field: 'photo' });
  }
  const file = `${key === undefined ? randomUUID() : createHash('sha256').update(key).update('/').update(upload).digest('hex').slice(0, 32)}.jpg`;
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
