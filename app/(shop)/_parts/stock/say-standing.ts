import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { sayReason } from '@/shared/shelf-life/say-reason';
import type { ReasonCode } from '@/shared/shelf-life/types/reason';
import type { Verdict } from '@/shared/shelf-life/types/verdict';
import type { UnitSystem } from '@/shared/units/unit-system';

/** These say nothing more than the limit beside them does. */
const TOLD_BY_LIMIT: readonly ReasonCode[] = ['past-limit', 'limit-near', 'house-default', 'date-unknown', 'empty'];

/** How a container stands today, short enough for a list: `Good to 12 Dec`, and the worst reason where that is another. */
export function sayStanding(
  { governing, reasons }: Verdict,
  { today, order, prefer }: { readonly today: CalendarDate; readonly order: DateOrder; readonly prefer: UnitSystem },
): { limit: string; because?: string } {
  const worst = reasons.find((reason) => reason.weight !== 'note');
  const because = worst && !TOLD_BY_LIMIT.includes(worst.code) ? sayReason(worst, { today, order, prefer }) : undefined;
  if (governing) {
    const day = sayDate(governing.lastGoodDay, { order, today });
    return { limit: governing.lastGoodDay < today ? `Was good to ${day}` : `Good to ${day}`, because };
  }
  return { limit: reasons.some((reason) => reason.code === 'date-unknown') ? 'No date known' : 'Keeps', because };
}
