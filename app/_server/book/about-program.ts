import path from 'node:path';
import program from '@/package.json';
import { bookFiles } from '@/prisma/book-files';

/** The program's version, and the name of the folder the book is in. Only its name: where it lies is the server's own matter. */
export function aboutProgram(): { version: string; folder: string } {
  return { version: program.version, folder: path.basename(bookFiles().folder) };
}
