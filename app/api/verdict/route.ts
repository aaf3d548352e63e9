import type { NextRequest } from 'next/server';
import { theBook } from '@/app/_server/book/the-book';
import { answerReading, badQuestion } from '@/app/_server/http/answer-json';
import { scanToPull } from '@/app/_server/pull/scan-to-pull';
import { verdictQuery } from '@/app/api/verdict/schema';

/**
 * The answer to a scan at the bench: `/api/verdict?code=C4V9TN3&day=2026-12-19&purpose=client&job=7&asked=400000`.
 *
 * `code` is the text as scanned (`symbology` its AIM identifier, where the reader gives one), `day` the day of use,
 * `purpose` client, own or test and overruled by the job's where a `job` is named, `asked` an amount in the product's
 * small unit. Answers `{ok:true,answer}`, where `answer.kind` is container, piece, choose or nothing. Writes nothing.
 */
export async function GET(request: NextRequest): Promise<Response> {
  const query = verdictQuery.safeParse(Object.fromEntries(request.nextUrl.searchParams));
  if (!query.success) return badQuestion(query.error);
  const { code, symbology, day, purpose, job, asked } = query.data;
  const ask = { scan: { text: code, symbology }, dayOfUse: day, purpose, jobId: job, asked };
  return answerReading(async () => scanToPull(await theBook(), ask, new Date()));
}
