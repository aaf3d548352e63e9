import { z } from 'zod';
import { act } from '@/app/_server/act';
import { answerWrite, badQuestion } from '@/app/_server/http/answer-json';
import { refuseCrossSite } from '@/app/_server/http/refuse-cross-site';
import { weighContainer } from '@/app/_server/stock/weigh-container';
import { weighSchema } from '@/app/api/weigh/schema';

const body = z.object({ key: z.string({ error: 'The request had no key.' }), input: z.unknown() });

/**
 * Writes what is really left in a container, as a scale that speaks HTTP would: `POST /api/weigh` with JSON
 * `{"key":"…","input":{"label":"C4V9TN3","left":400000,"why":"weighed"}}`, `left` in the product's small unit;
 * `happenedOn` (`2026-12-19`) where it was weighed on an earlier day.
 *
 * The key is the asker's own, 8 to 64 letters, digits, `-` or `_`: the same key answers the first answer again and writes
 * nothing. Answers `{ok:true,answer,replayed}`, or the problem in words. Refused from another web site.
 */
export async function POST(request: Request): Promise<Response> {
  const refusal = refuseCrossSite(request);
  if (refusal) return refusal;
  const read = body.safeParse(await request.json().catch(() => undefined));
  if (!read.success) return badQuestion(read.error);
  return answerWrite(await act(weighSchema, read.data.key, read.data.input, weighContainer));
}
