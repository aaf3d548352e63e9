import { type ExactInteger, exactInteger } from '@/shared/units/exact-integer';

/**
 * Money in whole minor units of its currency: 12.50 USD is 1250, 1250 JPY is 1250. It means nothing without the
 * currency.
 */
export type MinorUnits = ExactInteger<'minor'>;

/** Whole minor units; throws when `amount` is no safe integer. `minorUnits(1250)` is 12.50 in a two-digit currency. */
export function minorUnits(amount: number | bigint): MinorUnits {
  return exactInteger<'minor'>(amount);
}
