import { z } from 'zod';
import { readTypedSheet, SHEET_FIELDS, type TypedSheet } from '@/app/(shop)/resin/typed-sheet';
import type { UnitSystem } from '@/shared/units/unit-system';

const text = z.string().max(60, 'That is too long.');
const depth = z.object({ least: text, most: text, upTo: text, mass: text });
const potLife = z.object({ minutes: text, mass: text, at: text });

/** A data sheet as its form sends it. */
export function sheetSchema({ prefer }: { prefer: UnitSystem }) {
  const fields = Object.fromEntries(SHEET_FIELDS.map((field) => [field, text]));
  return z
    .object({
      systemId: z.int().positive(),
      typed: z.object({
        ...fields,
        depths: z.array(depth).max(12, 'That is more than a sheet has.'),
        potLives: z.array(potLife).max(12, 'That is more than a sheet has.'),
        sets: z.boolean(),
      }),
      sameFile: z.boolean(),
      file: z.instanceof(File).optional(),
    })
    .transform(({ typed, ...rest }, context) => {
      const { facts, faults } = readTypedSheet(typed as unknown as TypedSheet, prefer);
      for (const [field, message] of Object.entries(faults)) {
        context.addIssue({ code: 'custom', path: [field], message });
      }
      return { ...rest, facts };
    });
}
