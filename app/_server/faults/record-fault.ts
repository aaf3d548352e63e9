import type { Command } from '@/app/_server/act';
import { resolveFault } from '@/app/_server/faults/resolve-fault';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { type KeptPhoto, keepPhoto, whatPhotoIs } from '@/app/_server/stock/keep-photo';
import { withPhoto } from '@/app/_server/stock/with-photo';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import type { FaultKind } from '@/shared/faults/fault-kinds';
import { sayFault } from '@/shared/faults/fault-kinds';
import type { Point } from '@/shared/outline/point';
import { err, ok } from '@/shared/result/result';
import type { Nanometres } from '@/shared/units/nanometres';

export type FaultFields = {
  kind: FaultKind;
  foundOn: CalendarDate;
  jobId?: number;
  pourId?: number;
  liftId?: number;
  /** The piece or container it was found on. */
  label?: string;
  /** Where on the drawing of the piece, micrometres. */
  place?: Point;
  depth?: Nanometres;
  note: string;
};

export type RecordFault = FaultFields & { photo?: KeptPhoto };

export type RecordedFault = { entryId: number; jobId: number | null };

/**
 * Writes down what was found wrong: a soft spot, a crack, a cloud, with its place and depth where they are known. It stands
 * until its entry is reversed; settling it is an entry of its own.
 */
export const recordFault: Command<RecordFault, RecordedFault> = (book, by, { photo, ...input }) =>
  writeEntry<RecordedFault>(
    book,
    { ...by, kind: 'fault-found', request: { ...input, photo: whatPhotoIs(photo) } },
    async (pen) => {
      if (input.foundOn > dateIn(pen.book.timeZone, pen.now)) {
        return err({ code: 'found-in-the-future', field: 'foundOn' });
      }
      const note = input.note.trim();
      if (input.kind === 'other' && note === '') return err({ code: 'fault-needs-words', field: 'note' });
      const about = await resolveFault(pen.tx, input);
      if (!about.ok) return about;
      const { jobId, pourId, liftId, stockId, words } = about.value;
      if (photo && stockId === null) return err({ code: 'photo-needs-a-thing', field: 'photo' });
      const answer = { entryId: pen.entryId, jobId };
      const why = [[sayFault(input.kind), words].filter(Boolean).join(', '), note].filter(Boolean).join('. ');
      await pen.enter({ why, jobId, stockId: stockId ?? undefined }, answer);
      const photoId = photo && stockId !== null ? await keepPhoto(pen, stockId, photo) : null;
      await pen.tx.fault.create({
        data: {
          entryId: pen.entryId,
          kind: input.kind,
          foundOn: input.foundOn,
          jobId,
          pourId,
          liftId,
          stockId,
          place: input.place ? JSON.stringify(input.place) : null,
          depthNm: input.depth === undefined ? null : BigInt(input.depth),
          note,
          photoId,
        },
        select: { id: true },
      });
      return ok(answer);
    },
  );

/** `recordFault` with a picture as it was uploaded. */
export const recordSentFault: Command<FaultFields & { photo?: Blob }, RecordedFault> = (
  book,
  by,
  { photo, ...input },
) => withPhoto(photo, sayFault(input.kind), (kept) => recordFault(book, by, { ...input, photo: kept }));
