import type { NextRequest } from 'next/server';
import { theBook } from '@/app/_server/book/the-book';
import { answerReading, badQuestion } from '@/app/_server/http/answer-json';
import { wasPulled } from '@/app/_server/pull/was-pulled';
import { keySchema } from '@/app/(shop)/pull/schema';
import { ok } from '@/shared/result/result';

/** What a press wrote whose answer never came back: `{ok:true,answer}`, where the answer is the pull, or null. */
export async function GET(request: NextRequest): Promise<Response> {
  const key = keySchema.safeParse(request.nextUrl.searchParams.get('key'));
  if (!key.success) return badQuestion(key.error);
  return answerReading(async () => ok(await wasPulled(await theBook(), key.data)));
}
