import { compareRatios, isWhole, type Ratio, times } from '@/shared/units/ratio';
import type { UnitSystem } from '@/shared/units/unit-system';

/** One part of a compound measure: how many, of a unit how large, from which system. */
export type MeasuredPart = { readonly count: Ratio; readonly size: Ratio; readonly system: UnitSystem };

/**
 * Which part of a compound such as `1 lb 4 oz` breaks its rule, or undefined when all follow. The rule: one system of
 * units, from large to small, only the last part may be broken, and each part is less than one of the unit before it.
 * So `5' 14"` and `1 lb 20 oz` break at their second part: in a workshop each is more often a slip than a sum.
 */
export function firstPartOutOfLine(parts: readonly MeasuredPart[]): number | undefined {
  for (const [index, part] of parts.entries()) {
    const before = parts[index - 1];
    if (!before) continue;
    const tooMuch = compareRatios(times(part.count, part.size), before.size) >= 0;
    if (before.system !== part.system || !isWhole(before.count) || tooMuch) return index;
    if (compareRatios(part.size, before.size) >= 0) return index;
  }
  return undefined;
}
