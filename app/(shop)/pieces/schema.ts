import { z } from 'zod';
import type { ChangePiece } from '@/app/_server/stock/change-piece';
import type { NoteWarp } from '@/app/_server/stock/note-warp';
import { thingLabel, words } from '@/app/(shop)/_parts/acts/schemas';
import type { Typing } from '@/app/(shop)/arrive/read-fields';
import { woodSchema } from '@/app/(shop)/arrive/wood/schema';
import { NO_TALLY } from '@/app/(shop)/arrive/wood/tally';
import { MOST_AT_ONCE } from '@/shared/labels/most-at-once';
import { parseLength } from '@/shared/units/parse-length';
import { sayLengthError } from '@/shared/units/say-length-error';

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

/** A reading that is struck out, and why. */
export const strikeSchema = z.object({ label: thingLabel, readingId: z.int().positive(), why: words(500) });

/** The wood a piece is said to be, of those that are known here. */
export const nameWoodSchema = z.object({ label: thingLabel, speciesId: z.string().min(1).max(80) });

export const sawnSchema = z.object({ label: thingLabel, sawn: z.enum(['', 'flat', 'quarter', 'mixed']) });

/** Cup, bow and twist as typed; what stays empty was not measured. */
export function warpSchema(typing: Typing): z.ZodType<NoteWarp> {
  return z
    .object({ label: thingLabel, cup: words(40), bow: words(40), twist: words(40) })
    .transform(({ label, ...typed }, context) => {
      const measure = (field: 'cup' | 'bow' | 'twist') => {
        const text = typed[field].trim();
        if (text === '') return null;
        const read = parseLength(text, { prefer: typing.prefer });
        if (read.ok) return read.value;
        context.addIssue({ code: 'custom', path: [field], message: sayLengthError(read.error, typing) });
        return null;
      };
      return { label, cupNm: measure('cup'), bowNm: measure('bow'), twistNm: measure('twist') };
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
      const { flags, flitch, flitchNumber, note, origin, sapwoodNm, quarters, surfacing, grain, faceA, faceB } =
        read.data;
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
        sapwoodNm,
        quarters,
        surfacing,
        grain,
        faceA,
        faceB,
      };
    });
}
