import { z } from 'zod';
import { LABEL_FORMAT_IDS, LABEL_FORMATS, labelsPerPage } from '@/shared/labels/label-formats';
import { MOST_AT_ONCE } from '@/shared/labels/most-at-once';
import { labelCodeOf } from '@/shared/labels/symbol-text';

const code = z.string().transform((text, context) => {
  const shaped = labelCodeOf(text);
  if (shaped !== undefined) return shaped;
  context.addIssue('A label code is a letter, a dash and six letters or digits, like C-4K7QM2.');
  return z.NEVER;
});

const looks = {
  format: z.enum(LABEL_FORMAT_IDS, { error: `The label format is one of ${LABEL_FORMAT_IDS.join(', ')}.` }),
  symbology: z.enum(['data-matrix', 'qr'], { error: 'The symbol is data-matrix or qr.' }).default('data-matrix'),
};

/** The question asked of the preview: one code, and for a slab which end. */
export const labelSvgQuery = z.object({
  ...looks,
  code: z.string({ error: 'The preview needs a label code.' }).pipe(code),
  end: z.enum(['1', '2'], { error: 'A slab has end 1 and end 2.' }).optional(),
});

/** The question asked of the print: the codes in order, each once, and how to set them out. */
export const labelsPdfQuery = z
  .object({
    ...looks,
    codes: z
      .string({ error: 'The print needs label codes.' })
      .transform((list) => list.split(',').filter((part) => part.trim() !== ''))
      .pipe(
        z
          .array(code)
          .min(1, 'The print needs at least one label code.')
          .max(MOST_AT_ONCE, `At most ${MOST_AT_ONCE} labels are printed at once.`),
      )
      .transform((list) => [...new Set(list)]),
    copies: z.enum(['1', '2'], { error: 'One or two copies of a label are printed.' }).default('1'),
    start: z.coerce
      .number({ error: 'The first position is a whole number.' })
      .int('The first position is a whole number.')
      .min(1, 'The first position on a sheet is 1.')
      .default(1),
  })
  .refine(({ format, start }) => start <= labelsPerPage(LABEL_FORMATS[format]), {
    error: 'The first position is past the end of the sheet.',
  });
