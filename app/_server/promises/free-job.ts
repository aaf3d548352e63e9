import type { Pen } from '@/app/_server/ledger/write-entry';
import { freeStanding } from '@/app/_server/promises/free-standing';
import { standingOf } from '@/app/_server/promises/standing-of';
import type { Refusal } from '@/app/_server/refusal';
import type { WriteTransaction } from '@/prisma/open-book';
import type { StandingPromise } from '@/shared/promise/promise-line';

/** What a job is promised and has not used: pieces whole, containers by amount. */
export type HeldByJob = {
  pieces: { stockId: number; label: string }[];
  standing: StandingPromise[];
  /** The labels of all of it, pieces first. */
  labels: string[];
};

/** Reads what a job is promised and has not used; before the entry is written, so that its answer can name it. */
export async function heldByJob(
  tx: Pick<WriteTransaction, 'stock' | 'promiseLine' | 'promised'>,
  jobId: number,
): Promise<HeldByJob> {
  const pieces = await tx.stock.findMany({
    where: { ownerJobId: jobId, quantity: { gt: 0 } },
    orderBy: { id: 'asc' },
    select: { id: true, label: true },
  });
  const standing = await standingOf(tx, { jobId });
  const containers = await tx.stock.findMany({
    where: { id: { in: [...new Set(standing.map((each) => each.stockId))] } },
    orderBy: { id: 'asc' },
    select: { label: true },
  });
  return {
    pieces: pieces.map(({ id, label }) => ({ stockId: id, label: label ?? '' })),
    standing,
    labels: [...pieces, ...containers].flatMap((each) => each.label ?? []),
  };
}

/** Frees all of it, in the pen's entry, which must be entered before. */
export async function freeJob(pen: Pen, { pieces, standing }: HeldByJob): Promise<Refusal | undefined> {
  for (const { stockId } of pieces) {
    const moved = await pen.move(stockId, { jobId: null });
    if (!moved.ok) return moved.error;
  }
  await freeStanding(pen, standing);
  return undefined;
}
