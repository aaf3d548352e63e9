import type { AllocationNeed } from '@/shared/allocation/allocation-ask';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** The day something is used for a need: its day of use, or today where that has passed. */
export function dayOfNeed({ on }: Pick<AllocationNeed, 'on'>, today: CalendarDate): CalendarDate {
  return on < today ? today : on;
}

/** The day that what is used for a need is judged for: its day of use, or a later one that it has to be good to. */
export function judgedDayOfNeed(
  { on, goodTo = on }: Pick<AllocationNeed, 'on' | 'goodTo'>,
  today: CalendarDate,
): CalendarDate {
  return goodTo < today ? today : goodTo;
}
