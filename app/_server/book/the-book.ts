import { bookFiles } from '@/prisma/book-files';
import { type OpenBook, openBook } from '@/prisma/open-book';
import { appliedMigrations, NewerBookError } from '@/prisma/prepare-book';
import { migrationNames } from '@/prisma/schema-engine';

// On globalThis because the server may load this module once a bundle, and two writing connections in one process
// would wait for each other with the event loop stopped.
const holder = globalThis as { flitchbookStore?: Promise<OpenBook> };

/** The book this server serves, opened once. Throws when it is from a newer version or cannot be opened. */
export function theBook(): Promise<OpenBook> {
  holder.flitchbookStore ??= openChecked().catch((error: unknown) => {
    holder.flitchbookStore = undefined;
    throw error;
  });
  return holder.flitchbookStore;
}

async function openChecked(): Promise<OpenBook> {
  const files = bookFiles();
  const known = migrationNames();
  const unknown = appliedMigrations(files.database).filter((name) => !known.includes(name));
  if (unknown.length) throw new NewerBookError(unknown);
  return openBook(files);
}
