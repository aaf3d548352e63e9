import type { Refusal } from '@/app/_server/refusal';
import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { firstDayOf, lastDayOf } from '@/shared/calendar/precision';
import { type Opened, readOpened } from '@/shared/ledger/opened';
import type { LabelDate } from '@/shared/shelf-life/types/label-date';

/** The maker's three dates, those that are printed. */
export type LotDatesInput = { madeOn?: LabelDate; bestBefore?: LabelDate; useBy?: LabelDate };

/** The columns of a lot row for its dates. */
export function lotDateColumns(dates: LotDatesInput) {
  return {
    madeOn: dates.madeOn?.date ?? null,
    madePrecision: dates.madeOn?.precision ?? null,
    madeConfirmed: dates.madeOn?.confirmed ?? false,
    bestBefore: dates.bestBefore?.date ?? null,
    bestPrecision: dates.bestBefore?.precision ?? null,
    bestConfirmed: dates.bestBefore?.confirmed ?? false,
    useBy: dates.useBy?.date ?? null,
    usePrecision: dates.useBy?.precision ?? null,
    useConfirmed: dates.useBy?.confirmed ?? false,
  };
}

/** The refusal for dates that cannot all be true; undefined when they can. */
export function refuseLotDates(dates: LotDatesInput, today: CalendarDate, opened?: Opened): Refusal | undefined {
  const made = dates.madeOn && firstDayOf(dates.madeOn.date, dates.madeOn.precision);
  if (made && made > today) return { code: 'made-in-the-future', field: 'madeOn' };
  for (const name of ['bestBefore', 'useBy'] as const) {
    const limit = dates[name];
    if (made && limit && lastDayOf(limit.date, limit.precision) < made)
      return { code: 'made-after-best-before', field: name };
  }
  if (made && opened && opened.on < made) return { code: 'opened-before-made', field: 'opened' };
  return undefined;
}

/** The refusal for a day of making after one of the lot's containers is known to have been opened; it names the first. */
export async function refuseMadeAfterOpened(
  tx: WriteTransaction,
  lotId: number,
  made: LabelDate | undefined,
): Promise<Refusal | undefined> {
  if (!made) return undefined;
  const opened = await tx.stock.findFirst({
    where: { container: { lotId }, opened: { lt: firstDayOf(made.date, made.precision), endsWith: '/known' } },
    orderBy: { opened: 'asc' },
    select: { label: true, opened: true },
  });
  const on = readOpened(opened?.opened ?? null)?.on;
  return on && { code: 'opened-before-made', field: 'madeOn', facts: { label: opened?.label ?? null, on } };
}

/** Whether two dates of one label mean the same day by the rules, however they were printed: 02/2027 is 28 Feb 2027 as a limit. */
export function sameLotDate(name: keyof LotDatesInput, one: LabelDate, other: LabelDate): boolean {
  const read = name === 'madeOn' ? firstDayOf : lastDayOf;
  return read(one.date, one.precision) === read(other.date, other.precision);
}
