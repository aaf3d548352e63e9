import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { sayAmounts } from '@/app/_server/promises/say-amounts';
import { standingOf } from '@/app/_server/promises/standing-of';
import { enterBeside, writePromise } from '@/app/_server/promises/write-promise';
import { type PromiseTaken, takeFromPromises } from '@/shared/promise/take-from-promises';
import { err, ok } from '@/shared/result/result';
import type { StockUnit } from '@/shared/units/stock-unit';

export type Release = {
  jobId: number;
  /** `amount`: so much of a container's promise; all of it where none is given. `needId`: what was promised for this need. */
  items: readonly { label: string; amount?: number; needId?: number }[];
};

/** `entryId` is what undoing it reverses. */
export type Released = {
  entryId: number;
  jobId: number;
  released: { label: string; amount: number; unit: StockUnit; kind: 'container' | 'piece' }[];
};

/** Frees what a job was promised of containers and pieces: all of it or a part, in one entry. */
export const release: Command<Release, Released> = (book, by, input) =>
  writeEntry<Released>(book, { ...by, kind: 'promises-released', request: input }, async (pen) => {
    const { jobId } = input;
    const job = await pen.tx.job.findUnique({ where: { id: jobId }, select: { name: true } });
    if (!job) return err({ code: 'not-found' });
    const answer: Released = { entryId: pen.entryId, jobId, released: [] };
    const pieces: number[] = [];
    const taken: PromiseTaken[] = [];
    for (const { label, amount, needId } of input.items) {
      const stock = await pen.tx.stock.findUnique({
        where: { label },
        select: {
          id: true,
          kind: true,
          quantity: true,
          ownerJobId: true,
          container: { select: { product: { select: { unit: true } } } },
        },
      });
      if (!stock) return err({ code: 'not-found', facts: { label } });
      const unit = (stock.container?.product.unit ?? 'piece') as StockUnit;
      const nothing = { code: 'not-promised' as const, facts: { label, job: job.name } };
      if (stock.kind === 'piece') {
        if (stock.ownerJobId !== jobId || stock.quantity === 0n || pieces.includes(stock.id)) return err(nothing);
        pieces.push(stock.id);
        answer.released.push({ label, amount: 1, unit, kind: 'piece' });
        continue;
      }
      if (amount !== undefined && (!Number.isSafeInteger(amount) || amount <= 0))
        return err({ code: 'not-an-exact-amount', field: 'amount' });
      const standing = (await standingOf(pen.tx, { jobId, stockId: stock.id })).filter(
        (each) => needId === undefined || each.needId === needId,
      );
      const promised = standing.reduce((sum, each) => sum + each.amount, 0);
      if (promised === 0 || taken.some((each) => each.stockId === stock.id && (needId ?? each.needId) === each.needId))
        return err(nothing);
      const off = takeFromPromises(standing, Math.min(amount ?? promised, promised), { first: 'newest', needId });
      taken.push(...off);
      answer.released.push({ label, amount: off.reduce((sum, each) => sum + each.amount, 0), unit, kind: 'container' });
    }
    if (answer.released.length === 0) return err({ code: 'changes-nothing' });
    await pen.enter({ jobId, reference: sayAmounts(answer.released, pen.book.units) }, answer);
    for (const stockId of pieces) {
      const moved = await pen.move(stockId, { jobId: null });
      if (!moved.ok) return moved;
    }
    await enterBeside(
      pen,
      taken.map((each) => each.stockId),
    );
    for (const { amount, ...line } of taken) await writePromise(pen, { ...line, delta: -amount });
    return ok(answer);
  });
