import { type Proof, proveBook } from '@/app/_server/ledger/prove-book';
import { bookFiles } from '@/prisma/book-files';
import { openBook } from '@/prisma/open-book';

// On globalThis because the server may load this module once a bundle; a proof reads the whole book, so one runs at a time.
const holder = globalThis as { flitchbookProof?: Promise<Proof> };

/**
 * Checks the book as it stands at this moment. On a connection and in a transaction of its own: what is written meanwhile
 * is neither held up nor half seen. Whoever asks while one runs gets that one's answer.
 */
export function proveNow(): Promise<Proof> {
  holder.flitchbookProof ??= prove().finally(() => {
    holder.flitchbookProof = undefined;
  });
  return holder.flitchbookProof;
}

async function prove(): Promise<Proof> {
  const files = bookFiles();
  const book = await openBook(files);
  try {
    return await book.snapshot((tx) => proveBook(tx, files.photos, files.sheets), { timeout: 600_000 });
  } finally {
    await book.close();
  }
}
