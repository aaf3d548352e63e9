import fs from 'node:fs/promises';
import path from 'node:path';
import { bookFiles } from '@/prisma/book-files';

/** As `receiveSheet` names them; anything else is not a sheet of the book, whatever is in the folder. */
const KEPT_NAME = /^[0-9a-f]{32}\.(pdf|png|jpg)$/;
const TYPES: Record<string, string> = { pdf: 'application/pdf', png: 'image/png', jpg: 'image/jpeg' };

/** A data sheet of the book by its file name, with what it is, or undefined where the book has none of that name. */
export async function readKeptSheet(file: string): Promise<{ bytes: Buffer<ArrayBuffer>; type: string } | undefined> {
  const type = TYPES[KEPT_NAME.exec(file)?.[1] ?? ''];
  if (type === undefined) return undefined;
  try {
    return { bytes: await fs.readFile(path.join(bookFiles().sheets, file)), type };
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw error;
  }
}
