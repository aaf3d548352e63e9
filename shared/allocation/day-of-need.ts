import type { AllocationNeed } from '@/shared/allocation/allocation-ask';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** The day a need is judged for: its day of use, or today where that has passed. */
export function dayOfNeed({ on }: Pick<AllocationNeed, 'on'>, today: CalendarDate): CalendarDate {
  return on < today ? today : on;
}
