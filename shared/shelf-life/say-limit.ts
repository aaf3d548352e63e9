import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { sayLife } from '@/shared/calendar/say-life';
import type { Limit } from '@/shared/shelf-life/types/limit';
import type { Basis } from '@/shared/shelf-life/types/policy';

const SOURCE: Record<Basis, string> = {
  label: 'by the label',
  'data-sheet': 'by the data sheet',
  'house-default': 'by the house default',
};

/** The name of a limit at the start of a sentence: `Opened life`. */
const LIMIT_NAMES: Record<Limit['basis'], string> = {
  'use-by': 'Printed use by',
  'best-before': 'Printed best before',
  'stated-life': 'Stated life',
  'opened-life': 'Opened life',
  inspection: 'Inspection',
};

/** The name of this very limit: that of its basis, or that it is of a pair. */
export const nameOfLimit = ({ basis, from }: Limit): string =>
  from.together ? 'Test pour of this pair' : LIMIT_NAMES[basis];

/**
 * A limit with what it was computed from and, when it does not count, what set it aside.
 * `Opened life ends 1 Dec: opened 1 Sep, keeps 3 months by the house default.`
 */
export function sayLimit(
  limit: Limit,
  { today, order = 'day-first' }: { readonly today?: CalendarDate; readonly order?: DateOrder } = {},
): string {
  return `${sayBasis(limit, today, order)}${sayAside(limit)}`;
}

function sayBasis({ basis, lastGoodDay, from }: Limit, today: CalendarDate | undefined, order: DateOrder): string {
  const last = sayDate(lastGoodDay, { order, today });
  const start = sayDate(from.start, { order, today, precision: from.precision });
  const life = from.life && from.source !== 'inspection' ? `, keeps ${sayLife(from.life)} ${SOURCE[from.source]}` : '';
  switch (basis) {
    case 'use-by':
    case 'best-before': {
      const name = LIMIT_NAMES[basis];
      return from.precision === 'day' ? `${name} ${last}.` : `${name} ${start}, so good to ${last}.`;
    }
    case 'stated-life':
      return `Stated life ends ${last}: made ${start}${life}.`;
    case 'opened-life':
      return `Opened life ends ${last}: opened ${start}${life}.`;
    case 'inspection':
      return from.together
        ? `Passed test pour of this pair on ${start}, valid until ${last}.`
        : `Passed inspection on ${start}, valid until ${last}.`;
  }
}

function sayAside({ supersededBy }: Limit): string {
  switch (supersededBy) {
    case 'inspection':
      return ' A passed inspection reaches further.';
    case 'printed-date':
      return ' Not counted, because the label has its own date.';
    case 'not-needed':
      return ' Not counted, because it extends nothing.';
    case undefined:
      return '';
  }
}
