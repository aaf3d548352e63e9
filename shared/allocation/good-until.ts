import type { AllocationContainer } from '@/shared/allocation/allocation-ask';
import { addLife } from '@/shared/calendar/add-life';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/**
 * The last good day of a container once it has been opened on `openedOn`: the earlier of its own limit and the end of its
 * opened life; undefined where it has neither. For one that is open already its limit says it all. Sealed, good to 1 Dec,
 * keeps 30 days opened: opened on 10 Oct it is good to 9 Nov.
 */
export function goodUntil(
  { sealed, lastGoodDay, openedLife }: Pick<AllocationContainer, 'sealed' | 'lastGoodDay' | 'openedLife'>,
  openedOn: CalendarDate,
): CalendarDate | undefined {
  if (!sealed || !openedLife) return lastGoodDay;
  const opened = addLife(openedOn, openedLife);
  return lastGoodDay && lastGoodDay < opened ? lastGoodDay : opened;
}
