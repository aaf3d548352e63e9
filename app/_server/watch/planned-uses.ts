import { standingNeeds } from '@/app/_server/needs/standing-needs';
import { standingOf } from '@/app/_server/promises/standing-of';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import { readContainers } from '@/app/_server/stock/read-containers';
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
 * Every container that is promised to an open job. The day that counts is the one its need says it has to be good to, the
 * last lift of its pour or the last coat of its finish, else the job's day of use.
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

/** The last day what is promised has to be good to, by `job/stock`, where a need that stands says so. */
async function daysOfPromises(book: OpenBook, stockIds: readonly number[]): Promise<Map<string, CalendarDate>> {
  const promises = await standingOf(book.read, { stockId: { in: [...stockIds] } });
  const ids = [...new Set(promises.flatMap(({ needId }) => needId ?? []))];
  const needs = new Map((await standingNeeds(book.read, { id: { in: ids } })).map((need) => [need.id, need]));
  const days = new Map<string, CalendarDate>();
  for (const { jobId, stockId, needId } of promises) {
    const day = needs.get(needId ?? 0)?.goodTo;
    const key = `${jobId}/${stockId}`;
    const known = days.get(key);
    if (day && (!known || day > known)) days.set(key, day);
  }
  return days;
}
