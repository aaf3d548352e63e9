import { readBook } from '@/app/_server/book/read-book';
import { theBook } from '@/app/_server/book/the-book';
import type { Refusal } from '@/app/_server/refusal';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import type { Problem } from '@/shared/result/answer';

/** A refusal of the book that is served, in its own order of dates. */
export async function problemOfRefusal(refusal: Refusal): Promise<Problem> {
  const head = await readBook(await theBook(), new Date());
  return sayRefusal(refusal, head?.dateOrder);
}
