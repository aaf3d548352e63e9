'use server';

import { bookForPage } from '@/app/_server/book/book-for-page';
import { type Reading, reading } from '@/app/_server/reading';
import { findSchema } from '@/app/(shop)/on-hand/schema';
import { readShelf, type Shelf } from '@/app/(shop)/on-hand/shelf';

/** What is on the shelf for a search, or the page of it after the last one shown. */
export async function findOnHand(input: unknown): Promise<Reading<Shelf>> {
  return reading(async () => {
    const { after, ...ask } = findSchema.parse(input);
    const { book, head } = await bookForPage();
    return readShelf(book, head, ask, after);
  });
}
