import type { Command } from '@/app/_server/act';
import { movedOnSince } from '@/app/_server/cuts/moved-on-since';
import { packGoneSince } from '@/app/_server/cuts/pack-gone-since';
import { refuseClosedJob } from '@/app/_server/jobs/refuse-closed-job';
import { balanceOf, stockSelect } from '@/app/_server/ledger/balance-of';
import { isChangeOfJob } from '@/app/_server/ledger/is-change-of-job';
import { restsOnItsEntry } from '@/app/_server/ledger/reversible-kinds';
import { hasFactsToUndo, undoFacts } from '@/app/_server/ledger/undo-facts';
import { type Pen, writeEntry } from '@/app/_server/ledger/write-entry';
import { refusePromisedBeyond, undoPromises } from '@/app/_server/promises/undo-promises';
import type { Refusal } from '@/app/_server/refusal';
import { refuseFlitchNumber } from '@/app/_server/stock/refuse-flitch-number';
import type { Balance } from '@/shared/ledger/balance';
import { reverseMovement } from '@/shared/ledger/reverse-movement';
import { err, ok } from '@/shared/result/result';

/** Puts an entry right by writing its opposite: every movement and promise of it undone, once, or nothing. */
export const reverseEntry: Command<{ entryId: number; why: string }, { entryId: number }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'reversed', request: input }, async (pen) => {
    const entry = await pen.tx.entry.findUnique({
      where: { id: input.entryId },
      select: {
        id: true,
        kind: true,
        stockId: true,
        answer: true,
        also: { select: { stockId: true } },
        jobId: true,
        productId: true,
        placeId: true,
        reversedBy: { select: { id: true } },
        reverses: { select: { cut: { select: { entryId: true } } } },
        movements: { orderBy: { id: 'desc' } },
        _count: { select: { promiseLines: true } },
      },
    });
    if (!entry) return err({ code: 'not-found' });
    if (entry.reversedBy) return err({ code: 'already-reversed', facts: { entry: entry.reversedBy.id } });
    const lines = entry.movements.length + entry._count.promiseLines;
    if (lines === 0 && !restsOnItsEntry(entry) && !hasFactsToUndo(entry)) return err({ code: 'nothing-to-reverse' });
    if (isChangeOfJob(entry)) return err({ code: 'change-the-job-instead' });
    if (entry.reverses?.cut) return err({ code: 'cut-again-instead' });
    const movedOn = (await movedOnSince(pen.tx, input.entryId)) ?? (await packGoneSince(pen.tx, entry));
    if (movedOn) return err(movedOn);
    const why = input.why.trim();
    if (why === '') return err({ code: 'reason-needed', field: 'why' });
    const answer = { entryId: input.entryId };
    await pen.enter(
      {
        reversesId: input.entryId,
        why,
        jobId: entry.jobId,
        productId: entry.productId,
        placeId: entry.placeId,
        stockId: entry.stockId ?? undefined,
        alsoStockId: entry.also[0]?.stockId,
      },
      answer,
    );
    const kept = (await undoFacts(pen, entry)) ?? (await undoPromises(pen, input.entryId));
    if (kept) return err(kept);
    for (const movement of entry.movements) {
      const row = await pen.tx.stock.findUniqueOrThrow({
        where: { id: movement.stockId },
        select: { ...stockSelect, label: true },
      });
      const facts = { label: row.label };
      const change = reverseMovement(balanceOf(row), { ...movement, quantityDelta: Number(movement.quantityDelta) });
      if (!change.ok) return err({ code: 'changed-since', facts: { ...facts, field: change.error.field } });
      // Undoing the opening of a container that was taken from since would call a half-used one sealed.
      if (change.value.opened === null && (await takenSince(pen, movement))) return err({ code: 'used-since', facts });
      const moved = await pen.move(movement.stockId, change.value, movement.id);
      if (!moved.ok) return moved.error.code === 'below-zero' ? err({ code: 'used-since', facts }) : moved;
      const closed = await givenToClosedJob(pen, moved.value);
      if (closed) return err(closed);
      // A piece whose arrival was reversed gave its number back, and another may have it by now.
      if (movement.quantityDelta < 0) {
        const taken = await numberTakenSince(pen, movement.stockId);
        if (taken) return err(taken);
      }
    }
    const beyond = await refusePromisedBeyond(pen, input.entryId);
    return beyond ? err(beyond) : ok(answer);
  });

/** A piece that would be on hand again and promised to a job that is done or dropped: nothing would ever free it. */
async function givenToClosedJob(pen: Pen, { jobId, quantity }: Balance): Promise<Refusal | undefined> {
  if (jobId === null || quantity === 0) return undefined;
  const job = await pen.tx.job.findUniqueOrThrow({ where: { id: jobId }, select: { name: true, state: true } });
  return refuseClosedJob(job);
}

async function numberTakenSince(pen: Pen, stockId: number): Promise<Refusal | undefined> {
  const piece = await pen.tx.piece.findUnique({
    where: { stockId },
    select: { form: true, species: true, flitch: true, flitchNumber: true },
  });
  if (!piece) return undefined;
  const taken = await refuseFlitchNumber(pen.tx, {
    ...piece,
    first: piece.flitchNumber ?? undefined,
    count: 1,
    stockId,
  });
  return taken && { code: taken.code, facts: { ...taken.facts, back: 1 } };
}

async function takenSince(pen: Pen, movement: { id: number; stockId: number }): Promise<boolean> {
  const later = await pen.tx.movement.findFirst({
    where: {
      stockId: movement.stockId,
      id: { gt: movement.id },
      quantityDelta: { lt: 0 },
      reversesId: null,
      reversedBy: null,
    },
    select: { id: true },
  });
  return later !== null;
}
