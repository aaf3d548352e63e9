import type { JobLine } from '@/app/_server/jobs/read-jobs';
import { recall, remember } from '@/app/_ui/scanner/device-memory';
import { type CalendarDate, parseCalendarDate } from '@/shared/calendar/calendar-date';
import { PURPOSES, type Purpose } from '@/shared/shelf-life/types/verdict';

/** What things are pulled for on this device: an open job, or no job and whose piece it is. */
export type PullGoal = {
  readonly jobId?: number;
  /** The job's name; empty without one. */
  readonly name: string;
  readonly purpose: Purpose;
  readonly day: CalendarDate;
};

const NAME = 'pull-goal';

export const NO_JOB_WORDS: Record<Purpose, string> = {
  client: 'a client’s piece',
  own: 'an own piece',
  test: 'a test piece',
};

/** What it is for, inside a sentence: `River desk`, `a test piece`. */
export function sayGoal(goal: PullGoal): string {
  return goal.name || NO_JOB_WORDS[goal.purpose];
}

export function goalOfJob(job: JobLine): PullGoal {
  return { jobId: job.id, name: job.name, purpose: job.purpose, day: job.dayOfUse };
}

/** What this device was told last; undefined when it was told nothing, or what is kept does not read. */
export function recallGoal(): PullGoal | undefined {
  try {
    const kept: unknown = JSON.parse(recall(NAME) ?? 'null');
    if (typeof kept !== 'object' || kept === null) return undefined;
    const { jobId, name, purpose, day } = kept as Record<string, unknown>;
    const date = parseCalendarDate(String(day));
    const whose = PURPOSES.find((one) => one === purpose);
    if (!date.ok || !whose || typeof name !== 'string') return undefined;
    return { jobId: typeof jobId === 'number' ? jobId : undefined, name, purpose: whose, day: date.value };
  } catch {
    return undefined;
  }
}

export function rememberGoal(goal: PullGoal | undefined): void {
  remember(NAME, goal && JSON.stringify(goal));
}
