import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { compareDates } from '@/shared/calendar/compare-dates';
import type { Candidate } from '@/shared/shelf-life/types/candidate';
import type { Inspection } from '@/shared/shelf-life/types/inspection';

/**
 * The inspections that say something of this container: those of its lot and its own, made by `today` where that is given,
 * in the order in which they were made. Those of one day stay in the order in which they were written.
 *
 * Seen on 3 Nov and written first, seen on 1 Nov and written second: the one of 1 Nov comes first.
 */
export function heardInspections(
  { container, inspections }: Pick<Candidate, 'container' | 'inspections'>,
  today?: CalendarDate,
): readonly Inspection[] {
  return inspections
    .filter((one) => today === undefined || one.on <= today)
    .filter((one) => one.scope === 'lot' || one.containerId === container.id)
    .sort((a, b) => compareDates(a.on, b.on));
}
