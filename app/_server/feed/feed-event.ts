import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** One day of the book for a calendar. */
export type FeedEvent = {
  /** The same as long as it is the same matter, on whatever day: `step-12`, `pour-7-lift-2`, `limit-40`. */
  id: string;
  day: CalendarDate;
  summary: string;
  description: string;
  /** The page it is about. */
  path: string;
  /** The newest entry that bears on it: its number only grows. */
  entryId: number;
};
