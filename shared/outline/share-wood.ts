import type { Outline } from '@/shared/outline/outline';
import { twiceArea } from '@/shared/outline/outline-area';
import { allocate } from '@/shared/units/allocate';
import { type MinorUnits, minorUnits } from '@/shared/units/minor-units';

/** Twice the area in µm² that falls to each piece, and to the sawdust. */
export type SharedWood = { readonly parts: readonly number[]; readonly sawdust: number };

/** Ten square millimetres, twice, in µm². */
export const ROUNDING = 20_000_000;

/**
 * Shares the area of a slab among the pieces it was cut into: together with the sawdust they are the slab, to the last
 * half square micrometre. What a saw has run through keeps its own area, and all the rest is sawdust. Where wood only
 * broke, nothing is lost, and the rounding of the new corners, ten square millimetres at most, goes to the largest
 * remainders; more than that is bits that fell off, and counts as sawdust. A slab of 1000 (twice, µm²) cut into 400 and 500
 * leaves 100 of sawdust; broken into 499 and 500 it is shared as 499 and 501.
 */
export function shareWood(slab: Outline, parts: readonly Outline[], isSawn: boolean): SharedWood {
  const whole = twiceArea(slab);
  const areas = parts.map(twiceArea);
  const sawdust = whole - areas.reduce((sum, area) => sum + area, 0);
  if (isSawn ? sawdust >= 0 : sawdust > ROUNDING) return { parts: areas, sawdust };
  return { parts: shareOut(whole, areas), sawdust: 0 };
}

/**
 * Shares what a slab cost among the pieces that are kept, by area or thickness; scrap and sawdust bear none. To the last
 * minor unit, by the largest remainder. 100 among 1, 1 and 1 is 34, 33 and 33.
 */
export function shareCost(cost: MinorUnits, weights: readonly number[]): readonly MinorUnits[] {
  return shareOut(cost, weights);
}

function shareOut(whole: number, weights: readonly number[]): readonly MinorUnits[] {
  const shares = allocate(minorUnits(whole), weights);
  if (!shares.ok) throw new Error(`Nothing to share by: ${shares.error.code}`);
  return shares.value;
}
