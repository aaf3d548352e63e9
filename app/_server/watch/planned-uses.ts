import type { ContainerLine } from '@/app/_server/stock/judgeable';
import { readContainers } from '@/app/_server/stock/read-containers';
import { undoneStep } from '@/app/_server/watch/standing-steps';
import { Prisma } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Purpose } from '@/shared/shelf-life/types/verdict';

/** A container that is promised to an open job, and the last day that job needs it on. */
export type PlannedUse = {
  line: ContainerLine;
  jobId: number;
  job: string;
  purpose: Purpose;
  /** Small units. */
  amount: number;
  day: CalendarDate;
  costMinor: bigint | null;
  currency: string | null;
};

const MOST = 5000;

/**
 * Every container that is promised to an open job. The day that counts is the last lift of the pour it is promised for,
 * else the day of the step its need hangs on, else the job's day of use.
 */
export async function plannedUses(book: OpenBook): Promise<PlannedUse[]> {
  const promised = await book.read.promised.findMany({
    where: { amount: { gt: 0 }, job: { state: 'open' } },
    select: {
      jobId: true,
      stockId: true,
      amount: true,
      job: { select: { name: true, purpose: true, dayOfUse: true } },
    },
    take: MOST,
  });
  if (promised.length === 0) return [];
  const stockIds = [...new Set(promised.map(({ stockId }) => stockId))];
  const [lines, costs, days] = await Promise.all([
    readContainers(book.read, Prisma.sql`c."stockId" IN (${Prisma.join(stockIds)}) AND s."quantity" > 0`, {
      most: MOST,
    }),
    book.read.container.findMany({
      where: { stockId: { in: stockIds } },
      select: { stockId: true, costMinor: true, currency: true },
    }),
    daysOfPromises(book, stockIds),
  ]);
  const byId = new Map(lines.map((line) => [line.stockId, line]));
  const costOf = new Map(costs.map((cost) => [cost.stockId, cost]));
  return promised.flatMap(({ jobId, stockId, amount, job }): PlannedUse[] => {
    const line = byId.get(stockId);
    if (!line) return [];
    const day = (days.get(`${jobId}/${stockId}`) ?? job.dayOfUse) as CalendarDate;
    const { costMinor = null, currency = null } = costOf.get(stockId) ?? {};
    const purpose = job.purpose as Purpose;
    return [{ line, jobId, job: job.name, purpose, amount: Number(amount), day, costMinor, currency }];
  });
}

/** The last day each promise is needed on, by `job/stock`, where its need hangs on a step or a lift. */
async function daysOfPromises(book: OpenBook, stockIds: readonly number[]): Promise<Map<string, string>> {
  const lines = await book.read.promiseLine.findMany({
    where: {
      stockId: { in: [...stockIds] },
      delta: { gt: 0 },
      reversedBy: null,
      need: { is: { OR: [{ stepId: { not: null } }, { liftId: { not: null } }] } },
    },
    select: {
      jobId: true,
      stockId: true,
      need: { select: { step: { select: { day: true } }, lift: { select: { pourId: true } } } },
    },
  });
  const pours = [...new Set(lines.flatMap(({ need }) => need?.lift?.pourId ?? []))];
  const lifts = pours.length
    ? await book.read.step.groupBy({
        by: ['pourId'],
        where: { ...undoneStep, pourId: { in: pours }, kind: { in: ['seal', 'lift'] } },
        _max: { day: true },
      })
    : [];
  const lastLift = new Map(lifts.map(({ pourId, _max }) => [pourId, _max.day]));
  const days = new Map<string, string>();
  for (const { jobId, stockId, need } of lines) {
    const day = (need?.lift && lastLift.get(need.lift.pourId)) ?? need?.step?.day;
    const key = `${jobId}/${stockId}`;
    if (day && day > (days.get(key) ?? '')) days.set(key, day);
  }
  return days;
}
