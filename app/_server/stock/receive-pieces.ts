import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { type KeptPhoto, keepPhoto, whatPhotoIs } from '@/app/_server/stock/keep-photo';
import { labelKindOf } from '@/app/_server/stock/label-kind-of';
import { indexPiece, type PieceFields, pieceColumns, refuseFields } from '@/app/_server/stock/piece-fields';
import { refuseFlitchNumber } from '@/app/_server/stock/refuse-flitch-number';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { MOST_AT_ONCE } from '@/shared/labels/most-at-once';
import { err, ok } from '@/shared/result/result';
import type { PieceForm } from '@/shared/wood/piece';

/** Slabs, boards, sheets or offcuts of one size that came in together. A flitch number is the first one's; the others follow. */
export type ReceivePieces = PieceFields & {
  form: PieceForm;
  count: number;
  /** What one cost, minor units of the book's currency. */
  costMinor?: number;
  receivedOn: CalendarDate;
  placeLabel?: string;
  reading?: { mcTenths: number; meter: string; spot: string };
  photo?: KeptPhoto;
};

export type ReceivedPieces = { entryId: number; pieces: { stockId: number; label: string }[] };

export const receivePieces: Command<ReceivePieces, ReceivedPieces> = (book, by, { photo, ...input }) =>
  writeEntry(book, { ...by, kind: 'received', request: { ...input, photo: whatPhotoIs(photo) } }, async (pen) => {
    if (!Number.isInteger(input.count) || input.count < 1 || input.count > MOST_AT_ONCE)
      return err({ code: 'absurd-count', field: 'count' });
    const today = dateIn(pen.book.timeZone, pen.now);
    if (input.receivedOn > today) return err({ code: 'received-in-the-future', field: 'receivedOn' });
    const refused = refuseFields(input, input.count);
    if (refused) return err(refused);
    const mc = input.reading?.mcTenths ?? 0;
    if (!Number.isInteger(mc) || mc < 0 || mc > 2500) {
      return err({ code: 'outside-range', field: 'reading' });
    }
    const place = input.placeLabel
      ? await pen.tx.place.findUnique({ where: { label: input.placeLabel }, select: { id: true } })
      : undefined;
    if (input.placeLabel && !place) return err({ code: 'not-found', field: 'placeLabel' });
    const columns = pieceColumns(input);
    const { form, count, flitchNumber: first } = input;
    const { species, flitch } = columns;
    const taken = await refuseFlitchNumber(pen.tx, { form, species, flitch, first, count });
    if (taken) return err(taken);
    const pieces: { stockId: number; label: string }[] = [];
    for (let nr = 0; nr < count; nr += 1) {
      const label = await pen.mintLabel(labelKindOf(form));
      const { id: stockId } = await pen.tx.stock.create({ data: { kind: 'piece', label }, select: { id: true } });
      await pen.tx.piece.create({
        data: {
          ...columns,
          stockId,
          form,
          flitchNumber: first === undefined ? null : first + nr,
          costMinor: input.costMinor === undefined ? null : BigInt(input.costMinor),
          currency: input.costMinor === undefined ? null : pen.book.currency,
          receivedOn: input.receivedOn,
        },
        select: { stockId: true },
      });
      await indexPiece(pen.tx, { stockId, species, form, flitch, label });
      pieces.push({ stockId, label });
    }
    const answer: ReceivedPieces = { entryId: pen.entryId, pieces };
    await pen.enter({ why: `${count} × ${species} ${form}` }, answer);
    for (const [nr, { stockId }] of pieces.entries()) {
      const moved = await pen.move(stockId, { quantityDelta: 1, placeId: place?.id ?? null });
      if (!moved.ok) return moved;
      if (input.reading) {
        const reading = { ...input.reading, pieceId: stockId, entryId: pen.entryId, takenOn: input.receivedOn };
        await pen.tx.reading.create({ data: reading, select: { id: true } });
      }
      if (photo && nr === 0) await keepPhoto(pen, stockId, photo);
    }
    return ok(answer);
  });
