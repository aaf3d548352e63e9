import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Precision } from '@/shared/calendar/precision';

/**
 * A date on a label. `date` is any day within its precision; the rules read it as the last day of the period for a limit
 * and as the first for a day of making, so a date stored either way gives the same verdict. `confirmed` is false until a
 * person has looked at what a camera or a code gave.
 */
export type LabelDate = { readonly date: CalendarDate; readonly precision: Precision; readonly confirmed: boolean };
