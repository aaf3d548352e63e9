import type { GramsPerLitre } from '@/shared/units/density';
import { ratio } from '@/shared/units/ratio';
import { roundDown, roundUp } from '@/shared/units/round-ratio';
import type { StockUnit } from '@/shared/units/stock-unit';

/**
 * An amount of one small unit in another, by the density where mass meets volume: rounded down for what there is, up for
 * what is to be taken, so that what is taken never falls short of what is needed. Undefined where they cannot be compared:
 * no density, or pieces against anything else.
 *
 * Example: 1000 mg at 1100 g/L is 909 µL rounded down, 910 µL rounded up.
 */
export function inUnit(
  amount: number,
  from: StockUnit,
  to: StockUnit,
  density: GramsPerLitre | undefined,
  round: 'down' | 'up',
): number | undefined {
  if (from === to) return amount;
  if (density === undefined || from === 'piece' || to === 'piece') return undefined;
  // A gram per litre is a milligram per 1000 µL.
  const exact =
    from === 'mg' ? ratio(BigInt(amount) * 1000n, BigInt(density)) : ratio(BigInt(amount) * BigInt(density), 1000n);
  return Number(round === 'down' ? roundDown(exact) : roundUp(exact));
}
