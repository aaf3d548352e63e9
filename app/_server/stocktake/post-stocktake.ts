import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { type BrokenPromise, breakPromises, brokenPromises, losersOf } from '@/app/_server/promises/broken-promises';
import { loadStocktake, type StocktakeHead } from '@/app/_server/stocktake/load-stocktake';
import { type WalkThing, walkOf } from '@/app/_server/stocktake/walk-of';
import type { Change } from '@/shared/ledger/movement';
import { err, ok } from '@/shared/result/result';
import type { WalkChoice } from '@/shared/stocktake/choices-of';
import type { StockUnit } from '@/shared/units/stock-unit';

/** What to do about one line, and what the line said when that was chosen. */
type PostedChoice = { stockId: number; choice: WalkChoice; delta: number };

export type PostStocktake = {
  stocktake: number;
  why: string;
  choices: PostedChoice[];
  /** The book's revision that the choices were made on: what changed after it is left as the book has it. */
  asOf: number;
};

type Named = { label: string; name: string };
/** What was posted, line by line, and what was not. Kept with the entry. */
export type PostedStocktake = {
  entryId: number;
  done: (Named & { choice: Exclude<WalkChoice, 'leave'>; delta: number; unit: StockUnit })[];
  /** Left because the maker said so. */
  left: Named[];
  /** Left because something of it changed after it was looked at. */
  overtaken: (Named & { by: string })[];
  /** Promises that can no longer be kept. `amount` in the small unit; of a piece, the whole. */
  broken: (Named & { jobId: number; job: string; amount: number; unit: StockUnit })[];
};

/**
 * Posts the differences of a walk as one entry of movements, with its reason. Every line is compared once more: where the
 * book, or the walk, changed after the choices were made, the line is named and left. What was promised of things that
 * are no longer there is lowered in the same entry, and the jobs are named. Reversing the entry undoes all of it and takes
 * the walk up again.
 */
export const postStocktake: Command<PostStocktake, PostedStocktake> = (book, by, input) =>
  writeEntry<PostedStocktake>(book, { ...by, kind: 'stocktake-posted', request: input }, async (pen) => {
    const stocktake = await loadStocktake(pen.tx, input.stocktake);
    if (!stocktake) return err({ code: 'not-found' });
    if (stocktake.closed) return err({ code: 'stocktake-closed' });
    const { things } = await walkOf(pen.tx, stocktake);
    if (!things.some((thing) => thing.seen) && things.length > 0) return err({ code: 'nothing-seen-yet' });
    const why = input.why.trim();
    const answer: PostedStocktake = { entryId: pen.entryId, done: [], left: [], overtaken: [], broken: [] };
    const plan: { thing: WalkThing; change: Change }[] = [];
    for (const thing of things) {
      const named = { label: thing.label, name: thing.name };
      const chosen = input.choices.find((each) => each.stockId === thing.stockId);
      const choice = chosen?.choice ?? 'leave';
      if (choice === 'leave') {
        if (thing.status !== 'here') answer.left.push(named);
        continue;
      }
      const same = thing.changedById <= input.asOf && thing.delta === chosen?.delta;
      if (!same || !thing.choices.includes(choice)) {
        answer.overtaken.push({
          ...named,
          by: thing.changedById > input.asOf ? thing.changedBy : (thing.seen?.by ?? ''),
        });
        continue;
      }
      plan.push({ thing, change: changeOf(thing, choice, stocktake) });
      const delta = choice === 'gone' ? -thing.quantity : thing.delta;
      answer.done.push({ ...named, choice, delta, unit: thing.unit });
    }
    if (plan.length > 0 && why === '') return err({ code: 'reason-needed', field: 'why' });
    const broken = new Map<number, BrokenPromise[]>();
    for (const { thing, change } of plan) {
      const { label, name, unit, stockId, ownerJob } = thing;
      const lost = { label, name, unit };
      if (change.jobId === null && ownerJob)
        answer.broken.push({ ...lost, jobId: ownerJob.id, job: ownerJob.name, amount: 1 });
      const promises = await brokenPromises(pen.tx, stockId, thing.quantity + (change.quantityDelta ?? 0));
      broken.set(stockId, promises);
      for (const loser of losersOf(promises)) answer.broken.push({ ...lost, ...loser });
    }
    await pen.enter({ placeId: stocktake.placeId, why, reference: sayPosted(answer) }, answer);
    for (const { thing, change } of plan) {
      const moved = await pen.move(thing.stockId, change);
      if (!moved.ok) return moved;
      await breakPromises(pen, broken.get(thing.stockId) ?? []);
    }
    await pen.tx.stocktake.update({
      where: { id: stocktake.id },
      data: { closedById: pen.entryId, posted: true },
      select: { id: true },
    });
    return ok(answer);
  });

function changeOf(thing: WalkThing, choice: Exclude<WalkChoice, 'leave'>, { placeId }: StocktakeHead): Change {
  if (choice === 'gone') return { quantityDelta: -thing.quantity, ...(thing.ownerJob ? { jobId: null } : {}) };
  // What the book had written off is put where it was found, and what stands elsewhere by the book is moved.
  const moves = choice === 'move' || thing.status === 'back';
  return { quantityDelta: thing.delta, ...(moves ? { placeId } : {}) };
}

/** The posting in a few words, for the history: `2 gone, 1 moved here, 1 corrected`. */
function sayPosted({ done }: PostedStocktake): string {
  const count = (choice: WalkChoice) => done.filter((each) => each.choice === choice).length;
  const parts = [
    [count('gone'), 'gone'],
    [count('move'), 'moved here'],
    [count('correct'), 'corrected'],
  ] as const;
  return (
    parts.flatMap(([number, words]) => (number > 0 ? [`${number} ${words}`] : [])).join(', ') || 'as the book has it'
  );
}
