import type { CutPiece } from '@/app/_server/cuts/cut-piece';
import { inheritReadings } from '@/app/_server/cuts/inherit-readings';
import { writeCut, writeScrap } from '@/app/_server/cuts/kept-cut';
import type { Part, Parts } from '@/app/_server/cuts/parts-of-cut';
import type { Pen } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';
import { markColumns } from '@/app/_server/shapes/kept-marks';
import { nextMarkId } from '@/app/_server/shapes/next-mark-id';
import { setShape } from '@/app/_server/shapes/set-shape';
import type { PieceLine } from '@/app/_server/stock/load-piece';

/** A piece that was added, before anything but its own measures is kept of it. */
type Made = { part: Part; promised: boolean; stockId: number };

/** The cut itself: along which lines, what went to whom, and what was lost. */
export async function keepCut(
  pen: Pen,
  line: PieceLine,
  input: CutPiece,
  { shared, whole, sawdust }: Parts,
  { made, scrap }: { made: Made[]; scrap: Part[] },
): Promise<void> {
  const { how } = input;
  const lines = how.by === 'lines' ? how.lines : [];
  const kerfNm = how.by === 'resaw' ? how.kerfNm : Math.max(0, ...lines.map(({ kerf }) => kerf * 1000));
  const parts = made.map(({ part, stockId }) => ({ stockId, share: part.share, ...part.laid }));
  await pen.tx.cut.create({
    data: {
      entryId: pen.entryId,
      pieceId: line.stockId,
      kind: kindOf(input),
      lines: writeCut({ lines, shared, whole, sawdust, parts }),
      kerfNm: BigInt(kerfNm),
      scrap: writeScrap(scrap.map((part) => ({ outline: part.inParent, share: part.share }))),
    },
    select: { entryId: true },
  });
}

/** What the new piece has of the old one, beside its own measures: outline, marks, readings, and what was seen in the wood. */
export async function layDown(pen: Pen, line: PieceLine, part: Part, stockId: number): Promise<void> {
  const hadEdges = line.facts.flags.some((flag) => flag === 'live-edge-left' || flag === 'live-edge-right');
  const hasEdges = part.edges.left || part.edges.right;
  await pen.tx.piece.update({
    where: { stockId },
    data: {
      cutId: pen.entryId,
      sawn: line.sawn,
      // As crooked as the whole was, at the most: nobody measured the part.
      cupNm: line.cupNm === null ? null : BigInt(line.cupNm),
      bowNm: line.bowNm === null ? null : BigInt(line.bowNm),
      twistNm: line.twistNm === null ? null : BigInt(line.twistNm),
      sapwoodNm: line.sapwoodNm !== null && (hasEdges || !hadEdges) ? BigInt(line.sapwoodNm) : null,
    },
    select: { stockId: true },
  });
  await setShape(pen, stockId, { source: 'cut', outline: part.outline });
  const first = await nextMarkId(pen.tx);
  await pen.tx.mark.createMany({
    data: part.marks.map((mark, nr) => ({
      id: first + nr,
      pieceId: stockId,
      entryId: pen.entryId,
      ...markColumns(mark),
    })),
  });
  await inheritReadings(pen, line.stockId, part, stockId);
}

/** Two halves that name each other. */
export async function pairUp(pen: Pen, made: readonly Made[]): Promise<void> {
  const [one, two] = made;
  for (const [a, b] of [
    [one, two],
    [two, one],
  ]) {
    if (a && b) await pen.tx.piece.update({ where: { stockId: a.stockId }, data: { pairedWithId: b.stockId } });
  }
}

/** The old piece leaves the shelf and whoever it was promised to; the new ones stand where it stood. */
export async function handOver(pen: Pen, line: PieceLine, made: readonly Made[]): Promise<Refusal | undefined> {
  const { placeId, hold, ownerJobId } = await pen.tx.stock.findUniqueOrThrow({
    where: { id: line.stockId },
    select: { placeId: true, hold: true, ownerJobId: true },
  });
  const gone = await pen.move(line.stockId, { quantityDelta: -1, jobId: null });
  if (!gone.ok) return gone.error;
  for (const { stockId, promised } of made) {
    const jobId = promised ? ownerJobId : null;
    const moved = await pen.move(stockId, { quantityDelta: 1, placeId, hold, jobId });
    if (!moved.ok) return moved.error;
  }
  return undefined;
}

function kindOf({ how }: CutPiece): string {
  if (how.by === 'resaw') return 'resaw';
  if (how.bands === 'cut') return 'unstrap';
  const only = (way: string) => how.lines.every((line) => line.way === way);
  return only('rip') ? 'rip' : only('break') ? 'break' : 'cut';
}
