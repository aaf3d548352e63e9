import { listSamples } from '@/app/_server/samples/list-samples';
import type { LookResult } from '@/app/_server/samples/look-at-sample';
import type { OpenBook } from '@/prisma/open-book';

/** What the newest look at a kept sample found, and the lift it was kept of. */
export type SeenOnSample = { liftId: number; result: LookResult; note: string };

/** What a new fault may take over from a look at a sample; undefined where it is of no lift, or was never looked at. */
export async function seenOnSample(book: OpenBook, sampleId: number | undefined): Promise<SeenOnSample | undefined> {
  const [sample] = sampleId === undefined ? [] : await listSamples(book, { id: sampleId });
  const look = sample?.looks[0];
  if (!sample || !look || sample.liftId === null) return undefined;
  const note = [`Seen on the sample ${sample.name}`, look.note].filter(Boolean).join('. ');
  return { liftId: sample.liftId, result: look.result, note };
}
