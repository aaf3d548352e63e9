import { z } from 'zod';
import type { ChangeMarks } from '@/app/_server/shapes/change-marks';
import type { ConfirmMarks } from '@/app/_server/shapes/confirm-marks';
import { thingLabel, words } from '@/app/(shop)/_parts/acts/schemas';
import type { Typing } from '@/app/(shop)/arrive/read-fields';
import { MARK_KINDS, readMark } from '@/app/(shop)/pieces/[label]/marks/typed-mark';
import type { Outline } from '@/shared/outline/outline';

const typedMark = z.object({
  kind: z.enum(MARK_KINDS),
  shape: z.enum(['round', 'outline', 'line']),
  points: words(4000),
  size: words(40),
  face: z.enum(['through', 'A', 'B']),
  depth: words(40),
  decision: z.enum(['keep-out', 'fill', 'leave']),
  end: z.enum(['start', 'end']),
  note: words(300),
});

/** A mark put on as it is typed, for the outline the book has now, and marks taken off. */
export function marksSchema({ prefer }: Typing, outline: Outline | undefined): z.ZodType<ChangeMarks> {
  return z
    .object({
      label: thingLabel,
      add: z.array(typedMark).max(1),
      remove: z.array(z.int().positive()).max(100),
      why: words(300),
      shapeId: z.int().positive().nullable(),
    })
    .transform(({ add, ...rest }, context) => {
      const [typed] = add;
      if (!typed) return { ...rest, add: [] };
      if (!outline) {
        context.addIssue({ code: 'custom', path: ['points'], message: 'The piece has no outline to mark.' });
        return z.NEVER;
      }
      const { mark, problems } = readMark(typed, outline, prefer, true);
      for (const [field, message] of Object.entries(problems)) {
        context.addIssue({ code: 'custom', path: [field], message });
      }
      return mark ? { ...rest, add: [mark] } : z.NEVER;
    });
}

/** Marks of an earlier measuring, looked at on the one that counts. */
export const confirmMarksSchema: z.ZodType<ConfirmMarks> = z.object({ label: thingLabel, shapeId: z.int().positive() });
