import { z } from 'zod';
import { workshopFields } from '@/app/_server/book/workshop-fields';
import type { HouseSizes } from '@/app/_server/cuts/change-house-sizes';
import { parseLength } from '@/shared/units/parse-length';
import { sayLengthError } from '@/shared/units/say-length-error';
import type { UnitSystem } from '@/shared/units/unit-system';

export const settingsSchema = z.object({
  ...workshopFields,
  dateOrder: z.enum(['day-first', 'month-first'], 'Choose how typed dates are read.'),
});

export const feedSchema = z.object({ to: z.enum(['new', 'none'], 'Choose to make the address, or to end it.') });

export const servingSchema = z.object({ network: z.boolean() });

/** The sizes of the house as they are typed. */
export function houseSchema({ prefer }: { prefer: UnitSystem }): z.ZodType<HouseSizes> {
  const length = z
    .string()
    .max(40)
    .transform((text, context) => {
      const read = parseLength(text, { prefer });
      if (read.ok) return Number(read.value);
      context.addIssue({ code: 'custom', message: sayLengthError(read.error, { prefer }) });
      return z.NEVER;
    });
  return z.object({ houseLengthNm: length, houseWidthNm: length, kerfNm: length });
}
