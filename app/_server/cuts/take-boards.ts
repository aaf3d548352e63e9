import type { Command } from '@/app/_server/act';
import { type Pen, writeEntry } from '@/app/_server/ledger/write-entry';
import { type AddedPiece, addPiece } from '@/app/_server/stock/add-piece';
import { loadPiece, type PieceLine } from '@/app/_server/stock/load-piece';
import { FACT_COLUMNS } from '@/app/_server/stock/piece-fields';
import { STRIKES, standing } from '@/app/_server/stock/struck-readings';
import { err, ok } from '@/shared/result/result';
import { sayBoardSize } from '@/shared/wood/say-board-size';
import { shareAmongBoards } from '@/shared/wood/share-among-boards';

/** Boards to be taken out of a pack, by their numbers in its tally. */
export type TakeBoards = { label: string; boardIds: number[]; why: string };

/** `entryId` is what undoing it reverses; `left` is how many boards are still in the pack. */
export type TakenBoards = { entryId: number; pieces: AddedPiece[]; left: number };

/**
 * Takes boards out of a pack: each becomes a board with a label of its own, where the pack is and for whom it is, with
 * its share of the cost and the pack's readings. With the last board the pack is used up.
 */
export const takeBoards: Command<TakeBoards, TakenBoards> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'boards-taken', request: input }, async (pen) => {
    const pack = await loadPiece(pen.tx, input.label);
    if (!pack) return err({ code: 'not-found', facts: { label: input.label } });
    const { label } = pack;
    if (pack.form !== 'pack') return err({ code: 'not-a-pack', facts: { label } });
    if (!pack.facts.inStock) return err({ code: 'no-longer-here', facts: { label } });
    const wanted = new Set(input.boardIds);
    if (wanted.size === 0) return err({ code: 'no-boards-chosen', field: 'boardIds' });
    const here = pack.boards.filter((board) => !board.taken);
    const chosen = here.filter((board) => wanted.has(board.id));
    if (chosen.length !== wanted.size) return err({ code: 'board-gone', field: 'boardIds' });
    const columns = await boardColumns(pen, pack.stockId);
    const shares = pack.cost ? shareAmongBoards(pack.cost.minor, pack.boards) : [];
    const costs = new Map(pack.boards.map((board, nr) => [board.id, shares[nr]]));
    const pieces: AddedPiece[] = [];
    for (const board of chosen) {
      const width = BigInt(board.width);
      const cost = costs.get(board.id);
      const added = await addPiece(pen, {
        ...columns,
        form: 'board',
        lengthNm: BigInt(board.length),
        widthStartNm: width,
        widthMiddleNm: width,
        widthEndNm: width,
        costMinor: cost === undefined ? null : BigInt(cost),
      });
      pieces.push(added);
    }
    const left = here.length - chosen.length;
    const answer: TakenBoards = { entryId: pen.entryId, pieces, left };
    await pen.enter(
      { stockId: pack.stockId, why: [sayTaken(chosen, pen.book.units), input.why.trim()].filter(Boolean).join('. ') },
      answer,
    );
    await pen.tx.cut.create({
      data: { entryId: pen.entryId, pieceId: pack.stockId, kind: 'take' },
      select: { entryId: true },
    });
    const children = pieces.map((piece) => piece.stockId);
    await pen.tx.piece.updateMany({ where: { stockId: { in: children } }, data: { cutId: pen.entryId } });
    await pen.tx.packBoard.updateMany({ where: { id: { in: [...wanted] } }, data: { takenById: pen.entryId } });
    const readings = await packReadings(pen, pack.stockId);
    if (readings.length) {
      await pen.tx.reading.createMany({
        data: children.flatMap((pieceId) =>
          readings.map(({ id, ...reading }) => ({
            ...reading,
            pieceId,
            entryId: pen.entryId,
            inheritedFromId: id,
          })),
        ),
      });
    }
    const balance = await pen.tx.stock.findUniqueOrThrow({
      where: { id: pack.stockId },
      select: { placeId: true, hold: true, ownerJobId: true },
    });
    for (const stockId of children) {
      const change = { placeId: balance.placeId, hold: balance.hold, jobId: balance.ownerJobId };
      const moved = await pen.move(stockId, { quantityDelta: 1, ...change });
      if (!moved.ok) return moved;
    }
    if (left === 0) {
      const emptied = await pen.move(pack.stockId, { quantityDelta: -1 });
      if (!emptied.ok) return emptied;
    }
    return ok(answer);
  });

/** What a board has from its pack. */
function boardColumns(pen: Pen, stockId: number) {
  return pen.tx.piece.findUniqueOrThrow({
    where: { stockId },
    select: { ...FACT_COLUMNS, currency: true, receivedOn: true },
  });
}

/** Where and how deep on which board it was read is of no use to another board. */
async function packReadings(pen: Pen, pieceId: number) {
  const struck = await pen.tx.entry.findMany({
    where: { stockId: pieceId, ...STRIKES },
    select: { reference: true },
  });
  const readings = await pen.tx.reading.findMany({
    where: { pieceId },
    select: {
      id: true,
      takenOn: true,
      mcTenths: true,
      meter: true,
      spot: true,
      meterKind: true,
      depthNm: true,
      speciesSetting: true,
      woodTenthsC: true,
      correctedTenths: true,
    },
    orderBy: { id: 'asc' },
  });
  return standing(readings, struck);
}

function sayTaken(boards: PieceLine['boards'], units: string): string {
  const prefer = units === 'metric' ? 'metric' : 'imperial';
  const said = boards.slice(0, 3).map((board) => sayBoardSize(board, prefer));
  const more = boards.length - said.length;
  const many = `${boards.length} board${boards.length === 1 ? '' : 's'}`;
  return `${many}, ${said.join('; ')}${more > 0 ? ` and ${more} more` : ''}`;
}
