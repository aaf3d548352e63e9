import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { type AddedPiece, addPiece } from '@/app/_server/stock/add-piece';
import { checkArrival, type WoodArrival } from '@/app/_server/stock/check-arrival';
import { type KeptPhoto, keepPhoto, whatPhotoIs } from '@/app/_server/stock/keep-photo';
import { type PieceFields, pieceColumns, refuseFields } from '@/app/_server/stock/piece-fields';
import type { ReceivedPieces } from '@/app/_server/stock/receive-pieces';
import { err, ok } from '@/shared/result/result';
import { minorUnits } from '@/shared/units/minor-units';
import { nanometres } from '@/shared/units/nanometres';
import { shareAmongBoards } from '@/shared/wood/share-among-boards';

type Sizes = 'lengthNm' | 'widthStartNm' | 'widthMiddleNm' | 'widthEndNm';

/** Boards of one thickness and random widths and lengths, tallied one by one. */
export type ReceiveBoards = Omit<PieceFields, Sizes | 'flitchNumber'> &
  WoodArrival & {
    /** Kept together under one label, or each as a board with a label of its own. */
    as: 'pack' | 'singly';
    boards: { lengthNm: number; widthNm: number }[];
    /** What all of them cost together, minor units of the book's currency. */
    costMinor?: number;
    sellerName?: string;
    /** What the seller counted, as a volume in cubic millimetres. */
    sellerVolumeMm3?: number;
    photo?: KeptPhoto;
  };

export const receiveBoards: Command<ReceiveBoards, ReceivedPieces> = (book, by, { photo, ...input }) =>
  writeEntry(book, { ...by, kind: 'received', request: { ...input, photo: whatPhotoIs(photo) } }, async (pen) => {
    const { boards, as, costMinor, sellerName, sellerVolumeMm3, receivedOn, placeLabel, reading, ...fields } = input;
    const placed = await checkArrival(pen, boards.length, { receivedOn, placeLabel, reading });
    if (!placed.ok) return placed;
    for (const [nr, board] of boards.entries()) {
      const refused = refuseFields({ ...fields, ...sizesOf([board]) });
      if (refused) return err({ ...refused, field: `boards.${nr}` });
    }
    if (sellerVolumeMm3 !== undefined && !(Number.isSafeInteger(sellerVolumeMm3) && sellerVolumeMm3 > 0)) {
      return err({ code: 'outside-range', field: 'sellerBoardFeet' });
    }
    const currency = costMinor === undefined ? null : pen.book.currency;
    const cost = (minor: number | undefined) => (minor === undefined ? null : BigInt(minor));
    const pieces: AddedPiece[] = [];
    if (as === 'pack') {
      const columns = pieceColumns({ ...fields, ...sizesOf(boards) });
      const pack = await addPiece(pen, {
        ...columns,
        form: 'pack',
        costMinor: cost(costMinor),
        currency,
        receivedOn,
        sellerName: sellerName?.trim() ?? '',
        sellerVolumeMm3: cost(sellerVolumeMm3),
      });
      await pen.tx.packBoard.createMany({
        data: boards.map((board) => ({
          pieceId: pack.stockId,
          lengthNm: BigInt(board.lengthNm),
          widthNm: BigInt(board.widthNm),
        })),
      });
      pieces.push(pack);
    } else {
      const shares = costMinor === undefined ? [] : sharesOf(costMinor, boards);
      for (const [nr, board] of boards.entries()) {
        const columns = pieceColumns({ ...fields, ...sizesOf([board]) });
        const one = { form: 'board' as const, costMinor: cost(shares[nr]), currency, receivedOn };
        pieces.push(await addPiece(pen, { ...columns, ...one }));
      }
    }
    const answer: ReceivedPieces = { entryId: pen.entryId, pieces };
    const species = fields.species.trim();
    const many = `${boards.length} board${boards.length === 1 ? '' : 's'}`;
    await pen.enter(
      { why: as === 'pack' ? `${species} pack, ${many}` : `${boards.length} × ${species} board` },
      answer,
    );
    for (const [nr, { stockId }] of pieces.entries()) {
      const moved = await pen.move(stockId, { quantityDelta: 1, placeId: placed.value });
      if (!moved.ok) return moved;
      if (reading) {
        const data = { ...reading, pieceId: stockId, entryId: pen.entryId, takenOn: receivedOn };
        await pen.tx.reading.create({ data, select: { id: true } });
      }
      if (photo && nr === 0) await keepPhoto(pen, stockId, photo);
    }
    return ok(answer);
  });

/** The measures of a pack: its longest board, and from its narrowest to its widest. Of one board they are its own. */
function sizesOf(boards: readonly { lengthNm: number; widthNm: number }[]): Record<Sizes, number> {
  const widths = boards.map((board) => board.widthNm);
  const middle = [...widths].sort((a, b) => a - b)[widths.length >> 1] ?? 0;
  return {
    lengthNm: Math.max(...boards.map((board) => board.lengthNm)),
    widthStartNm: Math.min(...widths),
    widthMiddleNm: middle,
    widthEndNm: Math.max(...widths),
  };
}

function sharesOf(costMinor: number, boards: ReceiveBoards['boards']): readonly number[] {
  return shareAmongBoards(
    minorUnits(costMinor),
    boards.map(({ widthNm, lengthNm }) => ({ width: nanometres(widthNm), length: nanometres(lengthNm) })),
  );
}
