import { inUnit } from '@/shared/promise/in-unit';
import type { GramsPerLitre } from '@/shared/units/density';
import type { StockUnit } from '@/shared/units/stock-unit';

/**
 * What an amount of a container counts as for a need that still wants so much: rounded down, but as all that is wanted
 * where it falls short by rounding alone. Nobody can take a part of a small unit, so nothing is to be bought for one.
 * Undefined where the units cannot be compared.
 *
 * Example: 333 µL at 1100 g/L are 366.3 mg: 367 where 367 are wanted, and 366 where 368 or 360 are.
 */
export function countsAs(
  amount: number,
  wants: number,
  { from, to, density }: { from: StockUnit; to: StockUnit; density?: GramsPerLitre | undefined },
): number | undefined {
  const [down, up] = [inUnit(amount, from, to, density, 'down'), inUnit(amount, from, to, density, 'up')];
  return down !== undefined && up === wants ? wants : down;
}
