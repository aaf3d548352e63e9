import { parseCalendarDate } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';

/** The day the published date examples are read on: any day of 2026 gives the same centuries. */
export const TODAY = unwrap(parseCalendarDate('2026-06-15'));
