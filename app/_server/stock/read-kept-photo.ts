import fs from 'node:fs/promises';
import path from 'node:path';
import { bookFiles } from '@/prisma/book-files';

/** As `receivePhoto` names them; anything else is not a photo of the book, whatever is in the folder. */
const KEPT_NAME = /^[0-9a-f-]{32,36}\.jpg$/;

/** A photo of the book by its file name, or undefined where the book has none of that name. */
export async function readKeptPhoto(file: string): Promise<Buffer<ArrayBuffer> | undefined> {
  if (!KEPT_NAME.test(file)) return undefined;
  try {
    return await fs.readFile(path.join(bookFiles().photos, file));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw error;
  }
}
