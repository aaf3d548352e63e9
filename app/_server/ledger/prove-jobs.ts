import { readSteps } from '@/app/_server/timeline/read-steps';
import type { WriteTransaction } from '@/prisma/open-book';
import { type JobStage, stateOfStage } from '@/shared/timeline/job-stage';
import { lastUse } from '@/shared/timeline/last-use';

type Found = (rule: string, where: string, says: string) => void;

/**
 * A job's state follows from its stage; its day of use is that of the last lift or coat of its time line; a step that is
 * done names an entry of its own job, and so does what took a step off.
 */
export async function proveJobs(tx: Pick<WriteTransaction, 'job' | 'step'>, found: Found): Promise<void> {
  const jobs = await tx.job.findMany({
    orderBy: { id: 'asc' },
    select: { id: true, name: true, stage: true, state: true, dayOfUse: true },
  });
  const planned = new Set(
    (await tx.step.findMany({ distinct: ['jobId'], select: { jobId: true } })).map((each) => each.jobId),
  );
  for (const { id, name, stage, state, dayOfUse } of jobs) {
    const where = `job ${id}, ${name}`;
    const follows = stateOfStage(stage as JobStage);
    if (follows !== state) found('state-follows-stage', where, `is ${state}, and ${stage}, which is ${follows}`);
    const last = planned.has(id) ? lastUse(await readSteps(tx, id)) : undefined;
    if (last !== undefined && last !== dayOfUse) {
      found('day-of-use-follows', where, `is used on ${dayOfUse}, its time line says ${last}`);
    }
  }
  const steps = await tx.step.findMany({
    where: { OR: [{ doneById: { not: null } }, { removedById: { not: null } }] },
    orderBy: { id: 'asc' },
    select: {
      id: true,
      jobId: true,
      doneBy: { select: { id: true, jobId: true } },
      removedBy: { select: { id: true, jobId: true } },
    },
  });
  for (const { id, jobId, doneBy, removedBy } of steps) {
    for (const entry of [doneBy, removedBy]) {
      if (entry && entry.jobId !== jobId) {
        found('steps-rest-on-entries', `step ${id}`, `is of job ${jobId}, entry ${entry.id} of job ${entry.jobId}`);
      }
    }
  }
}
