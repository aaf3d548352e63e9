import type { Command } from '@/app/_server/act';
import { type Pen, writeEntry } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';
import { loadPiece, type PieceLine } from '@/app/_server/stock/load-piece';
import { err, ok } from '@/shared/result/result';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

export type PairPieces = { label: string; withLabel: string };

/** Pairs two sisters of a flitch for a bookmatch. A piece is in one pair; a half that is no longer in the shop frees the other. */
export const pairPieces: Command<PairPieces, { label: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'pieces-paired', request: input }, async (pen) => {
    const [one, two] = [await loadPiece(pen.tx, input.label), await loadPiece(pen.tx, input.withLabel)];
    if (!one) return err({ code: 'not-found', facts: { label: input.label } });
    if (!two) return err({ code: 'not-found', field: 'withLabel', facts: { label: input.withLabel } });
    const refused = refusePair(one, two);
    if (refused) return err(refused);
    await pen.enter({ stockId: one.stockId, alsoStockId: two.stockId, why: sayPair(one, two) }, { label: one.label });
    for (const half of [one, two]) await part(pen, half);
    await pen.tx.piece.update({ where: { stockId: one.stockId }, data: { pairedWithId: two.stockId } });
    await pen.tx.piece.update({ where: { stockId: two.stockId }, data: { pairedWithId: one.stockId } });
    return ok({ label: one.label });
  });

/** Parts a pair: from now on each is a slab of its own. */
export const partPair: Command<{ label: string }, { label: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'pair-parted', request: input }, async (pen) => {
    const one = await loadPiece(pen.tx, input.label);
    if (!one) return err({ code: 'not-found', facts: { label: input.label } });
    if (!one.pairedWith) return err({ code: 'not-paired', facts: { label: one.label } });
    await pen.enter(
      { stockId: one.stockId, alsoStockId: one.pairedWith.stockId, why: sayPair(one, one.pairedWith) },
      { label: one.label },
    );
    await part(pen, one);
    return ok({ label: one.label });
  });

/** What stands against these two as a pair, or undefined. */
function refusePair(one: PieceLine, two: PieceLine): Refusal | undefined {
  const fault = (line: PieceLine, why: string): Refusal => ({
    code: 'pair-does-not-fit',
    field: 'withLabel',
    facts: { label: line.label, why },
  });
  if (one.stockId === two.stockId) return fault(two, 'self');
  for (const half of [one, two]) {
    if (!half.facts.inStock) return fault(half, 'gone');
    if (half.pairedWith?.inStock) {
      return { code: 'paired-already', facts: { label: half.label, with: half.pairedWith.label } };
    }
  }
  const isSister = one.species === two.species && one.flitch !== '' && one.flitch === two.flitch;
  return isSister ? undefined : fault(two, 'stranger');
}

async function part(pen: Pen, { stockId, pairedWith }: PieceLine): Promise<void> {
  const both = [stockId, ...(pairedWith ? [pairedWith.stockId] : [])];
  await pen.tx.piece.updateMany({ where: { stockId: { in: both } }, data: { pairedWithId: null } });
}

const sayPair = (one: Pick<PieceLine, 'label'>, two: Pick<PieceLine, 'label'>) =>
  `${printOwnLabel(one.label)} and ${printOwnLabel(two.label)}`;
