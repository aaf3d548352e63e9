import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { sayMinute } from '@/shared/calendar/say-minute';
import type { CureHold } from '@/shared/timeline/cure-hold';

/** A cure hold in a sentence; `date` says a day as the book says days. */
export function sayCureHold(
  { because, after, until, untilMinute }: CureHold,
  date: (day: CalendarDate) => string,
): string {
  const then = `${date(until)}${untilMinute ? `, ${sayMinute(untilMinute)}` : ''}`;
  switch (because) {
    case 'not-poured':
      return `${after} is not poured, so nothing of it cures yet.`;
    case 'demould':
      return `${after} may not leave the form before ${then}.`;
    case 'full-cure':
    case 'finish-cure':
      return `${after} is not cured before ${then}.`;
  }
}
