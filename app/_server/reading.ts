import { unstable_rethrow } from 'next/navigation';
import { problemOfError } from '@/app/_server/words/problem-of-error';
import type { Problem } from '@/shared/result/answer';

export type Reading<A> = { ok: true; answer: A } | { ok: false; problem: Problem };

/** A read for a screen: its answer, or in words why there is none. An error that left the server would come without them. */
export async function reading<A>(read: () => Promise<A>): Promise<Reading<A>> {
  try {
    return { ok: true, answer: await read() };
  } catch (error) {
    // The way to another page, where there is no book yet, goes on.
    unstable_rethrow(error);
    return { ok: false, problem: problemOfError(error) };
  }
}
