import type { Pen } from '@/app/_server/ledger/write-entry';
import { enterBeside, writePromise } from '@/app/_server/promises/write-promise';
import type { Refusal } from '@/app/_server/refusal';

/**
 * Writes the exact opposite of every promise line of an entry. What would be given back to a job that is done or dropped
 * is released again at once: nothing would ever free it. Refused with `promised-since` where something was used or released
 * of it meanwhile. In the reversing pen's entry; `refusePromisedBeyond` looks at the stock after its movements.
 */
export async function undoPromises(pen: Pen, entryId: number): Promise<Refusal | undefined> {
  const lines = await pen.tx.promiseLine.findMany({
    where: { entryId },
    orderBy: { id: 'desc' },
    select: {
      id: true,
      jobId: true,
      stockId: true,
      needId: true,
      delta: true,
      job: { select: { name: true, state: true } },
      stock: { select: { label: true } },
    },
  });
  for (const { id, job, stock, delta, ...line } of lines) {
    const back = -Number(delta);
    const key = { jobId: line.jobId, stockId: line.stockId };
    const promised = await pen.tx.promised.findUnique({ where: { jobId_stockId: key }, select: { amount: true } });
    if (Number(promised?.amount ?? 0n) + back < 0)
      return { code: 'promised-since', facts: { label: stock.label, job: job.name, because: 'used' } };
    await writePromise(pen, { ...line, delta: back, reversesId: id });
    if (back > 0 && job.state !== 'open') await writePromise(pen, { ...line, delta: -back });
  }
  return undefined;
}

/** The refusal where more would be promised than there is, after an entry was undone; its stock is named beside it. */
export async function refusePromisedBeyond(pen: Pen, entryId: number): Promise<Refusal | undefined> {
  const lines = await pen.tx.promiseLine.findMany({ where: { entryId }, select: { stockId: true } });
  const moved = await pen.tx.movement.findMany({ where: { entryId }, select: { stockId: true } });
  const touched = [...new Set([...lines, ...moved].map((each) => each.stockId))];
  const beside = await pen.tx.entryAlso.findMany({ where: { entryId: pen.entryId }, select: { stockId: true } });
  const known = new Set(beside.map((each) => each.stockId));
  await enterBeside(
    pen,
    lines.map((each) => each.stockId).filter((id) => !known.has(id)),
  );
  const sums = await pen.tx.promised.groupBy({
    by: ['stockId'],
    where: { stockId: { in: touched }, amount: { gt: 0 } },
    _sum: { amount: true },
  });
  for (const { stockId, _sum } of sums) {
    const stock = await pen.tx.stock.findUniqueOrThrow({
      where: { id: stockId },
      select: { label: true, quantity: true },
    });
    if ((_sum.amount ?? 0n) <= stock.quantity) continue;
    return { code: 'promised-since', facts: { label: stock.label, because: 'beyond' } };
  }
  return undefined;
}
