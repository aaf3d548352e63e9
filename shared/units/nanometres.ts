import { type ExactInteger, exactInteger } from '@/shared/units/exact-integer';

/** Length in whole nanometres: 1 mm is 1 000 000, 1 in is 25 400 000 and 1/64 in is 396 875, all exactly. */
export type Nanometres = ExactInteger<'nm'>;

/** Whole nanometres; throws when `amount` is no safe integer. `nanometres(25_400_000)` is one inch. */
export function nanometres(amount: number | bigint): Nanometres {
  return exactInteger<'nm'>(amount);
}
