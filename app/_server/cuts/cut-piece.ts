import type { Command } from '@/app/_server/act';
import { flagsOfPart } from '@/app/_server/cuts/flags-of-part';
import { handOver, keepCut, layDown, pairUp } from '@/app/_server/cuts/keep-cut';
import { halvesOf, type Parts, partsByLines } from '@/app/_server/cuts/parts-of-cut';
import { refuseToCut } from '@/app/_server/cuts/refuse-to-cut';
import { sayCut } from '@/app/_server/cuts/say-cut';
import { outlineOfPiece } from '@/app/_server/fits/outline-of-piece';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';
import { sizesOfOutline } from '@/app/_server/shapes/sizes-of-outline';
import { type AddedPiece, addPiece } from '@/app/_server/stock/add-piece';
import { loadPiece, type PieceLine } from '@/app/_server/stock/load-piece';
import { FACT_COLUMNS } from '@/app/_server/stock/piece-fields';
import type { NamedLine } from '@/shared/outline/cut-line';
import { shareCost } from '@/shared/outline/share-wood';
import { err, ok, type Result } from '@/shared/result/result';

/** What becomes of one piece that a cut makes. */
export type Become = { as: 'slab' | 'board' | 'sheet' | 'offcut' | 'scrap'; promised: boolean };

export type CutPiece = {
  label: string;
  /** The measuring the lines were drawn on; null where there was none. */
  shapeId: number | null;
  how:
    | { by: 'lines'; lines: NamedLine[]; bands: 'kept' | 'cut' }
    /** `upperNm` is what is left under face A. */
    | { by: 'resaw'; upperNm: number; kerfNm: number };
  /** One for each piece, in the order `cutWood` gives them. */
  become: Become[];
  why: string;
};

/** `entryId` is what undoing it reverses. */
export type WasCut = { entryId: number; pieces: AddedPiece[]; scrap: number };

/**
 * Cuts, breaks, rips or resaws a piece, or cuts its bands and lets it fall. It is used up, and what is kept of it are pieces
 * with labels of their own: where it was, on hold as it was, with their part of its outline, marks, readings and cost.
 */
export const cutPiece: Command<CutPiece, WasCut> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'piece-cut', request: input }, async (pen) => {
    const line = await loadPiece(pen.tx, input.label);
    const refused = await refuseToCut(pen.tx, line, input);
    if (refused || !line) return err(refused ?? { code: 'not-found', facts: { label: input.label } });
    const found = partsOf(line, input);
    if (!found.ok) return found;
    const cut = found.value;
    if (cut.parts.length !== input.become.length) {
      return err({ code: 'measured-meanwhile', facts: { label: line.label } });
    }
    const all = cut.parts.map((part, nr) => ({ part, become: input.become[nr] ?? { as: 'scrap', promised: false } }));
    const kept = all.flatMap(({ part, become }) => {
      const { as, promised } = become;
      return as === 'scrap' ? [] : [{ part, as, promised }];
    });
    const scrap = all.filter(({ become }) => become.as === 'scrap').map(({ part }) => part);
    if (kept.length === 0) return err({ code: 'all-scrap', facts: { label: line.label } });

    const costs = line.cost
      ? shareCost(
          line.cost.minor,
          kept.map(({ part }) => part.share),
        )
      : [];
    const columns = await pen.tx.piece.findUniqueOrThrow({
      where: { stockId: line.stockId },
      select: { ...FACT_COLUMNS, currency: true, receivedOn: true },
    });
    const isResawn = input.how.by === 'resaw';
    const pieces: AddedPiece[] = [];
    for (const [nr, { part, as }] of kept.entries()) {
      const cost = costs[nr];
      const piece = await addPiece(pen, {
        ...columns,
        ...(isResawn ? { quarters: null } : {}),
        form: as,
        flags: flagsOfPart({ flags: line.facts.flags, marks: line.marks }, part, sortOf(input)).sort().join(','),
        thicknessNm: BigInt(part.thicknessNm),
        ...sizesOfOutline(part.outline),
        costMinor: cost === undefined ? null : BigInt(cost),
      });
      pieces.push(piece);
    }
    const answer: WasCut = { entryId: pen.entryId, pieces, scrap: scrap.length };
    await pen.enter({ why: sayCut(line, input, cut, scrap.length) }, answer);
    const made = kept.map(({ part, promised }, nr) => ({ part, promised, stockId: pieces[nr]?.stockId ?? 0 }));
    await keepCut(pen, line, input, cut, { made, scrap });
    for (const { part, stockId } of made) await layDown(pen, line, part, stockId);
    if (isResawn && made.length === 2) await pairUp(pen, made);
    const moved = await handOver(pen, line, made);
    return moved ? err(moved) : ok(answer);
  });

function partsOf(line: PieceLine, { how }: CutPiece): Result<Parts, Refusal> {
  const outline = outlineOfPiece(line);
  if (!outline.ok) return err({ code: 'no-outline', facts: { why: outline.error.code } });
  const slab = { outline: outline.value, line };
  if (how.by === 'resaw') return ok(halvesOf(slab, how));
  const parts = partsByLines(slab, how.lines, how.bands);
  if (parts.ok) return parts;
  const { code, line: nr } = parts.error;
  return err({ code: 'line-does-not-cut', field: `lines.${nr}`, facts: { why: code, line: nr + 1 } });
}

function sortOf({ how }: CutPiece): { bands: 'kept' | 'cut'; broke: boolean } {
  if (how.by === 'resaw') return { bands: 'kept', broke: false };
  return { bands: how.bands, broke: how.bands === 'cut' || how.lines.some(({ way }) => way === 'break') };
}
