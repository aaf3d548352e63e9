import type { Pen } from '@/app/_server/ledger/write-entry';
import { standingOf } from '@/app/_server/promises/standing-of';
import { writePromise } from '@/app/_server/promises/write-promise';
import type { WriteTransaction } from '@/prisma/open-book';
import { type PromiseTaken, takeFromPromises } from '@/shared/promise/take-from-promises';

/** A job that loses some of what it was promised. */
export type BrokenPromise = PromiseTaken & { job: string };

/**
 * What can no longer be kept of a container's promises when no more than `left` is in it: the newest promise gives way
 * first. Read before the entry is written, so that its answer can name who loses.
 */
export async function brokenPromises(
  tx: Pick<WriteTransaction, 'promiseLine' | 'promised' | 'job'>,
  stockId: number,
  left: number,
): Promise<BrokenPromise[]> {
  const standing = await standingOf(tx, { stockId });
  const promised = standing.reduce((sum, each) => sum + each.amount, 0);
  if (promised <= left) return [];
  const broken = takeFromPromises(standing, promised - left, { first: 'newest' });
  const jobs = await tx.job.findMany({
    where: { id: { in: broken.map((each) => each.jobId) } },
    select: { id: true, name: true },
  });
  const names = new Map(jobs.map((job) => [job.id, job.name]));
  return broken.map((each) => ({ ...each, job: names.get(each.jobId) ?? '' }));
}

/** Takes them off, in the pen's entry, which must be entered before. */
export async function breakPromises(pen: Pen, broken: readonly BrokenPromise[]): Promise<void> {
  for (const { jobId, stockId, needId, amount } of broken)
    await writePromise(pen, { jobId, stockId, needId, delta: -amount });
}

/** How much each job loses, jobs by name, for an answer. */
export function losersOf(broken: readonly BrokenPromise[]): { jobId: number; job: string; amount: number }[] {
  const losers = new Map<number, { jobId: number; job: string; amount: number }>();
  for (const { jobId, job, amount } of broken)
    losers.set(jobId, { jobId, job, amount: (losers.get(jobId)?.amount ?? 0) + amount });
  return [...losers.values()].sort((a, b) => (a.job < b.job ? -1 : 1));
}
