import { randomUUID } from 'node:crypto';
import fs from 'node:fs/promises';
import path from 'node:path';
import type { OutputInfo } from 'sharp';
import type { KeptPhoto } from '@/app/_server/stock/keep-photo';
import { bookFiles } from '@/prisma/book-files';

/** Keeps a JPEG with the book, under a name never used before. */
export async function writePhotoFile(
  { data, info }: { data: Buffer; info: OutputInfo },
  caption: string,
): Promise<KeptPhoto> {
  const file = `${randomUUID().replaceAll('-', '')}.jpg`;
  const folder = bookFiles().photos;
  await fs.mkdir(folder, { recursive: true });
  // Written beside and renamed, so a full disk leaves no half picture under a good name.
  const partial = path.join(folder, `${randomUUID()}.part`);
  try {
    await fs.writeFile(partial, data, { flush: true });
    await fs.rename(partial, path.join(folder, file));
  } catch (error) {
    await fs.rm(partial, { force: true });
    throw error;
  }
  return { file, width: info.width, height: info.height, bytes: data.length, caption: caption.trim().slice(0, 200) };
}
