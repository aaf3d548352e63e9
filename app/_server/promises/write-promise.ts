import type { Pen } from '@/app/_server/ledger/write-entry';

export type NewPromiseLine = {
  jobId: number;
  stockId: number;
  needId?: number | null;
  /** Small units: more promised above zero, released or used below. */
  delta: number;
  reversesId?: number;
};

/** Writes one line of the pen's entry, which must be entered before, and the balance after it. */
export async function writePromise(pen: Pen, { delta, ...line }: NewPromiseLine): Promise<void> {
  await pen.tx.promiseLine.create({
    data: { ...line, entryId: pen.entryId, delta: BigInt(delta) },
    select: { id: true },
  });
  const { jobId, stockId } = line;
  // An upsert would try to insert what is below zero before it sees the row, and the check would refuse it.
  const kept = await pen.tx.promised.updateMany({
    where: { jobId, stockId },
    data: { amount: { increment: BigInt(delta) } },
  });
  if (kept.count > 0) return;
  await pen.tx.promised.create({ data: { jobId, stockId, amount: BigInt(delta) }, select: { jobId: true } });
}

/** Sets the entry beside every thing it is about, so that it stands in each one's history. */
export async function enterBeside(pen: Pen, stockIds: readonly number[]): Promise<void> {
  const data = [...new Set(stockIds)].map((stockId) => ({ entryId: pen.entryId, stockId }));
  if (data.length > 0) await pen.tx.entryAlso.createMany({ data });
}
