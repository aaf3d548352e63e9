import type { Refusal } from '@/app/_server/refusal';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { firstDayOf } from '@/shared/calendar/precision';
import type { Opened } from '@/shared/ledger/opened';

/** The refusal for an opened day that cannot be; undefined where it can. */
export function refuseOpening(line: ContainerLine, opened: Opened, today: CalendarDate): Refusal | undefined {
  if (opened.on > today) return { code: 'opened-in-the-future', field: 'opened' };
  const made = line.candidate.lot.madeOn;
  if (made && opened.on < firstDayOf(made.date, made.precision)) {
    return { code: 'opened-before-made', field: 'opened', facts: { made: made.date } };
  }
  return undefined;
}
