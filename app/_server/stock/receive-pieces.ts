import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { type AddedPiece, addPiece } from '@/app/_server/stock/add-piece';
import { checkArrival, type WoodArrival } from '@/app/_server/stock/check-arrival';
import { type KeptPhoto, keepPhoto, whatPhotoIs } from '@/app/_server/stock/keep-photo';
import { type PieceFields, pieceColumns, refuseFields } from '@/app/_server/stock/piece-fields';
import { refuseFlitchNumber } from '@/app/_server/stock/refuse-flitch-number';
import { err, ok } from '@/shared/result/result';
import type { PieceForm } from '@/shared/wood/piece';

/** Slabs, boards, sheets or offcuts of one size that came in together. A flitch number is the first one's; the others follow. */
export type ReceivePieces = PieceFields &
  WoodArrival & {
    form: PieceForm;
    count: number;
    /** What one cost, minor units of the book's currency. */
    costMinor?: number;
    photo?: KeptPhoto;
  };

export type ReceivedPieces = { entryId: number; pieces: AddedPiece[] };

export const receivePieces: Command<ReceivePieces, ReceivedPieces> = (book, by, { photo, ...input }) =>
  writeEntry(book, { ...by, kind: 'received', request: { ...input, photo: whatPhotoIs(photo) } }, async (pen) => {
    const placed = await checkArrival(pen, input.count, input);
    if (!placed.ok) return placed;
    const refused = refuseFields(input, input.count);
    if (refused) return err(refused);
    const columns = pieceColumns(input);
    const { form, count, flitchNumber: first } = input;
    const { species, flitch } = columns;
    const taken = await refuseFlitchNumber(pen.tx, { form, species, flitch, first, count });
    if (taken) return err(taken);
    const pieces: AddedPiece[] = [];
    for (let nr = 0; nr < count; nr += 1) {
      const added = await addPiece(pen, {
        ...columns,
        form,
        flitchNumber: first === undefined ? null : first + nr,
        costMinor: input.costMinor === undefined ? null : BigInt(input.costMinor),
        currency: input.costMinor === undefined ? null : pen.book.currency,
        receivedOn: input.receivedOn,
      });
      pieces.push(added);
    }
    const answer: ReceivedPieces = { entryId: pen.entryId, pieces };
    await pen.enter({ why: `${count} × ${species} ${form}` }, answer);
    for (const [nr, { stockId }] of pieces.entries()) {
      const moved = await pen.move(stockId, { quantityDelta: 1, placeId: placed.value });
      if (!moved.ok) return moved;
      if (input.reading) {
        const reading = { ...input.reading, pieceId: stockId, entryId: pen.entryId, takenOn: input.receivedOn };
        await pen.tx.reading.create({ data: reading, select: { id: true } });
      }
      if (photo && nr === 0) await keepPhoto(pen, stockId, photo);
    }
    return ok(answer);
  });
