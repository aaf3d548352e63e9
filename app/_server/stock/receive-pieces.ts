import type { Command } from '@/app/_server/act';
import { indexWords } from '@/app/_server/find/search-words';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { type KeptPhoto, keepPhoto, whatPhotoIs } from '@/app/_server/stock/keep-photo';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { MOST_AT_ONCE } from '@/shared/labels/most-at-once';
import { err, ok } from '@/shared/result/result';
import type { PieceFlag, PieceForm } from '@/shared/wood/piece';

/** Slabs, boards, sheets or offcuts of one size that came in together. Lengths in nanometres (1/64 in is 396 875). */
export type ReceivePieces = {
  form: PieceForm;
  species: string;
  count: number;
  lengthNm: number;
  widthStartNm: number;
  widthMiddleNm: number;
  widthEndNm: number;
  thicknessNm: number;
  flags: PieceFlag[];
  flitch: string;
  /** Where in its flitch the first one is; the others follow. */
  flitchNumber?: number;
  /** What one cost, minor units of the book's currency. */
  costMinor?: number;
  receivedOn: CalendarDate;
  placeLabel?: string;
  note: string;
  reading?: { mcTenths: number; meter: string; spot: string };
  photo?: KeptPhoto;
};

/** Longest thing a workshop of this size takes in: 20 m; thickest: 1 m. Beyond it, a unit was mistaken. */
const LONGEST_NM = 20_000_000_000;
const THICKEST_NM = 1_000_000_000;

export type ReceivedPieces = { entryId: number; pieces: { stockId: number; label: string }[] };

export const receivePieces: Command<ReceivePieces, ReceivedPieces> = (book, by, { photo, ...input }) =>
  writeEntry(book, { ...by, kind: 'received', request: { ...input, photo: whatPhotoIs(photo) } }, async (pen) => {
    if (!Number.isInteger(input.count) || input.count < 1 || input.count > MOST_AT_ONCE)
      return err({ code: 'absurd-count', field: 'count' });
    const today = dateIn(pen.book.timeZone, pen.now);
    if (input.receivedOn > today) return err({ code: 'received-in-the-future', field: 'receivedOn' });
    const sizes = ['lengthNm', 'widthStartNm', 'widthMiddleNm', 'widthEndNm', 'thicknessNm'] as const;
    for (const field of sizes) {
      const most = field === 'thicknessNm' ? THICKEST_NM : LONGEST_NM;
      if (!Number.isSafeInteger(input[field]) || input[field] <= 0 || input[field] > most) {
        return err({ code: 'outside-range', field });
      }
    }
    const mc = input.reading?.mcTenths ?? 0;
    if (!Number.isInteger(mc) || mc < 0 || mc > 2500) {
      return err({ code: 'outside-range', field: 'reading' });
    }
    const place = input.placeLabel
      ? await pen.tx.place.findUnique({ where: { label: input.placeLabel }, select: { id: true } })
      : undefined;
    if (input.placeLabel && !place) return err({ code: 'not-found', field: 'placeLabel' });
    const species = input.species.trim();
    const pieces: { stockId: number; label: string }[] = [];
    for (let nr = 0; nr < input.count; nr += 1) {
      const label = await pen.mintLabel(input.form);
      const { id: stockId } = await pen.tx.stock.create({ data: { kind: 'piece', label }, select: { id: true } });
      await pen.tx.piece.create({
        data: {
          stockId,
          form: input.form,
          species,
          lengthNm: BigInt(input.lengthNm),
          widthStartNm: BigInt(input.widthStartNm),
          widthMiddleNm: BigInt(input.widthMiddleNm),
          widthEndNm: BigInt(input.widthEndNm),
          thicknessNm: BigInt(input.thicknessNm),
          flags: [...new Set(input.flags)].sort().join(','),
          flitch: input.flitch.trim(),
          flitchNumber: input.flitchNumber === undefined ? null : input.flitchNumber + nr,
          costMinor: input.costMinor === undefined ? null : BigInt(input.costMinor),
          currency: input.costMinor === undefined ? null : pen.book.currency,
          receivedOn: input.receivedOn,
          note: input.note.trim(),
        },
        select: { stockId: true },
      });
      await indexWords(pen.tx, 'piece', stockId, [species, input.form, input.flitch, label]);
      pieces.push({ stockId, label });
    }
    const answer: ReceivedPieces = { entryId: pen.entryId, pieces };
    await pen.enter({ why: `${input.count} × ${species} ${input.form}` }, answer);
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
