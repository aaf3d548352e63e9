import type { Refusal } from '@/app/_server/refusal';

/** The refusal to give anything to a job that is done or dropped; undefined while it is open. */
export function refuseClosedJob({ name, state }: { name: string; state: string }): Refusal | undefined {
  return state === 'open' ? undefined : { code: 'job-not-open', field: 'jobId', facts: { job: name, state } };
}
