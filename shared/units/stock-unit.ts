import { type ExactInteger, exactInteger } from '@/shared/units/exact-integer';

/** The three small units the ledger counts in: milligrams, microlitres, pieces. */
export type StockUnit = 'mg' | 'uL' | 'piece';

/** Mass in whole milligrams. 1 kg is 1 000 000. */
export type Milligrams = ExactInteger<'mg'>;
/** Volume in whole microlitres. 1 L is 1 000 000. */
export type Microlitres = ExactInteger<'uL'>;
/** A whole count of things. */
export type Pieces = ExactInteger<'piece'>;

type AmountByUnit = { readonly mg: Milligrams; readonly uL: Microlitres; readonly piece: Pieces };

/** The branded integer that counts in `U`: `AmountOf<'mg'>` is `Milligrams`. */
export type AmountOf<U extends StockUnit> = AmountByUnit[U];

/** Whole milligrams; throws when `amount` is no safe integer. `milligrams(2_500_000)` is 2.5 kg. */
export function milligrams(amount: number | bigint): Milligrams {
  return exactInteger<'mg'>(amount);
}

/** Whole microlitres; throws when `amount` is no safe integer. `microlitres(946_353)` is a US quart. */
export function microlitres(amount: number | bigint): Microlitres {
  return exactInteger<'uL'>(amount);
}

/** Whole pieces; throws when `amount` is no safe integer. `pieces(3)` is three. */
export function pieces(amount: number | bigint): Pieces {
  return exactInteger<'piece'>(amount);
}

/**
 * The amount in whichever stock unit is named, for rows read from the store; throws like the others. `amountOf('mg',
 * 750n)`.
 */
export function amountOf<U extends StockUnit>(unit: U, amount: number | bigint): AmountOf<U> {
  const branded: Record<StockUnit, () => Milligrams | Microlitres | Pieces> = {
    mg: () => milligrams(amount),
    uL: () => microlitres(amount),
    piece: () => pieces(amount),
  };
  return branded[unit]() as AmountOf<U>;
}
