import { outlineOfPiece } from '@/app/_server/fits/outline-of-piece';
import { type PieceLine, pieceLine, pieceSelect } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';
import { outlineArea } from '@/shared/outline/outline-area';
import { twiceRingArea } from '@/shared/outline/ring-area';
import type { Nanometres } from '@/shared/units/nanometres';

/** Something on the drawing of a piece that resin can go into: a gap in the outline, or a mark that is to be filled. */
type FillChoice = {
  id: string;
  label: string;
  what: string;
  /** Square millimetres. */
  area: number;
  depth: Nanometres;
};

/** The wood of a piece as it would stand in a form. */
export type WoodChoice = { label: string; what: string; cubicMillimetres: number; thickness: Nanometres };

export type VoidChoices = { fills: FillChoice[]; wood: WoodChoice[] };

/**
 * What the drawings of a job's pieces have to fill, and how much wood they are: of those that are still there, and of those
 * that were taken for this job, which stand in its form. Pieces that are named count as its own while they are free: they
 * are to be promised to it.
 */
export async function voidChoices(book: OpenBook, jobId: number, named: readonly string[] = []): Promise<VoidChoices> {
  const free = { label: { in: [...named] }, ownerJobId: null, quantity: { gt: 0 } };
  const there = { ownerJobId: jobId, quantity: { gt: 0 } };
  const outOfIt = { quantityDelta: { lt: 0 }, reversesId: null, reversedBy: null };
  const taken = {
    ownerJobId: jobId,
    quantity: 0,
    movements: { some: { ...outOfIt, entry: { kind: 'piece-taken', jobId } } },
  };
  const rows = await book.read.piece.findMany({
    where: { stock: { OR: [there, taken, free] } },
    select: pieceSelect,
    orderBy: { stockId: 'asc' },
    take: 50,
  });
  const pieces = rows.map(pieceLine);
  return { fills: pieces.flatMap(fillsOf), wood: pieces.flatMap(woodOf) };
}

function fillsOf(piece: PieceLine): FillChoice[] {
  const { label, thicknessNm, shape, marks } = piece;
  const gaps = (shape?.outline.holes ?? []).map((hole, nr): FillChoice => {
    const what = `gap ${nr + 1} through it`;
    return { id: `${label}/gap/${nr}`, label, what, area: areaOf(hole), depth: thicknessNm };
  });
  const fills = marks.defects
    .filter(({ decision }) => decision === 'fill')
    .map(({ id, kind, place, depth, note }): FillChoice => {
      const area = place.shape === 'circle' ? Math.PI * (place.radius / 1000) ** 2 : areaOf(place.ring);
      const deep = depth.face === 'through' ? thicknessNm : depth.depth;
      return { id: `${label}/mark/${id}`, label, what: note ? `${kind}, ${note}` : kind, area, depth: deep };
    });
  return [...gaps, ...fills].filter(({ area, depth }) => area > 0 && depth > 0);
}

function woodOf(piece: PieceLine): WoodChoice[] {
  const outline = outlineOfPiece(piece);
  if (!outline.ok) return [];
  const cubicMillimetres = Math.round(outlineArea(outline.value) * (piece.thicknessNm / 1e6));
  const { label, species, form, thicknessNm, facts } = piece;
  const what = `${species} ${form}${facts.inStock ? '' : ', taken'}`;
  return [{ label, what, cubicMillimetres, thickness: thicknessNm }];
}

/** Square millimetres of a ring in micrometres, whichever way round it runs. */
const areaOf = (ring: Parameters<typeof twiceRingArea>[0]) => Math.abs(Number(twiceRingArea(ring))) / 2e6;
