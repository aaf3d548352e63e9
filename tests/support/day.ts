import { type CalendarDate, parseCalendarDate } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';

/** A day written in a test; throws when there is no such day. */
export const day = (text: string): CalendarDate => unwrap(parseCalendarDate(text));
