import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { NamedLine } from '@/shared/outline/cut-line';
import { type CutFault, cutWood } from '@/shared/outline/cut-wood';
import { type Laid, layMark, layOutline, markInHalf } from '@/shared/outline/lay-anew';
import { edgesOfPart } from '@/shared/outline/live-edges-of-part';
import { marksOfPart } from '@/shared/outline/marks-of-part';
import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { type NewMark, NO_MARKS, type PieceMarks } from '@/shared/outline/piece-marks';
import { placeOfPoint } from '@/shared/outline/place-of-point';
import type { Point } from '@/shared/outline/point';
import { shareWood } from '@/shared/outline/share-wood';
import { ok, type Result } from '@/shared/result/result';

/** One piece that a cut would make, before anybody said what becomes of it. */
export type Part = {
  /** Where it lies in the parent, micrometres. */
  readonly inParent: Outline;
  readonly laid: Laid;
  /** As its own piece has it. */
  readonly outline: Outline;
  readonly marks: readonly NewMark[];
  readonly edges: { readonly left: boolean; readonly right: boolean };
  readonly thicknessNm: number;
  readonly share: number;
  /** Whether a place on the parent, as its readings have it, is on this piece. */
  readonly holds: (place: Partial<Point>) => boolean;
};

export type Parts = {
  readonly shared: 'area' | 'thickness';
  readonly whole: number;
  readonly sawdust: number;
  readonly parts: readonly Part[];
};

type Slab = { readonly outline: Outline; readonly line: Pick<PieceLine, 'marks' | 'thicknessNm'> };

/** The pieces a slab falls into along lines. With `bands` cut, no piece keeps one, and the marked breaks become edges. */
export function partsByLines(
  { outline, line }: Slab,
  lines: readonly NamedLine[],
  bands: 'kept' | 'cut',
): Result<Parts, CutFault> {
  const cut = cutWood(outline, lines);
  if (!cut.ok) return cut;
  const isSawn = lines.some(({ kerf }) => kerf > 0);
  const shares = shareWood(outline, cut.value, isSawn);
  const marks: PieceMarks = bands === 'kept' ? line.marks : withoutBands(line.marks);
  const parts = cut.value.map((inParent, nr): Part => {
    const laid = { shift: boundsOf(inParent.ring).left, turned: false };
    return {
      inParent,
      laid,
      outline: layOutline(inParent, laid),
      marks: marksOfPart(marks, outline, inParent).map((mark) => layMark(mark, laid)),
      edges: edgesOfPart(outline, inParent),
      thicknessNm: line.thicknessNm,
      share: shares.parts[nr] ?? 0,
      holds: (place) => isOn(inParent, place),
    };
  });
  return ok({ shared: 'area', whole: Math.round(shares.sawdust + sumOf(parts)), sawdust: shares.sawdust, parts });
}

/**
 * The two halves of a slab sawn through its thickness. Each keeps its old face as face A and has the sawn one as face B;
 * the lower is turned over, so that its left edge is the right one of the slab: opened like a book, they mirror each other.
 */
export function halvesOf({ outline, line }: Slab, { upperNm, kerfNm }: { upperNm: number; kerfNm: number }): Parts {
  const thickness = Number(line.thicknessNm);
  const { left } = boundsOf(outline.ring);
  const marks = marksOfPart(line.marks, outline, outline);
  const parts = (['upper', 'lower'] as const).map((half): Part => {
    const laid = { shift: left, turned: half === 'lower' };
    const inHalf = marks.flatMap((mark) => markInHalf(mark, half, { thickness, upper: upperNm, kerf: kerfNm }) ?? []);
    const thicknessNm = half === 'upper' ? upperNm : thickness - upperNm - kerfNm;
    return {
      inParent: outline,
      laid,
      outline: layOutline(outline, laid),
      marks: inHalf.map((mark) => layMark(mark, laid)),
      edges: { left: true, right: true },
      thicknessNm,
      share: thicknessNm,
      holds: () => true,
    };
  });
  return { shared: 'thickness', whole: thickness, sawdust: kerfNm, parts };
}

const sumOf = (parts: readonly Part[]) => parts.reduce((sum, { share }) => sum + share, 0);

const withoutBands = ({ defects, endChecks }: PieceMarks): PieceMarks => ({
  ...NO_MARKS,
  endChecks,
  defects: defects.filter(({ kind }) => kind !== 'break'),
});

function isOn(part: Outline, { x, y }: Partial<Point>): boolean {
  if (x === undefined) return true;
  if (y !== undefined) return placeOfPoint(part, { x, y }) !== 'outside';
  const { left, right } = boundsOf(part.ring);
  return left <= x && x <= right;
}
