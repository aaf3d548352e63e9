import { z } from 'zod';
import type { NoteFinishSheet } from '@/app/_server/finish/note-finish-sheet';
import { readCoverage } from '@/shared/finish/coverage-text';
import type { UnitSystem } from '@/shared/units/unit-system';

const whole = z
  .string()
  .trim()
  .regex(/^\d{0,4}$/, 'Give a whole number, or leave it empty.')
  .transform((text) => (text === '' ? undefined : Number(text)));

/** A finish sheet as it is typed. Whatever is left empty the sheet does not say. */
export function finishSheetSchema({ prefer }: { prefer: UnitSystem }): z.ZodType<NoteFinishSheet> {
  const fields = z.object({
    productId: z.number().int().positive(),
    from: z.enum(['sheet', 'typed'], 'Say where the numbers are from.'),
    coverageTenths: z.string().max(40),
    coats: whole,
    recoatFromHours: whole,
    recoatToHours: whole,
    cureDays: whole,
    sandBetween: z.boolean(),
  });
  return fields.transform(({ productId, coverageTenths: text, ...rest }, context) => {
    const coverage = readCoverage(text, { prefer });
    if (!coverage.ok && coverage.error.code !== 'empty')
      context.addIssue({ code: 'custom', path: ['coverageTenths'], message: 'That is not how far a finish can go.' });
    return { productId, sheet: { ...rest, coverageTenths: coverage.ok ? coverage.value : undefined } };
  });
}
