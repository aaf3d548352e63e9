import { z } from 'zod';
import type { ChangePiece } from '@/app/_server/stock/change-piece';
import { thingLabel, words } from '@/app/(shop)/_parts/acts/schemas';
import { readFields, type Typing } from '@/app/(shop)/arrive/read-fields';
import { woodSchema } from '@/app/(shop)/arrive/wood/schema';
import { NO_TALLY } from '@/app/(shop)/arrive/wood/tally';
import { MOST_AT_ONCE } from '@/shared/labels/most-at-once';
import { readMoisture, sayMoistureError } from '@/shared/wood/read-moisture';

export const giveSchema = z.object({
  label: thingLabel,
  act: z.enum(['promise', 'take', 'free']),
  jobId: z.int({ message: 'Choose the job.' }).positive().optional(),
});

/** Boards that are chosen in the table of a pack. */
export const takeBoardsSchema = z.object({
  label: thingLabel,
  boardIds: z.array(z.int().positive()).min(1, 'Choose the boards that come out.').max(MOST_AT_ONCE),
  why: words(200),
});

/** A moisture reading as typed. */
export function readingSchema(typing: Typing) {
  return z
    .object({ label: thingLabel, takenOn: words(60), moisture: words(20), meter: words(80), spot: words(120) })
    .transform(({ moisture, ...typed }, context) => {
      const read = readFields(typing, context);
      const takenOn = read.day('takenOn', typed.takenOn);
      if (typed.takenOn.trim() === '') read.say('takenOn', 'Give the day it was read.');
      const mc = readMoisture(moisture);
      if (!mc.ok) read.say('moisture', sayMoistureError(mc.error));
      if (!takenOn || !mc.ok) return z.NEVER;
      return { ...typed, takenOn, mcTenths: mc.value, meter: typed.meter.trim(), spot: typed.spot.trim() };
    });
}

/** What a piece is not asked for again once it is in the book. */
const NOT_ASKED = {
  form: 'board',
  count: '1',
  cost: '',
  receivedOn: '',
  placeLabel: '',
  moisture: '',
  meter: '',
  spot: '',
  tally: NO_TALLY,
} as const;

/** A piece put right as typed: read by the very rules it is read by when it arrives. */
export function changePieceSchema(typing: Typing): z.ZodType<ChangePiece> {
  const wood = woodSchema(typing);
  return z
    .object({ label: thingLabel, why: words(500), piece: z.record(z.string(), z.unknown()) })
    .transform(({ label, why, piece }, context) => {
      const read = wood.safeParse({ ...piece, ...NOT_ASKED });
      if (!read.success) {
        for (const { path, message } of read.error.issues)
          context.addIssue({ code: 'custom', path: [...path], message });
        return z.NEVER;
      }
      const { species, lengthNm, widthStartNm, widthMiddleNm, widthEndNm, thicknessNm } = read.data;
      const { flags, flitch, flitchNumber, note, origin, quarters, surfacing, grain, faceA, faceB } = read.data;
      return {
        label,
        why,
        species,
        lengthNm,
        widthStartNm,
        widthMiddleNm,
        widthEndNm,
        thicknessNm,
        flags,
        flitch,
        flitchNumber,
        note,
        origin,
        quarters,
        surfacing,
        grain,
        faceA,
        faceB,
      };
    });
}
