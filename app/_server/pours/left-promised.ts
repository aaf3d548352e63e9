import { poursBefore } from '@/app/_server/pours/pours-before';
import type { PourLine } from '@/app/_server/pours/read-pour';
import { standingOf } from '@/app/_server/promises/standing-of';
import type { WriteTransaction } from '@/prisma/open-book';
import type { StandingPromise } from '@/shared/promise/promise-line';

/**
 * What is still promised for a pour that takes nothing more: for the needs of its lifts, and of those it was planned with
 * before.
 */
export async function leftPromised(
  tx: Pick<WriteTransaction, 'pour' | 'need' | 'promiseLine' | 'promised'>,
  { id, job }: Pick<PourLine, 'id' | 'job'>,
): Promise<StandingPromise[]> {
  const before = await poursBefore(tx, [job.id]);
  const pourIds = [id, ...before(id)];
  const needs = await tx.need.findMany({ where: { lift: { pourId: { in: pourIds } } }, select: { id: true } });
  const known = new Set(needs.map((need) => need.id));
  const standing = await standingOf(tx, { jobId: job.id });
  return standing.filter(({ needId }) => needId !== null && known.has(needId));
}
