import { undoAddedPart } from '@/app/_server/jobs/undo-added-part';
import type { Pen } from '@/app/_server/ledger/write-entry';
import { undoTakenNeed } from '@/app/_server/needs/undo-taken-need';
import { undoPlannedPour, undoPouredLift, undoRemovedPour, undoWeighing } from '@/app/_server/pours/undo-pours';
import type { Refusal } from '@/app/_server/refusal';
import { flagsOfMarks } from '@/app/_server/shapes/flags-of-marks';
import type { KeptSizes } from '@/app/_server/shapes/load-to-measure';
import { keptFlags } from '@/app/_server/stock/piece-fields';
import { undoClosedStocktake } from '@/app/_server/stocktake/undo-closed-stocktake';
import { undoStepPart } from '@/app/_server/timeline/undo-step-part';
import { undoMovedSteps, undoPlannedSteps, undoRemovedStep, undoStepFact } from '@/app/_server/timeline/undo-steps';
import type { PieceFlag } from '@/shared/wood/piece';

type Undone = { id: number; stockId: number | null; jobId: number | null; answer: string };
type UndoFacts = (pen: Pen, entry: Undone) => Promise<Refusal | undefined>;

/** Acts on facts that are not movements, and how each is undone by hand. */
const UNDO: ReadonlyMap<string, UndoFacts> = new Map<string, UndoFacts>([
  ['piece-marked', undoMarks],
  ['piece-measured', undoMeasuring],
  ['straps-cut', undoMarks],
  ['sample-looked', undoLook],
  ['marks-confirmed', undoMarks],
  ['pieces-paired', undoPairing],
  ['pair-parted', undoParting],
  ['part-added', undoAddedPart],
  ['step-added', undoPlannedSteps],
  ['coats-planned', undoPlannedSteps],
  ['steps-moved', undoMovedSteps],
  ['step-removed', async (pen, entry) => (await undoTakenNeed(pen, entry)) ?? undoRemovedStep(pen, entry)],
  ['step-part-set', undoStepPart],
  ['step-done', undoStepFact],
  ['pour-planned', undoPlannedPour],
  ['pour-changed', undoPlannedPour],
  ['pour-removed', undoRemovedPour],
  ['lift-poured', undoPouredLift],
  ['weighed-out', undoWeighing],
  ['need-changed', undoTakenNeed],
  ['need-removed', undoTakenNeed],
  ['stocktake-posted', undoClosedStocktake],
  ['stocktake-given-up', undoClosedStocktake],
]);

/** Whether an entry of this kind wrote facts that are put back by hand when it is reversed. */
export const hasFactsToUndo = ({ kind }: { kind: string }): boolean => UNDO.has(kind);

/** Puts back what the entry changed beside its movements; a refusal where that would hide what came after. */
export async function undoFacts(pen: Pen, entry: Undone & { kind: string }): Promise<Refusal | undefined> {
  return UNDO.get(entry.kind)?.(pen, entry);
}

/** The marks it put on come off, those it took off are on again, and so are the words that stood for them. */
async function undoMarks(pen: Pen, { id, stockId, answer }: Undone): Promise<Refusal | undefined> {
  const piece = await pen.tx.piece.findUniqueOrThrow({
    where: { stockId: stockId ?? 0 },
    select: { stockId: true, flags: true, stock: { select: { label: true, quantity: true } } },
  });
  const facts = { label: piece.stock.label };
  if (piece.stock.quantity === 0n) return { code: 'no-longer-here', facts };
  const measured = await pen.tx.shape.findFirst({
    where: { pieceId: piece.stockId, entryId: { gt: id }, entry: { reversedBy: null } },
    select: { id: true },
  });
  if (measured) return { code: 'measured-meanwhile', facts };
  const takenOffSince = await pen.tx.mark.findFirst({
    where: { entryId: id, removedById: { not: null } },
    select: { id: true },
  });
  if (takenOffSince) return { code: 'mark-gone', facts };
  await pen.tx.mark.updateMany({ where: { entryId: id }, data: { removedById: pen.entryId } });
  await pen.tx.mark.updateMany({ where: { removedById: id }, data: { removedById: null } });
  const said = JSON.parse(answer) as { flagged?: PieceFlag[]; unflagged?: PieceFlag[] };
  const flags = new Set(keptFlags(piece.flags));
  for (const flag of said.flagged ?? []) flags.delete(flag);
  // Another mark that stands may say the same.
  const left = await pen.tx.mark.findMany({
    where: { pieceId: piece.stockId, removedById: null },
    select: { kind: true },
  });
  for (const flag of flagsOfMarks(left.map(({ kind }) => kind))) flags.add(flag);
  for (const flag of said.unflagged ?? []) flags.add(flag);
  await pen.tx.piece.update({
    where: { stockId: piece.stockId },
    data: { flags: [...flags].sort().join(',') },
    select: { stockId: true },
  });
  return undefined;
}

/** The measuring before it counts again, or, where there was none, the sizes it had. */
async function undoMeasuring(pen: Pen, { id, stockId, answer }: Undone): Promise<Refusal | undefined> {
  const piece = await pen.tx.piece.findUniqueOrThrow({
    where: { stockId: stockId ?? 0 },
    select: {
      stockId: true,
      shape: { select: { entryId: true } },
      stock: { select: { label: true, quantity: true } },
    },
  });
  const facts = { label: piece.stock.label };
  if (piece.stock.quantity === 0n) return { code: 'no-longer-here', facts };
  if (piece.shape?.entryId !== id) return { code: 'changed-since', facts: { ...facts, field: 'outline' } };
  const marked = await pen.tx.mark.findFirst({
    where: { pieceId: piece.stockId, entryId: { gt: id }, removedById: null },
    select: { id: true },
  });
  if (marked) return { code: 'changed-since', facts: { ...facts, field: 'marks' } };
  const { before } = JSON.parse(answer) as { before?: KeptSizes };
  if (!before) return { code: 'nothing-to-reverse' };
  const earlier = await pen.tx.shape.findFirst({
    where: { pieceId: piece.stockId, entryId: { lt: id }, entry: { reversedBy: null } },
    orderBy: { id: 'desc' },
    select: { id: true },
  });
  await pen.tx.piece.update({
    where: { stockId: piece.stockId },
    data: {
      shapeId: earlier?.id ?? null,
      lengthNm: BigInt(before.lengthNm),
      widthStartNm: BigInt(before.widthStartNm),
      widthMiddleNm: BigInt(before.widthMiddleNm),
      widthEndNm: BigInt(before.widthEndNm),
    },
    select: { stockId: true },
  });
  return undefined;
}

/** The day it was to be looked at is its day again, unless somebody looked since. */
async function undoLook(pen: Pen, { id, answer }: Undone): Promise<Refusal | undefined> {
  const { sampleId, before } = JSON.parse(answer) as { sampleId: number; before: string | null };
  const later = await pen.tx.sampleLook.findFirst({
    where: { sampleId, entryId: { gt: id }, entry: { reversedBy: null } },
    select: { id: true },
  });
  if (later) return { code: 'changed-since', facts: { label: '', field: 'sample' } };
  await pen.tx.sample.update({ where: { id: sampleId }, data: { lookOn: before }, select: { id: true } });
  return undefined;
}

async function undoPairing(pen: Pen, entry: Undone): Promise<Refusal | undefined> {
  const [one, two] = await bothOf(pen, entry);
  if (!one || !two || one.pairedWithId !== two.stockId) {
    return { code: 'changed-since', facts: { label: one?.stock.label ?? '', field: 'pair' } };
  }
  await pen.tx.piece.updateMany({
    where: { stockId: { in: [one.stockId, two.stockId] } },
    data: { pairedWithId: null },
  });
  return undefined;
}

async function undoParting(pen: Pen, entry: Undone): Promise<Refusal | undefined> {
  const [one, two] = await bothOf(pen, entry);
  const changed = [one, two].find((half) => !half || half.pairedWithId !== null || half.stock.quantity === 0n);
  if (!one || !two || changed) {
    return { code: 'changed-since', facts: { label: changed?.stock.label ?? '', field: 'pair' } };
  }
  await pen.tx.piece.update({ where: { stockId: one.stockId }, data: { pairedWithId: two.stockId } });
  await pen.tx.piece.update({ where: { stockId: two.stockId }, data: { pairedWithId: one.stockId } });
  return undefined;
}

async function bothOf(pen: Pen, { id, stockId }: Undone) {
  const also = await pen.tx.entryAlso.findMany({ where: { entryId: id }, select: { stockId: true } });
  const ids = [stockId ?? 0, ...also.map((each) => each.stockId)];
  const rows = await pen.tx.piece.findMany({
    where: { stockId: { in: ids } },
    select: { stockId: true, pairedWithId: true, stock: { select: { label: true, quantity: true } } },
  });
  return ids.map((each) => rows.find((row) => row.stockId === each));
}
