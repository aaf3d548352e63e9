import type { MixedWith } from '@/app/_server/pull/mixed-with';
import { sayStanding } from '@/app/(shop)/_parts/stock/say-standing';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import type { UnitSystem } from '@/shared/units/unit-system';

/** The other part and how it stands: `Mixed with C-4K7VMX, part B: good to 12 Dec.` */
export function sayMixedWith(
  { label, part, verdict }: MixedWith,
  context: { readonly today: CalendarDate; readonly order: DateOrder; readonly prefer: UnitSystem },
): string {
  const { limit, because } = sayStanding(verdict, context);
  const stands = limit.charAt(0).toLowerCase() + limit.slice(1);
  return `Mixed with ${label}, part ${part}: ${stands}.${because ? ` ${because}` : ''}`;
}
