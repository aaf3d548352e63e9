import type { AllocationContainer } from '@/shared/allocation/allocation-ask';
import { goodUntil } from '@/shared/allocation/good-until';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

export type OpeningDay = {
  readonly until: CalendarDate | undefined;
  /** The needs it is good for when opened that day. */
  readonly needs: readonly number[];
};

/**
 * The days on which opening a container could be best, each with its end and the needs it then covers. Only the day of a
 * need is worth opening on; a day is left out when an earlier one covers every need that it covers and ends the same day,
 * or covers them all and its end is no worse for waste. A container that is open has one entry, for all its needs.
 */
export function openingDays(
  container: AllocationContainer,
  needs: readonly { readonly at: number; readonly day: CalendarDate }[],
  wasteUntil: CalendarDate,
): readonly OpeningDay[] {
  const days = container.sealed
    ? [...new Set(needs.map(({ day }) => day))].sort()
    : needs.slice(0, 1).map((one) => one.day);
  const found: OpeningDay[] = [];
  for (const opened of days) {
    const until = goodUntil(container, opened);
    const covered = needs
      .filter(({ day }) => !container.sealed || (day >= opened && (until === undefined || day <= until)))
      .map(({ at }) => at);
    const wasted = isWasted(until);
    const idle = found.some(
      (other) => covered.every((at) => other.needs.includes(at)) && (wasted || !isWasted(other.until)),
    );
    if (!idle) found.push({ until, needs: covered });
  }
  return found;

  function isWasted(until: CalendarDate | undefined): boolean {
    return until !== undefined && until <= wasteUntil;
  }
}
