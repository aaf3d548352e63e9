import { err, ok, type Result } from '@/shared/result/result';
import { type ExactInteger, exactInteger } from '@/shared/units/exact-integer';

/** Density in whole grams per litre, the same number as kilograms per cubic metre. Water is about 1000. */
export type GramsPerLitre = ExactInteger<'g/L'>;

/** Lighter than any liquid, heavier than any metal a workshop keeps: outside, it is a slip of the unit. */
const LEAST_DENSITY = 200;
const MOST_DENSITY = 20_000;

export type DensityError = { readonly code: 'density-out-of-range'; readonly least: number; readonly most: number };

/**
 * A density, a whole number of g/L from 200 to 20 000, both allowed; anything else is `density-out-of-range`.
 * `gramsPerLitre(1100)` is a common epoxy resin.
 */
export function gramsPerLitre(amount: number): Result<GramsPerLitre, DensityError> {
  const fits = Number.isInteger(amount) && amount >= LEAST_DENSITY && amount <= MOST_DENSITY;
  if (!fits) return err({ code: 'density-out-of-range', least: LEAST_DENSITY, most: MOST_DENSITY });
  return ok(exactInteger<'g/L'>(amount));
}
