import type { Pen } from '@/app/_server/ledger/write-entry';
import type { PourLine } from '@/app/_server/pours/read-pour';
import { standingOf } from '@/app/_server/promises/standing-of';
import { enterBeside, writePromise } from '@/app/_server/promises/write-promise';
import type { WriteTransaction } from '@/prisma/open-book';
import type { StandingPromise } from '@/shared/promise/promise-line';
import { takeFromPromises } from '@/shared/promise/take-from-promises';

/**
 * What is still promised for a pour that takes nothing more: for the needs of its lifts, and of those it was planned with
 * before.
 */
export async function leftPromised(
  tx: Pick<WriteTransaction, 'pour' | 'need' | 'promiseLine' | 'promised'>,
  { id, job }: Pick<PourLine, 'id' | 'job'>,
): Promise<StandingPromise[]> {
  const pourIds = [id];
  for (let pourId: number | undefined = id; pourId !== undefined; ) {
    const { entryId }: { entryId: number } = await tx.pour.findUniqueOrThrow({
      where: { id: pourId },
      select: { entryId: true },
    });
    const before: { id: number } | null = await tx.pour.findFirst({
      where: { removedById: entryId },
      select: { id: true },
    });
    pourId = before?.id;
    if (pourId !== undefined) pourIds.push(pourId);
  }
  const needs = await tx.need.findMany({ where: { lift: { pourId: { in: pourIds } } }, select: { id: true } });
  const known = new Set(needs.map((need) => need.id));
  const standing = await standingOf(tx, { jobId: job.id });
  return standing.filter(({ needId }) => needId !== null && known.has(needId));
}

/** Frees what is left of these promises, in the pen's entry, which must be entered before: undone with it. */
export async function releaseLeft(pen: Pen, standing: readonly StandingPromise[]): Promise<void> {
  await enterBeside(
    pen,
    standing.map(({ stockId }) => stockId),
  );
  const all = standing.reduce((sum, { amount }) => sum + amount, 0);
  for (const { amount, ...line } of takeFromPromises(standing, all, { first: 'oldest' })) {
    await writePromise(pen, { ...line, delta: -amount });
  }
}
