import sharp from 'sharp';
import type { Refusal } from '@/app/_server/refusal';
import { judgeUpload, OPENED, refusedUnpacked } from '@/app/_server/stock/judge-upload';
import type { KeptPhoto } from '@/app/_server/stock/keep-photo';
import { writePhotoFile } from '@/app/_server/stock/write-photo-file';
import { ok, type Result } from '@/shared/result/result';

const KEPT_SIDE = 2048;

/**
 * Checks an uploaded picture, strips what the camera wrote into it (place, time, owner), brings it to at most 2048 px
 * and keeps it with the book, under a name never used before. Call it through `withPhoto`: a file that no entry
 * names is in nobody's way and nobody's book.
 */
export async function receivePhoto(upload: Buffer, caption: string): Promise<Result<KeptPhoto, Refusal>> {
  const judged = await judgeUpload(upload);
  if (!judged.ok) return judged;
  const kept = await sharp(upload, OPENED)
    .rotate()
    .resize(KEPT_SIDE, KEPT_SIDE, { fit: 'inside', withoutEnlargement: true })
    .jpeg({ quality: 82, mozjpeg: true })
    .toBuffer({ resolveWithObject: true })
    .catch(() => undefined);
  return kept ? ok(await writePhotoFile(kept, caption)) : refusedUnpacked(judged.value);
}
