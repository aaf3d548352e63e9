import { readCut, readScrap } from '@/app/_server/cuts/kept-cut';
import { outlineOfPiece } from '@/app/_server/fits/outline-of-piece';
import { readOutline } from '@/app/_server/shapes/kept-outline';
import { type PieceLine, pieceLine, pieceSelect } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';
import { layOutline } from '@/shared/outline/lay-anew';
import type { Outline } from '@/shared/outline/outline';

/** What a piece was cut into, where each part lay in it. */
type FamilyCut = {
  readonly kind: string;
  readonly parts: readonly Outline[];
  readonly scrap: readonly Outline[];
  /** Of what there was, 0 to 1. */
  readonly sawdust: number;
};

/** A piece of a family, as it is drawn: what became of it, and what was made of it. */
export type FamilyPiece = {
  readonly line: PieceLine;
  /** None of a pack of boards. */
  readonly outline: Outline | undefined;
  readonly cut: FamilyCut | undefined;
  readonly children: readonly FamilyPiece[];
};

/** As many pieces as are drawn at once; a pack of hundreds of boards shows the first. */
const MOST = 120;

/** The family of a piece from the first it was cut from down, cuts that stand only; undefined where it has none. */
export async function readFamily(book: OpenBook, stockId: number): Promise<FamilyPiece | undefined> {
  let root = stockId;
  for (;;) {
    const up = await book.read.piece.findUnique({
      where: { stockId: root },
      select: { cutFrom: { select: { pieceId: true } } },
    });
    if (!up?.cutFrom) break;
    root = up.cutFrom.pieceId;
  }
  const left = { pieces: MOST };
  const family = await branch(book, root, left);
  return family && family.children.length > 0 ? family : undefined;
}

async function branch(book: OpenBook, stockId: number, left: { pieces: number }): Promise<FamilyPiece | undefined> {
  const row = await book.read.piece.findUnique({ where: { stockId }, select: pieceSelect });
  if (!row) return undefined;
  left.pieces -= 1;
  const line = pieceLine(row);
  const outline = line.form === 'pack' ? undefined : outlineOfPiece(line);
  const cuts = await book.read.cut.findMany({
    where: { pieceId: stockId, entry: { reversedBy: null } },
    orderBy: { entryId: 'asc' },
    select: {
      entryId: true,
      kind: true,
      lines: true,
      scrap: true,
      made: {
        orderBy: { stockId: 'asc' },
        select: { stockId: true, shapes: { select: { entryId: true, outline: true } } },
      },
    },
  });
  const children: FamilyPiece[] = [];
  for (const { made } of cuts) {
    for (const child of made) {
      if (left.pieces <= 0) break;
      const below = await branch(book, child.stockId, left);
      if (below) children.push(below);
    }
  }
  const last = cuts.at(-1);
  return {
    line,
    outline: outline?.ok ? outline.value : undefined,
    cut: last && drawnCut(last),
    children,
  };
}

type CutRow = {
  entryId: number;
  kind: string;
  lines: string;
  scrap: string;
  made: { stockId: number; shapes: { entryId: number; outline: string }[] }[];
};

function drawnCut({ entryId, kind, lines, scrap, made }: CutRow): FamilyCut | undefined {
  const cut = readCut(lines);
  if (!cut) return undefined;
  const parts = cut.parts.flatMap(({ stockId, shift, turned }) => {
    const shape = made.find((each) => each.stockId === stockId)?.shapes.find((each) => each.entryId === entryId);
    return shape ? [layOutline(readOutline(shape.outline), { shift: -shift, turned })] : [];
  });
  return {
    kind,
    parts: cut.shared === 'area' ? parts : [],
    scrap: readScrap(scrap).map(({ outline }) => outline),
    sawdust: cut.whole > 0 ? cut.sawdust / cut.whole : 0,
  };
}
