import type { WriteTransaction } from '@/prisma/open-book';

type Found = (rule: string, where: string, says: string) => void;
type Reader = Pick<WriteTransaction, 'promiseLine' | 'promised' | 'stock' | 'job'>;

/**
 * What is promised equals the fold of its lines, which never goes below zero; of no container more is promised than is in
 * it, nothing is promised of anything else, and nothing to a job that is done or dropped; the reversal of an entry undoes
 * each of its lines, exactly.
 */
export async function provePromises(tx: Reader, found: Found): Promise<void> {
  const lines = await tx.promiseLine.findMany({
    orderBy: { id: 'asc' },
    select: {
      id: true,
      jobId: true,
      stockId: true,
      needId: true,
      delta: true,
      reverses: { select: { id: true, jobId: true, stockId: true, needId: true, delta: true, entryId: true } },
      reversedBy: { select: { id: true } },
      entry: { select: { reversesId: true, reversedBy: { select: { id: true } } } },
    },
  });
  const folded = new Map<string, { jobId: number; stockId: number; amount: bigint }>();
  for (const { id, jobId, stockId, delta, reverses: undone, ...line } of lines) {
    const key = `${jobId}/${stockId}`;
    const amount = (folded.get(key)?.amount ?? 0n) + delta;
    folded.set(key, { jobId, stockId, amount });
    if (amount < 0n)
      found('promises-never-below-zero', `promise line ${id}`, `job ${jobId} would be promised ${amount}`);
    if (line.entry.reversedBy && !line.reversedBy)
      found('reversals-are-whole', `promise line ${id}`, `was left by entry ${line.entry.reversedBy.id}`);
    if (!undone) continue;
    const exact =
      undone.jobId === jobId &&
      undone.stockId === stockId &&
      undone.needId === line.needId &&
      undone.delta === -delta &&
      undone.entryId === line.entry.reversesId;
    if (!exact) found('reversals-are-opposites', `promise line ${id}`, `is not the opposite of line ${undone.id}`);
  }

  const kept = await tx.promised.findMany();
  const keptBy = new Map(kept.map((row) => [`${row.jobId}/${row.stockId}`, row.amount]));
  for (const [key, { jobId, stockId, amount }] of folded) {
    if ((keptBy.get(key) ?? 0n) !== amount)
      found(
        'promised-equals-lines',
        `job ${jobId}, thing ${stockId}`,
        `${keptBy.get(key) ?? 0n} kept, ${amount} by the lines`,
      );
  }
  for (const row of kept) {
    if (row.amount !== 0n && !folded.has(`${row.jobId}/${row.stockId}`))
      found('promised-equals-lines', `job ${row.jobId}, thing ${row.stockId}`, `${row.amount} kept, no lines`);
  }

  const standing = kept.filter((row) => row.amount > 0n);
  const stock = await tx.stock.findMany({
    where: { id: { in: [...new Set(standing.map((row) => row.stockId))] } },
    select: { id: true, label: true, kind: true, quantity: true },
  });
  for (const { id, label, kind, quantity } of stock) {
    const where = label ?? `thing ${id}`;
    const promised = standing.reduce((sum, row) => (row.stockId === id ? sum + row.amount : sum), 0n);
    if (promised > quantity) found('promised-is-there', where, `${promised} is promised of ${quantity}`);
    if (kind !== 'container') found('containers-are-promised', where, `is a ${kind}`);
  }
  const closed = await tx.job.findMany({
    where: { id: { in: [...new Set(standing.map((row) => row.jobId))] }, state: { not: 'open' } },
    select: { id: true, name: true, state: true },
  });
  for (const job of closed) found('open-jobs-are-promised', `job ${job.id}`, `${job.name} is ${job.state}`);
}
