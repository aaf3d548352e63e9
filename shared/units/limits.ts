import { minorUnits } from '@/shared/units/minor-units';
import { nanometres } from '@/shared/units/nanometres';
import { type AmountOf, amountOf, type StockUnit } from '@/shared/units/stock-unit';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';

/**
 * The most that one typed value may say. Beyond it a parser answers `absurd`: in a furniture workshop it is a slip of
 * the unit. The caps also keep sums exact: nine million full containers, ninety thousand longest boards or nine hundred
 * greatest prices still add up inside the safe integers.
 */

const MOST_IN_A_CONTAINER: { readonly [U in StockUnit]: AmountOf<U> } = {
  /** 1000 kg */
  mg: amountOf('mg', 1_000_000_000),
  /** 1000 L */
  uL: amountOf('uL', 1_000_000_000),
  piece: amountOf('piece', 1_000_000),
};

/** The most one container may hold: 1000 kg, 1000 L or 1 000 000 pieces. The value itself is allowed. */
export function mostInAContainer<U extends StockUnit>(unit: U): AmountOf<U> {
  return MOST_IN_A_CONTAINER[unit];
}

/** The longest length: 100 m. The value itself is allowed. */
export const LONGEST = nanometres(100_000_000_000);

/** The coldest and hottest temperature, −90.0 °C and 300.0 °C; each is allowed. */
export const COLDEST = tenthsCelsius(-900);
export const HOTTEST = tenthsCelsius(3000);

/** The greatest sum of money: ten million million minor units. The value itself is allowed. */
export const MOST_MONEY = minorUnits(10_000_000_000_000);

/** The longest text a parser reads, in characters. It bounds the work done on pasted rubbish. */
export const LONGEST_TEXT = 60;
