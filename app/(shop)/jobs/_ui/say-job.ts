import type { JobLine } from '@/app/_server/jobs/read-jobs';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { daysBetween } from '@/shared/calendar/days-between';
import { sayDays } from '@/shared/calendar/say-days';
import type { Purpose } from '@/shared/shelf-life/types/verdict';
import type { JobStage } from '@/shared/timeline/job-stage';

export const PURPOSE_WORDS: Record<Purpose, string> = {
  client: 'Client’s piece',
  own: 'Own piece',
  test: 'Test piece',
};

export const STAGE_WORDS: Record<JobStage, string> = {
  asked: 'Asked for',
  quoted: 'Quoted',
  agreed: 'Agreed',
  making: 'Making',
  curing: 'Curing',
  ready: 'Ready',
  delivered: 'Delivered',
  dropped: 'Dropped',
};

/** Whose piece it is: `For Marlow`, `Own piece`. */
export function sayWhose({ purpose, client }: Pick<JobLine, 'purpose' | 'client'>): string {
  return purpose === 'client' && client ? `For ${client}` : PURPOSE_WORDS[purpose];
}

/** How far away a day is: `in 24 days`, `today`, `5 days ago`. */
export function sayAway(day: CalendarDate, today: CalendarDate): string {
  const days = daysBetween(today, day);
  return days > 0 ? `in ${sayDays(days)}` : sayDays(days);
}
