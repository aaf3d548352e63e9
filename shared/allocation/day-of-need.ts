import type { AllocationNeed } from '@/shared/allocation/allocation-ask';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { laterOf } from '@/shared/calendar/later-of';

/** The day something is used for a need: its day of use, or today where that has passed. */
export function dayOfNeed({ on }: Pick<AllocationNeed, 'on'>, today: CalendarDate): CalendarDate {
  return laterOf(on, today);
}

/** The day that what is used for a need is judged for: its day of use, or a later one that it has to be good to. */
export function judgedDayOfNeed(
  { on, goodTo = on }: Pick<AllocationNeed, 'on' | 'goodTo'>,
  today: CalendarDate,
): CalendarDate {
  return laterOf(goodTo, today);
}
