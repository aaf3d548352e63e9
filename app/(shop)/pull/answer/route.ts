import type { NextRequest } from 'next/server';
import { theBook } from '@/app/_server/book/the-book';
import { statusOfTrouble } from '@/app/_server/http/answer-json';
import { type PullReply, scanToPull } from '@/app/_server/pull/scan-to-pull';
import { problemOfError } from '@/app/_server/words/problem-of-error';
import { problemOfRefusal } from '@/app/_server/words/problem-of-refusal';
import { pullQuerySchema } from '@/app/(shop)/pull/schema';
import type { Problem } from '@/shared/result/answer';

/** What `/pull/answer` says: the reply to a scan, or why there is none. */
export type PullAnswered = { ok: true; reply: PullReply } | { ok: false; problem: Problem };

/**
 * The answer to a scan, for a job and a day. A read, so a plain address and not an action: it can be given up on when the
 * network hangs, and asking again waits for nothing.
 */
export async function GET(request: NextRequest): Promise<Response> {
  const query = pullQuerySchema.safeParse(Object.fromEntries(request.nextUrl.searchParams));
  if (!query.success) {
    const what = query.error.issues[0]?.message ?? 'The question does not fit.';
    return said(400, {
      ok: false,
      problem: { code: 'form', what, kept: 'Nothing was written.', todo: 'Scan it again.' },
    });
  }
  try {
    const reply = await scanToPull(await theBook(), query.data, new Date());
    return said(
      200,
      reply.ok ? { ok: true, reply: reply.value } : { ok: false, problem: await problemOfRefusal(reply.error) },
    );
  } catch (error) {
    const problem = { ...problemOfError(error), kept: 'Nothing was written. What you scanned is still here.' };
    return said(statusOfTrouble(problem) ?? 500, { ok: false, problem });
  }
}

function said(status: number, answered: PullAnswered): Response {
  return Response.json(answered, { status, headers: { 'Cache-Control': 'no-store' } });
}
