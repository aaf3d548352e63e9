import type { NextRequest } from 'next/server';
import { theBook } from '@/app/_server/book/the-book';
import { onHand } from '@/app/_server/find/on-hand';
import { answerReading, badQuestion } from '@/app/_server/http/answer-json';
import { onHandQuery } from '@/app/api/on-hand/schema';
import { ok } from '@/shared/result/result';

/**
 * A page of what is on hand: `/api/on-hand?q=hardwax&show=materials`.
 *
 * `q` is what is searched for (everything without it), `show` materials or wood, `empty=1` also what is used up, `after`
 * the `next` of the page before. Answers `{ok:true,answer}`. Writes nothing.
 */
export async function GET(request: NextRequest): Promise<Response> {
  const query = onHandQuery.safeParse(Object.fromEntries(request.nextUrl.searchParams));
  if (!query.success) return badQuestion(query.error);
  const { q, show, after, empty } = query.data;
  return answerReading(async () =>
    ok(await onHand(await theBook(), { query: q, show, after, withEmpty: empty === '1' })),
  );
}
