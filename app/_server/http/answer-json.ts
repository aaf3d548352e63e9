import type { z } from 'zod';
import type { Refusal } from '@/app/_server/refusal';
import { problemOfError } from '@/app/_server/words/problem-of-error';
import { problemOfRefusal } from '@/app/_server/words/problem-of-refusal';
import { isStoreTrouble } from '@/prisma/store-trouble';
import type { Answer, Problem } from '@/shared/result/answer';
import type { Result } from '@/shared/result/result';

const NO_STORE = { headers: { 'Cache-Control': 'private, no-store' } };
const NO_SUCH: readonly Refusal['code'][] = ['not-found', 'no-book-yet'];

/**
 * A read's answer as JSON: `{ok:true,answer}`, or 404 and 422 with the problem in words; trouble of the store as 503,
 * anything nobody expected as 500.
 */
export async function answerReading<A>(read: () => Promise<Result<A, Refusal>>): Promise<Response> {
  try {
    return await answerRead(await read());
  } catch (error) {
    const problem = problemOfError(error);
    return problemJson(statusOfTrouble(problem) ?? 500, problem);
  }
}

async function answerRead<A>(result: Result<A, Refusal>): Promise<Response> {
  if (result.ok) return Response.json({ ok: true, answer: result.value }, NO_STORE);
  return problemJson(NO_SUCH.includes(result.error.code) ? 404 : 422, await problemOfRefusal(result.error));
}

/** A write's answer as JSON: `{ok:true,answer,replayed}`, or 422, for trouble 503 or 500, with the problem in words. */
export function answerWrite<A>(answer: Answer<A>): Response {
  if (answer.ok) return Response.json(answer, NO_STORE);
  return problemJson(statusOfTrouble(answer.problem) ?? 422, answer.problem);
}

/** The status for a problem of `problemOfError`: 503 where the store is in trouble, 500 for anything nobody expected. */
export function statusOfTrouble({ code }: Problem): 500 | 503 | undefined {
  if (!isStoreTrouble(code)) return undefined;
  return code === 'unknown' ? 500 : 503;
}

/** The answer to a question that does not fit its form. */
export function badQuestion(error: z.ZodError): Response {
  const fields: Record<string, string> = {};
  for (const issue of error.issues) fields[issue.path.join('.')] ??= issue.message;
  return problemJson(400, {
    code: 'form',
    what: Object.values(fields)[0] ?? 'The question does not fit.',
    kept: 'Nothing was written.',
    todo: 'Put right what is named and ask again.',
    fields,
  });
}

function problemJson(status: number, problem: Problem): Response {
  return Response.json({ ok: false, problem }, { status, ...NO_STORE });
}
