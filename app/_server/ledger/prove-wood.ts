import { readCut, readScrap } from '@/app/_server/cuts/kept-cut';
import { readOutline } from '@/app/_server/shapes/kept-outline';
import type { WriteTransaction } from '@/prisma/open-book';
import { twiceArea } from '@/shared/outline/outline-area';
import { ROUNDING } from '@/shared/outline/share-wood';

type Found = (rule: string, where: string, says: string) => void;
type Reader = Pick<WriteTransaction, 'piece' | 'cut'>;

const standing = { select: { quantity: true, label: true } } as const;

/**
 * What was cut adds up: shares, scrap and sawdust to what there was, costs to the cost, every share to the piece that has
 * it. A piece that was cut is gone, and what a reversed cut had made is gone.
 */
export async function proveCuts(tx: Reader, found: Found): Promise<void> {
  const rows = await tx.cut.findMany({
    orderBy: { entryId: 'asc' },
    include: {
      entry: { select: { reversedBy: { select: { id: true } } } },
      parent: {
        select: {
          costMinor: true,
          stock: standing,
          shapes: { orderBy: { id: 'asc' }, select: { entryId: true, outline: true } },
        },
      },
      made: {
        select: {
          stockId: true,
          costMinor: true,
          thicknessNm: true,
          stock: standing,
          shapes: { select: { entryId: true, outline: true } },
        },
      },
    },
  });
  for (const { entryId, kind, lines, scrap, entry, parent, made } of rows) {
    const say = (says: string) => found('cuts-add-up', `cut ${entryId}`, says);
    if (entry.reversedBy) {
      for (const { stock } of made) {
        if (stock.quantity > 0n) say(`was reversed, and ${stock.label}, which it made, is on hand`);
      }
    } else if (kind !== 'take' && parent.stock.quantity > 0n) say(`stands, and ${parent.stock.label} is on hand`);
    const cut = readCut(lines);
    if (!cut) continue;
    const wasted = readScrap(scrap);
    const sum = [...cut.parts, ...wasted].reduce((total, { share }) => total + share, cut.sawdust);
    if (sum !== cut.whole) say(`pieces, scrap and sawdust are ${sum}, there was ${cut.whole}`);
    const cost = made.reduce((total, piece) => total + (piece.costMinor ?? 0n), 0n);
    if (cost !== (parent.costMinor ?? 0n)) say(`the pieces cost ${cost}, what they were cut from ${parent.costMinor}`);
    const before = parent.shapes.filter((shape) => shape.entryId < entryId).at(-1);
    if (cut.shared === 'area' && before && twiceArea(readOutline(before.outline)) !== cut.whole) {
      say(`there was ${cut.whole}, the outline it was cut from has ${twiceArea(readOutline(before.outline))}`);
    }
    if (cut.parts.length !== made.length) say(`names ${cut.parts.length} pieces and made ${made.length}`);
    for (const { stockId, share } of cut.parts) {
      const piece = made.find((each) => each.stockId === stockId);
      const shape = piece?.shapes.find((each) => each.entryId === entryId);
      if (!piece || !shape) say(`names piece ${stockId}, which it did not make`);
      // A drawn piece may differ from its share by the rounding of the corners that each line made.
      else if (cut.shared === 'thickness') continue;
      else if (Math.abs(twiceArea(readOutline(shape.outline)) - share) > ROUNDING * Math.max(1, cut.lines.length))
        say(`gave ${piece.stock.label} a share of ${share}, its outline has ${twiceArea(readOutline(shape.outline))}`);
    }
  }
}

/** The two of a pair name each other, and the measuring that counts for a piece is one of its own. */
export async function provePairsAndShapes(tx: Reader, found: Found): Promise<void> {
  const rows = await tx.piece.findMany({
    where: { OR: [{ pairedWithId: { not: null } }, { shapeId: { not: null } }] },
    orderBy: { stockId: 'asc' },
    select: {
      stockId: true,
      pairedWithId: true,
      stock: { select: { label: true } },
      pairedWith: { select: { pairedWithId: true, stock: { select: { label: true } } } },
      shape: { select: { id: true, pieceId: true } },
    },
  });
  for (const { stockId, stock, pairedWith, shape } of rows) {
    const where = stock.label ?? `thing ${stockId}`;
    if (pairedWith && pairedWith.pairedWithId !== stockId) {
      found('pairs-name-each-other', where, `is paired with ${pairedWith.stock.label}, which does not name it`);
    }
    if (shape && shape.pieceId !== stockId) {
      found('shapes-are-of-their-piece', where, `goes by shape ${shape.id}, which is of thing ${shape.pieceId}`);
    }
  }
}

/** A pack is on hand as long as a board is left in it; one that is gone with boards in it went as a whole. */
export async function provePacks(tx: Reader, found: Found): Promise<void> {
  const rows = await tx.piece.findMany({
    where: { form: 'pack' },
    orderBy: { stockId: 'asc' },
    select: {
      stockId: true,
      costMinor: true,
      boards: { select: { takenBy: { select: { reversedBy: { select: { id: true } } } } } },
      cuts: {
        where: { kind: 'take', entry: { reversedBy: null } },
        select: { made: { select: { costMinor: true } } },
      },
      stock: {
        select: {
          label: true,
          quantity: true,
          movements: {
            where: { quantityDelta: { not: 0 }, reversesId: null, reversedBy: null },
            select: { quantityDelta: true, entry: { select: { kind: true } } },
          },
        },
      },
    },
  });
  for (const { stockId, costMinor, boards, cuts, stock } of rows) {
    const where = stock.label ?? `thing ${stockId}`;
    const left = boards.filter(({ takenBy }) => !takenBy || takenBy.reversedBy).length;
    const arrived = stock.movements.some(({ quantityDelta }) => quantityDelta > 0n);
    const went = stock.movements.some(
      ({ quantityDelta, entry }) => quantityDelta < 0n && entry.kind !== 'boards-taken',
    );
    if (stock.quantity > 0n && left === 0) found('packs-hold-boards', where, 'is on hand, and no board is left in it');
    if (stock.quantity === 0n && left > 0 && arrived && !went) {
      found('packs-hold-boards', where, `is gone, and ${left} boards are left in it`);
    }
    const cost = cuts.flatMap(({ made }) => made).reduce((sum, board) => sum + (board.costMinor ?? 0n), 0n);
    if (left === 0 && arrived && cost !== (costMinor ?? 0n)) {
      found('cuts-add-up', where, `its boards cost ${cost}, the pack ${costMinor}`);
    }
  }
}
