import sharp from 'sharp';
import type { KeptPhoto } from '@/app/_server/stock/keep-photo';
import { receivePhoto } from '@/app/_server/stock/receive-photo';
import { unwrap } from '@/shared/result/result';

/** Keeps a drawing as if somebody had photographed it. */
export async function keepDrawing(svg: string, caption: string): Promise<KeptPhoto> {
  return unwrap(await receivePhoto(await sharp(Buffer.from(svg)).jpeg({ quality: 90 }).toBuffer(), caption));
}
