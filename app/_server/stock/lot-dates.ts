import type { Refusal } from '@/app/_server/refusal';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { firstDayOf, lastDayOf } from '@/shared/calendar/precision';
import type { Opened } from '@/shared/ledger/opened';
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
