'use server';

import { act } from '@/app/_server/act';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { history } from '@/app/_server/ledger/history';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { type SaidEntry, sayEntry } from '@/app/(shop)/_parts/history/say-entry';
import { olderSchema, reverseSchema } from '@/app/(shop)/_parts/history/schema';

/** The entries before one, in words. */
export async function olderEntries(input: unknown): Promise<{ entries: SaidEntry[]; more: boolean }> {
  const { of, before } = olderSchema.parse(input);
  const { book, head } = await bookForPage();
  const page = await history(book, of, before);
  const context = { timeZone: head.timeZone, today: head.today, order: head.dateOrder, prefer: head.units };
  return { entries: page.entries.map((entry) => sayEntry(entry, context)), more: page.more };
}

export async function reverseAction(key: string, input: unknown) {
  return act(reverseSchema, key, input, reverseEntry);
}
