import type { Command } from '@/app/_server/act';
import { readBook } from '@/app/_server/book/read-book';
import { makeDemo } from '@/app/_server/demo/make-demo';
import { err, ok } from '@/shared/result/result';

// On globalThis because the server may load this module once a bundle; two presses must not lay out two demos into one book.
const holder = globalThis as { flitchbookDemo?: Promise<void> };

/** Begins a book with the demo workshop. Refused when there is a book already; a second press waits for the first. */
export const beginDemo: Command<object, { name: string }> = async (book, by) => {
  const joined = holder.flitchbookDemo !== undefined;
  if (!joined && (await readBook(book, by.now))) return err({ code: 'book-already-there' });
  holder.flitchbookDemo ??= makeDemo(book, by.now).finally(() => {
    holder.flitchbookDemo = undefined;
  });
  await holder.flitchbookDemo;
  const head = await readBook(book, by.now);
  return head ? ok({ answer: { name: head.name }, replayed: joined }) : err({ code: 'no-book-yet' });
};
