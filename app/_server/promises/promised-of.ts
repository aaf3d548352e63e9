import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';

/** A job that something is promised to: how much of it, for which day, and who promised it when. */
export type PromisedTo = {
  jobId: number;
  job: string;
  /** Small units; 1 for a piece. */
  amount: number;
  /** The first day it is needed on. */
  day: CalendarDate;
  who: string;
  /** The day it was last promised on; none where a cut handed the promise on. */
  on: CalendarDate | null;
};

type Reader = Pick<WriteTransaction, 'stock' | 'promised' | 'promiseLine' | 'movement'>;

/** To whom a container or a piece is promised, by the day it is needed. Nobody where nothing is left of it. */
export async function promisedOf(tx: Reader, stockId: number, timeZone: string): Promise<PromisedTo[]> {
  const stock = await tx.stock.findUnique({
    where: { id: stockId },
    select: { kind: true, quantity: true, ownerJob: { select: { id: true, name: true, dayOfUse: true } } },
  });
  if (!stock || stock.quantity === 0n) return [];
  const dayOf = (at: Date) => dateIn(timeZone, at);
  if (stock.kind === 'piece') {
    const { ownerJob } = stock;
    if (!ownerJob) return [];
    const given = await tx.movement.findFirst({
      where: { stockId, jobToId: ownerJob.id, OR: [{ jobFromId: null }, { NOT: { jobFromId: ownerJob.id } }] },
      orderBy: { id: 'desc' },
      select: { entry: { select: { who: true, happenedAt: true } } },
    });
    const on = given ? dayOf(given.entry.happenedAt) : null;
    const day = ownerJob.dayOfUse as CalendarDate;
    return [{ jobId: ownerJob.id, job: ownerJob.name, amount: 1, day, who: given?.entry.who ?? '', on }];
  }
  const promised = await tx.promised.findMany({
    where: { stockId, amount: { gt: 0 } },
    select: { jobId: true, amount: true, job: { select: { name: true, dayOfUse: true } } },
  });
  if (promised.length === 0) return [];
  const lines = await tx.promiseLine.findMany({
    where: { stockId, delta: { gt: 0 }, jobId: { in: promised.map((each) => each.jobId) } },
    orderBy: { id: 'desc' },
    select: {
      jobId: true,
      entry: { select: { who: true, happenedAt: true } },
      need: { select: { step: { select: { day: true } } } },
    },
  });
  return promised
    .map(({ jobId, amount, job }): PromisedTo => {
      const own = lines.filter((line) => line.jobId === jobId);
      const days = own.map((line) => line.need?.step?.day ?? job.dayOfUse).sort();
      const newest = own[0]?.entry;
      return {
        jobId,
        job: job.name,
        amount: Number(amount),
        day: (days[0] ?? job.dayOfUse) as CalendarDate,
        who: newest?.who ?? '',
        on: newest ? dayOf(newest.happenedAt) : null,
      };
    })
    .sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : a.jobId - b.jobId));
}
