import type { Command } from '@/app/_server/act';
import { momentOf } from '@/app/_server/ledger/happened-on';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { doubtsOf } from '@/app/_server/pours/doubts-of-lift';
import { refuseJoin, type SaidOfBelow, sayOfBelow } from '@/app/_server/pours/join-below';
import { leftPromised } from '@/app/_server/pours/left-promised';
import type { LiftLine } from '@/app/_server/pours/lift-rows';
import { pouredAt } from '@/app/_server/pours/poured-at';
import type { PourLine } from '@/app/_server/pours/read-pour';
import { refusePouring } from '@/app/_server/pours/refuse-pouring';
import { liftOf } from '@/app/_server/pours/scan-for-lift';
import { freeStanding } from '@/app/_server/promises/free-standing';
import { type KeptPhoto, keepPhoto, whatPhotoIs } from '@/app/_server/stock/keep-photo';
import { withPhoto } from '@/app/_server/stock/with-photo';
import { keepDayOfUse } from '@/app/_server/timeline/keep-day-of-use';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { err, ok } from '@/shared/result/result';
import type { TenthsCelsius } from '@/shared/units/tenths-celsius';

export type PourLift = {
  pourId: number;
  nr: number;
  room: TenthsCelsius;
  /** Tenths of a per cent, where it was read. */
  humidityTenths?: number;
  note: string;
  /** Why it was poured although the ratio or the amount is off, it goes beyond the sheet, or the lift below is too fresh. */
  reason: string;
  /** That the lift below was sanded, where it has to be. */
  sanded?: boolean;
  photo?: KeptPhoto;
  /** The day it was poured, where that is not today. */
  happenedOn?: CalendarDate;
};

export type LiftPoured = {
  entryId: number;
  jobId: number;
  pourId: number;
  nr: number;
  on: CalendarDate;
  /** Kept with it: what was said of the lift below. */
  below?: SaidOfBelow;
};

/**
 * Writes that a lift was poured: with the room as it was, a photo, and whatever was weighed out for it. Refused until both
 * parts of every batch are in, and on a day before the last of them was; an amount or a ratio beyond the sheet's tolerance,
 * a depth, a mass or a room beyond the sheet, a lift below that is too fresh needs a reason, which stays in the book. With
 * the last lift whatever is still promised for the pour is free again.
 */
export const pourLift: Command<PourLift, LiftPoured> = async (book, by, input) => {
  const happenedAt = await momentOf(book, by.now, input.happenedOn);
  const request = { ...input, photo: whatPhotoIs(input.photo) };
  return writeEntry(book, { ...by, kind: 'lift-poured', request, happenedAt }, async (pen) => {
    const found = await liftOf(pen.tx, input.pourId, input.nr);
    if (!found.ok) return found;
    const { pour, lift } = found.value;
    const today = dateIn(pen.book.timeZone, pen.now);
    const on = input.happenedOn ?? today;
    const wrong = refusePouring(pour, lift, { on, today, timeZone: pen.book.timeZone });
    if (wrong) return err(wrong);
    const reason = input.reason.trim();
    const [doubt] = doubtsOf(pour, lift, input.room);
    if (doubt && reason === '') return err(doubt);
    const { at } = pouredAt({ happenedAt: happenedAt ?? pen.now, writtenAt: pen.now, weighed: lift.weighed });
    const said = { early: reason, sanded: input.sanded };
    const notYet = refuseJoin(pour, lift, new Date(at), said);
    if (notYet) return err(notYet.field === 'early' ? { ...notYet, field: 'reason' } : notYet);
    const below = sayOfBelow(pour, lift, new Date(at), said);
    const answer: LiftPoured = {
      entryId: pen.entryId,
      jobId: pour.job.id,
      pourId: pour.id,
      nr: lift.nr,
      on,
      ...(below.words && { below: below.kept }),
    };
    const name = lift.nr === 0 ? 'seal coat' : `lift ${lift.nr}`;
    const why = doubt || below.kept.early ? `: ${reason}` : '';
    await pen.enter(
      { jobId: pour.job.id, why: `${pour.name}, ${name}${below.kept.sanded ? `, ${below.words}` : ''}${why}` },
      answer,
    );
    const photoId = input.photo ? await keepPhoto(pen, await pictured(pour, lift), input.photo) : null;
    await pen.tx.lift.update({
      where: { id: lift.id },
      data: {
        pouredById: pen.entryId,
        pouredOn: on,
        roomTenthsC: input.room,
        humidityTenths: input.humidityTenths ?? null,
        photoId,
        note: input.note.trim(),
      },
      select: { id: true },
    });
    if (lift.stepId !== null) {
      const done = { doneOn: on, doneById: pen.entryId };
      await pen.tx.step.update({ where: { id: lift.stepId }, data: done, select: { id: true } });
    }
    await keepDayOfUse(pen.tx, pour.job.id);
    const isLast = pour.lifts.every((each) => each.id === lift.id || each.poured);
    if (isLast) await freeStanding(pen, await leftPromised(pen.tx, pour));
    return ok(answer);

    /** A picture of a lift lies with the piece it was poured into, or where the book knows none with its part A. */
    async function pictured({ job }: PourLine, { weighed }: LiftLine): Promise<number> {
      const piece = await pen.tx.stock.findFirst({
        where: { kind: 'piece', ownerJobId: job.id },
        orderBy: { id: 'asc' },
        select: { id: true },
      });
      return piece?.id ?? weighed[0]?.stockId ?? 0;
    }
  });
};

/** `pourLift` with a picture as it was uploaded. */
export const pourLiftWithPhoto: Command<Omit<PourLift, 'photo'> & { photo?: File }, LiftPoured> = (
  book,
  by,
  { photo, ...input },
) => withPhoto(photo, 'A lift as it was poured', (kept) => pourLift(book, by, { ...input, photo: kept }));
