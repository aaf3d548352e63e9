import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { PromiseStep } from '@/shared/promise/available-to-promise';

/** The step that a day lies in: the last one that began by then. Undefined before the first. */
export function stepOnDay(steps: readonly PromiseStep[], day: CalendarDate): PromiseStep | undefined {
  return steps.findLast((step) => step.from <= day);
}
