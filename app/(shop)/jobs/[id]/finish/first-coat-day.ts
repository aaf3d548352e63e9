import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { bearsOn } from '@/shared/timeline/bears-on';
import { inOrder, type Step } from '@/shared/timeline/step';

/**
 * The day coats of a part, or of the whole job, are likeliest to begin: the one after it is poured, out of its form, cured
 * and flattened, as far as that is planned; today where nothing of it is still to come.
 */
export function firstCoatDay(partId: number | null, steps: readonly Step[], today: CalendarDate): CalendarDate {
  const isBefore = ({ kind, pourId }: Step) =>
    kind === 'lift' || kind === 'demould' || kind === 'flatten' || (kind === 'cure' && pourId !== null);
  const last = inOrder(steps.filter((step) => isBefore(step) && bearsOn(step, { partId }))).at(-1);
  return last && last.day >= today ? addDays(last.day, 1) : today;
}
