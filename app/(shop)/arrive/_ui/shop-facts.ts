import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import type { UnitSystem } from '@/shared/units/unit-system';

/** What every form of Arrive needs to know of the workshop. */
export type ShopFacts = {
  readonly today: CalendarDate;
  readonly order: DateOrder;
  readonly prefer: UnitSystem;
  readonly currency: string;
};
