import type { FeedEvent } from '@/app/_server/feed/feed-event';
import { samplesToLookAt } from '@/app/_server/watch/samples-to-look-at';
import type { OpenBook } from '@/prisma/open-book';

/** The days to look at kept samples again. */
export async function sampleEvents(book: OpenBook): Promise<FeedEvent[]> {
  const samples = await samplesToLookAt(book);
  const looks = await book.read.sampleLook.findMany({
    where: { sampleId: { in: samples.map(({ id }) => id) } },
    select: { sampleId: true, entryId: true, entry: { select: { reversedBy: { select: { id: true } } } } },
  });
  const looked = new Map<number, number>();
  // A look that was taken back moved the day too.
  for (const { sampleId, entryId, entry } of looks)
    looked.set(sampleId, Math.max(looked.get(sampleId) ?? 0, entryId, entry.reversedBy?.id ?? 0));
  return samples.map(({ id, entryId, name, lookOn, place, pour }) => ({
    id: `sample-${id}`,
    day: lookOn,
    summary: `Look at the sample: ${name}`,
    description: [pour ? `Of ${pour}.` : '', place ? `In ${place}.` : '', 'Press it, hold it to the light.']
      .filter(Boolean)
      .join(' '),
    path: '/samples',
    entryId: Math.max(entryId, looked.get(id) ?? 0),
  }));
}
