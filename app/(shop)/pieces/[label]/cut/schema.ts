import { z } from 'zod';
import type { CutPiece } from '@/app/_server/cuts/cut-piece';
import { thingLabel, words } from '@/app/(shop)/_parts/acts/schemas';
import type { Typing } from '@/app/(shop)/arrive/read-fields';
import { BECOMES } from '@/app/(shop)/pieces/[label]/cut/become';
import { LINE_FROM, readKerf, readLines } from '@/app/(shop)/pieces/[label]/cut/typed-cut';
import { LINE_WAYS } from '@/shared/outline/cut-line';
import type { Outline } from '@/shared/outline/outline';
import { parseLength } from '@/shared/units/parse-length';
import { sayLengthError } from '@/shared/units/say-length-error';

const MOST_LINES = 40;
const um = z.int().min(-20_000_000).max(20_000_000);
const typedLine = z.object({
  way: z.enum(LINE_WAYS),
  from: z.enum(LINE_FROM),
  distance: words(40),
  points: words(4000),
  within: z.object({ x: um, y: um }).nullable(),
});

const common = {
  label: thingLabel,
  shapeId: z.int().positive().nullable(),
  kerf: words(40),
  become: z.array(z.object({ as: z.enum(BECOMES), promised: z.boolean() })).max(200),
  why: words(300),
};

/** A cut as it is drawn and typed, for the outline the book has now. */
export function cutSchema({ prefer }: Typing, outline: Outline | undefined): z.ZodType<CutPiece> {
  return z
    .object({
      ...common,
      lines: z.array(typedLine).max(MOST_LINES, `At most ${MOST_LINES} lines in one act.`),
      bands: z.enum(['kept', 'cut']),
    })
    .transform(({ lines: typed, kerf, bands, ...rest }, context) => {
      if (!outline) {
        context.addIssue({ code: 'custom', path: ['lines'], message: 'The piece has no outline to cut.' });
        return z.NEVER;
      }
      const { lines, problems } = readLines(typed, kerf, outline, prefer, true);
      for (const [field, message] of Object.entries(problems)) {
        context.addIssue({ code: 'custom', path: field.split('.'), message });
      }
      return { ...rest, how: { by: 'lines' as const, lines: lines.map(({ line }) => line), bands } };
    });
}

/** A resaw as it is typed: what is to be left under face A, and the kerf. */
export function resawSchema({ prefer }: Typing): z.ZodType<CutPiece> {
  return z.object({ ...common, upper: words(40) }).transform(({ upper, kerf, ...rest }, context) => {
    const thick = parseLength(upper, { prefer, mode: 'thickness' });
    if (!thick.ok) {
      context.addIssue({ code: 'custom', path: ['upper'], message: sayLengthError(thick.error, { prefer }) });
    }
    const width = readKerf(kerf, prefer);
    if (typeof width === 'string') context.addIssue({ code: 'custom', path: ['kerf'], message: width });
    if (!thick.ok || typeof width === 'string') return z.NEVER;
    return { ...rest, how: { by: 'resaw' as const, upperNm: thick.value, kerfNm: width * 1000 } };
  });
}

export const strapsSchema = z.object({ label: thingLabel, why: words(300) });
export const pairSchema = z.object({ label: thingLabel, withLabel: thingLabel });
export const partSchema = z.object({ label: thingLabel });
