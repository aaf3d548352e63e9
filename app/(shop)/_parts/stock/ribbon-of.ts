import type { ShelfLimit } from '@/app/_ui/rule/shelf';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { sayLife } from '@/shared/calendar/say-life';
import type { Limit } from '@/shared/shelf-life/types/limit';
import type { Basis } from '@/shared/shelf-life/types/policy';
import type { Verdict } from '@/shared/shelf-life/types/verdict';

export type Ribbon = { from: CalendarDate; to: CalendarDate; limits: ShelfLimit[] };

type RibbonContext = { readonly today: CalendarDate; readonly order: DateOrder };

const MOST_DAYS = 1095;

/** The ribbon of one verdict: every limit with what it was computed from, and the stretch of time that shows them all. */
export function ribbonOf(
  { limits, governing }: Verdict,
  { today, order }: RibbonContext,
  openedOn?: CalendarDate,
): Ribbon {
  const days = limits.map((limit) => limit.lastGoodDay);
  const starts = [
    addDays(today, -21),
    ...(openedOn ? [addDays(openedOn, -14)] : []),
    ...(governing ? [addDays(governing.lastGoodDay, -14)] : []),
  ];
  const ends = [addDays(today, 60), ...days.map((day) => addDays(day, 30))];
  const from = starts.sort()[0] ?? today;
  const to = ends.sort().at(-1) ?? today;
  const farthest = addDays(from, MOST_DAYS);
  return {
    from,
    to: [to, farthest].sort()[0] ?? to,
    limits: limits.map((limit) => ({
      lastGoodDay: limit.lastGoodDay,
      label: sayBasis(limit, { today, order }),
      governing: limit === governing,
    })),
  };
}

const SOURCE: Record<Basis, string> = {
  label: 'by the label',
  'data-sheet': 'by the data sheet',
  'house-default': 'by the house default',
};

const ASIDE: Record<NonNullable<Limit['supersededBy']>, string> = {
  inspection: '; a passed inspection reaches further',
  'printed-date': '; not counted, because the label has its own date',
  'not-needed': '; not counted, because it extends nothing',
};

/** What a limit comes from: "opened 1 Sep, keeps 3 months opened by the house default". */
export function sayBasis({ basis, from, supersededBy }: Limit, { today, order }: RibbonContext): string {
  const start = sayDate(from.start, { order, today, precision: from.precision });
  const life = from.life && from.source !== 'inspection' ? `${sayLife(from.life)}` : '';
  const source = from.source === 'inspection' ? '' : SOURCE[from.source];
  const aside = supersededBy ? ASIDE[supersededBy] : '';
  const only = from.precision === 'day' ? '' : `, the ${from.precision} ${start}`;
  switch (basis) {
    case 'use-by':
      return `printed use by${only}${aside}`;
    case 'best-before':
      return `printed best before${only}${aside}`;
    case 'stated-life':
      return `made ${start}, keeps ${life} sealed ${source}${aside}`;
    case 'opened-life':
      return `opened ${start}, keeps ${life} opened ${source}${aside}`;
    case 'inspection':
      return `passed ${from.together ? 'test pour of this pair' : 'inspection'} on ${start}${aside}`;
  }
}
