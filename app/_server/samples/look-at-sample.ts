import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { type KeptPhoto, keepPhoto, whatPhotoIs } from '@/app/_server/stock/keep-photo';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { err, ok } from '@/shared/result/result';

const LOOK_RESULTS = ['sound', 'soft', 'yellowed', 'cracked', 'other'] as const;
export type LookResult = (typeof LOOK_RESULTS)[number];

export type LookAtSample = {
  sampleId: number;
  lookedOn: CalendarDate;
  result: LookResult;
  note: string;
  /** When to look again; never where it is left out. */
  nextOn?: CalendarDate;
  photo?: KeptPhoto;
};

/** `before`: the day it was to be looked at, so that undoing this brings it back. */
export type Looked = { name: string; result: LookResult; before: string | null; sampleId: number };

/** Writes what a kept sample looks like now, and when to look again. */
export const lookAtSample: Command<LookAtSample, Looked> = (book, by, { photo, ...input }) =>
  writeEntry<Looked>(
    book,
    { ...by, kind: 'sample-looked', request: { ...input, photo: whatPhotoIs(photo) } },
    async (pen) => {
      const { sampleId, lookedOn, result, nextOn } = input;
      const sample = await pen.tx.sample.findUnique({
        where: { id: sampleId },
        select: {
          name: true,
          madeOn: true,
          lookOn: true,
          lotAId: true,
          lotBId: true,
          entry: { select: { reversedBy: { select: { id: true } } } },
          goneBy: { select: { reversedBy: { select: { id: true } } } },
          lift: { select: { pour: { select: { jobId: true } } } },
        },
      });
      if (!sample || sample.entry.reversedBy) return err({ code: 'not-found' });
      if (sample.goneBy && !sample.goneBy.reversedBy) return err({ code: 'sample-gone' });
      if (lookedOn > dateIn(pen.book.timeZone, pen.now))
        return err({ code: 'received-in-the-future', field: 'lookedOn' });
      if (lookedOn < sample.madeOn) return err({ code: 'look-before-made', field: 'lookedOn' });
      if (nextOn && nextOn <= lookedOn) return err({ code: 'look-before-made', field: 'nextOn' });
      const stockId = sample.lotAId ?? sample.lotBId ?? undefined;
      if (photo && stockId === undefined) return err({ code: 'sample-of-nothing', field: 'photo' });
      const answer: Looked = { name: sample.name, result, before: sample.lookOn, sampleId };
      await pen.enter(
        {
          why: [`${sample.name}: ${result}`, input.note.trim()].filter(Boolean).join('. '),
          jobId: sample.lift?.pour.jobId,
          stockId,
          alsoStockId: sample.lotAId === null ? undefined : (sample.lotBId ?? undefined),
        },
        answer,
      );
      const photoId = photo && stockId !== undefined ? await keepPhoto(pen, stockId, photo) : undefined;
      await pen.tx.sampleLook.create({
        data: { entryId: pen.entryId, sampleId, lookedOn, result, note: input.note.trim(), photoId },
        select: { id: true },
      });
      await pen.tx.sample.update({
        where: { id: sampleId },
        data: { lookOn: nextOn ?? null },
        select: { id: true },
      });
      return ok(answer);
    },
  );
