import { instantOf } from '@/app/_server/ledger/instant-of';
import type { OpenBook } from '@/prisma/open-book';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { daysBetween } from '@/shared/calendar/days-between';
import type { StockUnit } from '@/shared/units/stock-unit';

/** Something that is kept for a job and that nobody touches. */
export type NotMoving = {
  stockId: number;
  label: string;
  name: string;
  jobId: number;
  job: string;
  /** The job's day of use. */
  day: CalendarDate;
  amount: number;
  unit: StockUnit;
  /** The day it was promised, and how long ago that is. */
  since: CalendarDate;
  days: number;
  /** The job's day has passed already. */
  late: boolean;
};

/** A promise rests after so many days without anything taken of it. Common practice: a month of shop time. */
const RESTS_DAYS = 30;
const MOST = 200;

type Row = {
  stockId: number;
  label: string;
  name: string;
  jobId: number;
  job: string;
  day: string;
  amount: bigint | number;
  unit: string;
  at: unknown;
};

/**
 * What is promised to open jobs and does not move: the job's day of use has passed, or nothing was promised or taken of it
 * for 30 days and the job's day is not further away than it has rested. The longest at rest first, 200 at most.
 */
export async function notMoving(
  book: OpenBook,
  { today, timeZone }: { today: CalendarDate; timeZone: string },
): Promise<NotMoving[]> {
  const [containers, pieces] = await Promise.all([
    book.read.$queryRaw<Row[]>`
      SELECT s."id" AS "stockId", s."label", p."name", j."id" AS "jobId", j."name" AS "job", j."dayOfUse" AS "day",
        pr."amount", p."unit",
        (SELECT e."happenedAt" FROM "PromiseLine" l JOIN "Entry" e ON e."id" = l."entryId"
          WHERE l."jobId" = pr."jobId" AND l."stockId" = pr."stockId" ORDER BY l."id" DESC LIMIT 1) AS "at"
      FROM "Promised" pr JOIN "Stock" s ON s."id" = pr."stockId" JOIN "Container" c ON c."stockId" = s."id"
      JOIN "Product" p ON p."id" = c."productId" JOIN "Job" j ON j."id" = pr."jobId"
      WHERE pr."amount" > 0 AND j."state" = 'open'`,
    book.read.$queryRaw<Row[]>`
      SELECT s."id" AS "stockId", s."label", pc."species" || ' ' || pc."form" AS "name", j."id" AS "jobId",
        j."name" AS "job", j."dayOfUse" AS "day", s."quantity" AS "amount", 'piece' AS "unit",
        (SELECT e."happenedAt" FROM "Movement" m JOIN "Entry" e ON e."id" = m."entryId"
          WHERE m."stockId" = s."id" ORDER BY m."id" DESC LIMIT 1) AS "at"
      FROM "Stock" s JOIN "Piece" pc ON pc."stockId" = s."id" JOIN "Job" j ON j."id" = s."ownerJobId"
      WHERE s."quantity" > 0 AND j."state" = 'open'`,
  ]);
  const longAgo = addDays(today, -RESTS_DAYS);
  return [...containers, ...pieces]
    .flatMap(({ at, ...row }): NotMoving[] => {
      const instant = instantOf(at);
      const since = instant === 0 ? today : dateIn(timeZone, new Date(instant));
      const day = row.day as CalendarDate;
      const late = day < today;
      const days = daysBetween(since, today);
      const rests = since <= longAgo && daysBetween(today, day) <= days;
      if (!late && !rests) return [];
      return [{ ...row, day, amount: Number(row.amount), unit: row.unit as StockUnit, since, days, late }];
    })
    .sort((a, b) => b.days - a.days || a.stockId - b.stockId)
    .slice(0, MOST);
}
