import { z } from 'zod';
import { PLACE_KINDS } from '@/app/_server/places/add-place';
import { sayTemperatureError } from '@/app/(shop)/places/say-temperature-error';
import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';
import { parseTemperature } from '@/shared/units/parse-temperature';

export const placeLabel = z
  .string()
  .max(20)
  .refine((text) => {
    const label = parseOwnLabel(text);
    return label.ok && label.value.kind === 'place';
  }, 'That is not the label of a place.');

const fields = {
  name: z.string().trim().min(1, 'Give the place a name.').max(80, 'Give a name of at most 80 characters.'),
  kind: z.enum(PLACE_KINDS, 'Choose what it is.'),
  parentLabel: placeLabel.optional(),
};

export const addPlaceSchema = z.object(fields);
export const changePlaceSchema = z.object({ ...fields, label: placeLabel });

/** The temperatures as typed, with the units the reader saw them echoed in. */
export const temperatureSchema = z
  .object({
    label: placeLabel,
    least: z.string().max(40),
    most: z.string().max(40),
    prefer: z.enum(['metric', 'imperial']),
  })
  .transform(({ label, least, most, prefer }, context) => {
    const read = (field: 'least' | 'most', typed: string) => {
      const reading = parseTemperature(typed, { prefer });
      if (reading.ok) return reading.value as number;
      context.addIssue({ code: 'custom', path: [field], message: sayTemperatureError(reading.error, prefer) });
      return 0;
    };
    const leastTenthsC = read('least', least);
    const mostTenthsC = read('most', most);
    if (context.issues.length === 0 && leastTenthsC > mostTenthsC) {
      context.addIssue({
        code: 'custom',
        path: ['most'],
        message: 'The warmest is colder than the coldest. Swap the two.',
      });
    }
    return { label, leastTenthsC, mostTenthsC };
  });
