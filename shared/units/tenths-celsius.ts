import { type ExactInteger, exactInteger } from '@/shared/units/exact-integer';

/** Temperature in whole tenths of a degree Celsius: 21.5 °C is 215. */
export type TenthsCelsius = ExactInteger<'0.1 °C'>;

/** Whole tenths of a degree; throws when `amount` is no safe integer. `tenthsCelsius(215)` is 21.5 °C. */
export function tenthsCelsius(amount: number | bigint): TenthsCelsius {
  return exactInteger<'0.1 °C'>(amount);
}
