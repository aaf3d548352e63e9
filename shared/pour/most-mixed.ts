import type { PotLifeHere } from '@/shared/pour/pot-life-at';
import { type Milligrams, milligrams } from '@/shared/units/stock-unit';

/**
 * The most that can be weighed, stirred and poured before it thickens: the pot life here over the minutes a kilogram
 * takes, rounded down to the gram. How long a kilogram takes is the maker's own figure; 5 minutes is common practice. 30
 * minutes at 5 a kilogram is 6 kg.
 */
export function mostMixed({ minutes }: Pick<PotLifeHere, 'minutes'>, minutesPerKilogram: number): Milligrams {
  return milligrams(Math.floor((minutes / minutesPerKilogram) * 1000) * 1000);
}
