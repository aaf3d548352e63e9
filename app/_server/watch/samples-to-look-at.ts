import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

export type SampleToLookAt = {
  id: number;
  entryId: number;
  name: string;
  lookOn: CalendarDate;
  madeOn: CalendarDate;
  place: string | null;
  pour: string | null;
  job: { id: number; name: string } | null;
};

const MOST = 500;

/** Kept samples that are to be looked at again, by their day; up to a day where one is given. */
export async function samplesToLookAt(book: OpenBook, until?: CalendarDate): Promise<SampleToLookAt[]> {
  const rows = await book.read.sample.findMany({
    where: {
      lookOn: until ? { lte: until } : { not: null },
      entry: { reversedBy: { is: null } },
      OR: [{ goneById: null }, { goneBy: { reversedBy: { isNot: null } } }],
    },
    orderBy: [{ lookOn: 'asc' }, { id: 'asc' }],
    take: MOST,
    select: {
      id: true,
      entryId: true,
      name: true,
      lookOn: true,
      madeOn: true,
      place: { select: { name: true } },
      lift: { select: { pour: { select: { name: true, job: { select: { id: true, name: true } } } } } },
    },
  });
  return rows.map(({ lift, place, lookOn, madeOn, ...row }) => ({
    ...row,
    lookOn: lookOn as CalendarDate,
    madeOn: madeOn as CalendarDate,
    place: place?.name ?? null,
    pour: lift?.pour.name ?? null,
    job: lift?.pour.job ?? null,
  }));
}
