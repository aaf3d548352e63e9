import type { Command } from '@/app/_server/act';
import { momentOf } from '@/app/_server/ledger/happened-on';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import type { LiftLine } from '@/app/_server/pours/lift-rows';
import type { PourLine } from '@/app/_server/pours/read-pour';
import { weighedOf } from '@/app/_server/pours/refuse-for-lift';
import { liftOf } from '@/app/_server/pours/scan-for-lift';
import type { Refusal } from '@/app/_server/refusal';
import { type KeptPhoto, keepPhoto, whatPhotoIs } from '@/app/_server/stock/keep-photo';
import { withPhoto } from '@/app/_server/stock/with-photo';
import { keepDayOfUse } from '@/app/_server/timeline/keep-day-of-use';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { BEYOND } from '@/shared/pour/beyond-the-sheet';
import { cautionsOfLift } from '@/shared/pour/cautions-of-lift';
import { weighedRatio } from '@/shared/pour/weighed-ratio';
import { err, ok } from '@/shared/result/result';
import { milligrams } from '@/shared/units/stock-unit';
import { type TenthsCelsius, tenthsCelsius } from '@/shared/units/tenths-celsius';

export type PourLift = {
  pourId: number;
  nr: number;
  room: TenthsCelsius;
  /** Tenths of a per cent, where it was read. */
  humidityTenths?: number;
  note: string;
  /** Why it was poured although the ratio is off, or it goes beyond the sheet. */
  reason: string;
  photo?: KeptPhoto;
  /** The day it was poured, where that is not today. */
  happenedOn?: CalendarDate;
};

export type LiftPoured = { entryId: number; jobId: number; pourId: number; nr: number; on: CalendarDate };

/**
 * Writes that a lift was poured: with the room as it was, a photo, and whatever was weighed out for it. Refused until both
 * parts of every batch are in; a ratio beyond the sheet's tolerance, a depth, a mass or a room beyond the sheet needs a
 * reason, which stays in the book.
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
    const wrong = refusePouring(pour, lift, on, today);
    if (wrong) return err(wrong);
    const reason = input.reason.trim();
    const doubt = doubtOf(pour, lift, input.room);
    if (doubt && reason === '') return err(doubt);
    const answer: LiftPoured = { entryId: pen.entryId, jobId: pour.job.id, pourId: pour.id, nr: lift.nr, on };
    const name = lift.nr === 0 ? 'seal coat' : `lift ${lift.nr}`;
    await pen.enter({ jobId: pour.job.id, why: `${pour.name}, ${name}${doubt ? `: ${reason}` : ''}` }, answer);
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

function refusePouring(pour: PourLine, lift: LiftLine, on: CalendarDate, today: CalendarDate): Refusal | undefined {
  if (pour.job.state !== 'open') return { code: 'job-not-open', facts: { job: pour.job.name, state: pour.job.state } };
  if (lift.poured) {
    return { code: 'lift-poured-already', facts: { lift: lift.nr, on: lift.poured.on, who: lift.poured.who } };
  }
  const below = pour.lifts.find(({ nr, poured }) => nr < lift.nr && !poured);
  if (below) return { code: 'lift-below-first', facts: { lift: lift.nr, below: below.nr } };
  if (on > today) return { code: 'received-in-the-future', field: 'happenedOn' };
  const earlier = pour.lifts.findLast(({ nr, poured }) => nr < lift.nr && poured);
  if (earlier?.poured && on < earlier.poured.on) {
    return {
      code: 'lift-before-the-one-below',
      field: 'happenedOn',
      facts: { on: earlier.poured.on, below: earlier.nr },
    };
  }
  for (const [row] of lift.batches.entries()) {
    for (const part of ['A', 'B'] as const) {
      if (weighedOf(lift, { batch: row + 1, part }) > 0) continue;
      return { code: 'lift-not-weighed', facts: { lift: lift.nr, batch: row + 1, of: lift.batches.length, part } };
    }
  }
  return undefined;
}

/** What asks for a reason: the first batch whose ratio is off, or what goes beyond the sheet in the room as it is. */
function doubtOf({ kept }: PourLine, lift: LiftLine, room: TenthsCelsius): Refusal | undefined {
  const { ratio } = kept.plan;
  for (const [row] of lift.batches.entries()) {
    const [a, b] = (['A', 'B'] as const).map((part) => milligrams(weighedOf(lift, { batch: row + 1, part })));
    const judged = weighedRatio(a ?? milligrams(0), b ?? milligrams(0), ratio.parts, kept.sheet.toleranceTenths);
    if (!judged || judged.within) continue;
    const add = judged.add;
    return {
      code: 'ratio-off',
      field: 'reason',
      facts: { batch: row + 1, off: judged.errorTenths, part: add?.part ?? null, add: add?.amount ?? null },
    };
  }
  const mass = milligrams(lift.weighed.reduce((sum, each) => sum + each.mass, 0));
  const cautions = cautionsOfLift(kept.sheet, { depth: lift.depth, mass, room: tenthsCelsius(room) });
  const beyond = cautions.find(({ code }) => BEYOND.includes(code) && (lift.nr > 0 || code === 'room-too-warm'));
  return beyond && { code: 'beyond-the-sheet', field: 'reason', facts: { lift: lift.nr, why: beyond.code } };
}
