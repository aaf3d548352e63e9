import { inUnit } from '@/shared/promise/in-unit';
import type { GramsPerLitre } from '@/shared/units/density';
import type { StockUnit } from '@/shared/units/stock-unit';

/**
 * What is taken of one container, take by take, in the unit it is kept in: each rounded up, so that none falls short of
 * what is needed. Where that would come to more than is free in it, the whole is shared out by the largest remainder
 * instead, the earlier take first where two are equal, and one or the other falls short by less than a small unit. One
 * amount for each take, 0 where nothing is left of a unit; together never more than `free` where the amounts together are
 * no more than it. Undefined where mass and volume cannot be told apart.
 *
 * Example: 367, 367 and 366 mg out of 1000 µL at 1100 g/L, all of it free → 334, 333 and 333 µL.
 */
export function inKeptUnit(
  amounts: readonly number[],
  { from, to, density, free }: { from: StockUnit; to: StockUnit; density?: GramsPerLitre | undefined; free: number },
): readonly number[] | undefined {
  const inKept = (amount: number, round: 'down' | 'up') => inUnit(amount, from, to, density, round);
  const up = amounts.flatMap((amount) => inKept(amount, 'up') ?? []);
  if (up.length < amounts.length) return undefined;
  if (sumOf(up) <= free) return up;
  const down = amounts.map((amount) => inKept(amount, 'down') ?? 0);
  const left = Math.min(free, inKept(sumOf(amounts), 'up') ?? 0) - sumOf(down);
  const byRemainder = [...amounts.keys()].sort(
    (a, b) => remainder(amounts[b] ?? 0) - remainder(amounts[a] ?? 0) || a - b,
  );
  const favoured = new Set(byRemainder.slice(0, Math.max(0, left)));
  return down.map((amount, nr) => amount + Number(favoured.has(nr)));

  /** What rounding down leaves over, in parts of a small unit that are the same for every take. */
  function remainder(amount: number): number {
    const grams = BigInt(density ?? 1);
    return Number(from === 'mg' ? (BigInt(amount) * 1000n) % grams : (BigInt(amount) * grams) % 1000n);
  }
}

const sumOf = (list: readonly number[]) => list.reduce((total, each) => total + each, 0);
