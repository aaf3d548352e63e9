import { z } from 'zod';
import { PART_KINDS, PART_SHAPES, type PartFields } from '@/app/_server/jobs/part-fields';
import { wholeDay } from '@/app/(shop)/_parts/whole-day';
import { JOB_STAGES } from '@/shared/timeline/job-stage';
import { STEP_KINDS } from '@/shared/timeline/step';
import { parseLength } from '@/shared/units/parse-length';
import { sayLengthError } from '@/shared/units/say-length-error';
import type { UnitSystem } from '@/shared/units/unit-system';

const id = z.number().int().positive();

const name = z.string().trim().max(120, 'That name is too long.');
const note = z.string().trim().max(2000, 'That is too long for a note.');
const reason = z.string().trim().max(500, 'Say it in fewer words.');

export const stageSchema = z.object({ jobId: id, stage: z.enum(JOB_STAGES, 'Choose a stage.'), reason });

export const addStepSchema = z.object({
  jobId: id,
  kind: z.enum(STEP_KINDS, 'Choose what is done.'),
  name,
  day: wholeDay,
  note,
  partId: id.nullable(),
});

const movesSchema = z
  .array(z.object({ stepId: id, from: wholeDay, to: wholeDay }))
  .min(1)
  .max(500);
export const moveStepsSchema = z.object({ jobId: id, moves: movesSchema });
export const rejudgeSchema = z.object({ jobId: id, moves: movesSchema });
export const changeStepSchema = z.object({ stepId: id, name, note });
export const stepPartSchema = z.object({ stepId: id, partId: id.nullable() });
export const stepSchema = z.object({ stepId: id });
export const finishStepSchema = z.object({ stepId: id, doneOn: wholeDay, reason });

/** A part as it is typed, its lengths in the maker's own writing. */
function partSchema({ prefer }: { prefer: UnitSystem }) {
  const length = z
    .string()
    .max(40)
    .transform((text, context) => {
      if (text.trim() === '') return null;
      const read = parseLength(text, { prefer });
      if (read.ok) return Number(read.value);
      context.addIssue({ code: 'custom', message: sayLengthError(read.error, { prefer }) });
      return z.NEVER;
    });
  return z.object({
    kind: z.enum(PART_KINDS, 'Say what it is.'),
    name,
    count: z.coerce.number('Give a whole number.').int('Give a whole number.').min(1).max(999),
    shape: z.enum(['', ...PART_SHAPES]),
    lengthNm: length,
    widthNm: length,
    thicknessNm: length,
    note,
  }) satisfies z.ZodType<PartFields>;
}

export const addPartSchema = (context: { prefer: UnitSystem }) => partSchema(context).extend({ jobId: id });
export const changePartSchema = (context: { prefer: UnitSystem }) => partSchema(context).extend({ partId: id });
export const partIdSchema = z.object({ partId: id });
