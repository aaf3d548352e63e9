import type { DateReading } from '@/shared/calendar/date-readings';
import { firstDayOf } from '@/shared/calendar/precision';
import type { Opened } from '@/shared/ledger/opened';

/**
 * When a container was opened, from what was typed. A month or a year alone is taken as its first day, the earliest it can
 * have been, and as a guess: the opened life counted from it then ends no later than it truly does.
 */
export function openingOf({ date, precision }: DateReading, sureness: Opened['sureness']): Opened {
  if (precision === 'day') return { on: date, sureness };
  return { on: firstDayOf(date, precision), sureness: 'guessed' };
}
