import type { JobLine } from '@/app/_server/jobs/read-jobs';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import type { Purpose } from '@/shared/shelf-life/types/verdict';

/** A job as it stands in the form's fields. */
export type TypedJob = {
  name: string;
  purpose: Purpose;
  client: string;
  contact: string;
  dayOfUse: string;
  dueOn: string;
  note: string;
};

/** A job as it would be typed; a new one without it. */
export function typedJob(job: JobLine | undefined, order: DateOrder): TypedJob {
  return {
    name: job?.name ?? '',
    purpose: job?.purpose ?? 'client',
    client: job?.client ?? '',
    contact: job?.contact ?? '',
    dayOfUse: job ? sayDate(job.dayOfUse, { order }) : '',
    dueOn: job?.dueOn ? sayDate(job.dueOn, { order }) : '',
    note: job?.note ?? '',
  };
}

/** What was typed, kept; what was not touched, as the book has it now. */
export function caughtUp(typed: TypedJob, opened: TypedJob, now: TypedJob): TypedJob {
  const keep = <K extends keyof TypedJob>(field: K) => (typed[field] === opened[field] ? now[field] : typed[field]);
  return {
    name: keep('name'),
    purpose: keep('purpose'),
    client: keep('client'),
    contact: keep('contact'),
    dayOfUse: keep('dayOfUse'),
    dueOn: keep('dueOn'),
    note: keep('note'),
  };
}
