import { bookFiles } from '@/prisma/book-files';
import { checkVersion } from '@/prisma/check-version';
import { type OpenBook, openBook } from '@/prisma/open-book';

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
  await checkVersion(files);
  return openBook(files);
}
