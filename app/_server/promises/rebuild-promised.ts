import type { WriteTransaction } from '@/prisma/open-book';

/** Folds the promise lines again and puts every kept balance that differs right. Answers the labels of what differed. */
export async function rebuildPromised(tx: WriteTransaction): Promise<string[]> {
  const folded = await tx.promiseLine.groupBy({ by: ['jobId', 'stockId'], _sum: { delta: true } });
  const kept = await tx.promised.findMany();
  const key = (row: { jobId: number; stockId: number }) => `${row.jobId}/${row.stockId}`;
  const keptBy = new Map(kept.map((row) => [key(row), row.amount]));
  const foldedBy = new Map(folded.map((row) => [key(row), row._sum.delta ?? 0n]));
  const wrong = new Set<number>();
  for (const { jobId, stockId, _sum } of folded) {
    const amount = _sum.delta ?? 0n;
    // A ledger that goes below zero is left for the proof to name.
    if (amount < 0n || (keptBy.get(key({ jobId, stockId })) ?? 0n) === amount) continue;
    wrong.add(stockId);
    const where = { jobId_stockId: { jobId, stockId } };
    await tx.promised.upsert({ where, create: { jobId, stockId, amount }, update: { amount } });
  }
  for (const row of kept) {
    if (foldedBy.has(key(row))) continue;
    wrong.add(row.stockId);
    await tx.promised.delete({ where: { jobId_stockId: { jobId: row.jobId, stockId: row.stockId } } });
  }
  const stock = await tx.stock.findMany({ where: { id: { in: [...wrong] } }, select: { id: true, label: true } });
  return stock.map(({ id, label }) => label ?? `thing ${id}`);
}
