import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** What a link to this page asks for: a label or code, a job, a day. */
export type PullStart = { label?: string; jobId?: number; day?: CalendarDate };
