import { appliedInFile } from '@/prisma/applied-in-file';
import { appliedOnServer } from '@/prisma/applied-on-server';
import type { BookFiles } from '@/prisma/book-files';
import { migrationNames } from '@/prisma/migration-names';

/** The book on disk was written by a later version of this program. */
export class NewerBookError extends Error {
  constructor(readonly unknownMigrations: string[]) {
    super(`The book knows migrations this version does not: ${unknownMigrations.join(', ')}`);
  }
}

/**
 * Which of this version's migrations a book has taken, and which it lacks; all, where there is no book.
 * Throws NewerBookError when it has taken one this version does not know, NotABookError when it is another program's.
 */
export async function checkVersion(files: BookFiles): Promise<{ applied: string[]; missing: string[] }> {
  const { postgresql, database } = files;
  const applied = postgresql === undefined ? appliedInFile(database) : await appliedOnServer(postgresql);
  const known = migrationNames(postgresql === undefined ? 'sqlite' : 'postgresql');
  const unknown = applied.filter((name) => !known.includes(name));
  if (unknown.length) throw new NewerBookError(unknown);
  return { applied, missing: known.filter((name) => !applied.includes(name)) };
}
