import type { Pen } from '@/app/_server/ledger/write-entry';
import { standingOf } from '@/app/_server/promises/standing-of';
import { writePromise } from '@/app/_server/promises/write-promise';
import { takeFromPromises } from '@/shared/promise/take-from-promises';

export type SpendPromise = {
  jobId?: number | null | undefined;
  stockId: number;
  /** What was taken out, small units. */
  taken: number;
  /** What it was taken for: its own promise goes first. */
  needId?: number;
};

/**
 * Takes what was used off the job's own promise, as far as it reaches: what is used is no longer promised. Answers how
 * much of it had been promised. In the pen's entry, which must be entered before.
 */
export async function spendPromise(pen: Pen, { jobId, stockId, taken, needId }: SpendPromise): Promise<number> {
  if (jobId === null || jobId === undefined) return 0;
  const standing = await standingOf(pen.tx, { jobId, stockId });
  const used = takeFromPromises(standing, taken, { first: 'oldest', needId });
  for (const { amount, ...line } of used) await writePromise(pen, { ...line, delta: -amount });
  return used.reduce((sum, each) => sum + each.amount, 0);
}
