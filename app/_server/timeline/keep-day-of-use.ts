import { readSteps } from '@/app/_server/timeline/read-steps';
import type { WriteTransaction } from '@/prisma/open-book';
import { lastUse } from '@/shared/timeline/last-use';

/** The job's day of use follows its last lift or coat that is still to be done; to be called by whatever changes steps. */
export async function keepDayOfUse(tx: Pick<WriteTransaction, 'step' | 'job'>, jobId: number): Promise<void> {
  const dayOfUse = lastUse(await readSteps(tx, jobId));
  if (dayOfUse === undefined) return;
  await tx.job.updateMany({ where: { id: jobId, NOT: { dayOfUse } }, data: { dayOfUse } });
}
