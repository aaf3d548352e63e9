import type { Parts } from '@/shared/pour/resin-sheet';
import { type Milligrams, milligrams } from '@/shared/units/stock-unit';

/** How a batch stands as it was weighed. */
export type WeighedRatio = {
  /** How far part B is off what part A asks for, tenths of a per cent of part B; below zero is too little. */
  readonly errorTenths: number;
  readonly within: boolean;
  /** What puts it right: more of the part there is too little of, to the milligram. */
  readonly add?: { readonly part: 'A' | 'B'; readonly amount: Milligrams };
};

/** Where the sheet names no tolerance: 2 % of part B. Common practice; the sheet goes before it. */
export const USUAL_TOLERANCE_TENTHS = 20;

/**
 * Judges the ratio that was really weighed against the ratio by mass. Undefined until both parts are in. Nothing can be
 * taken out of a bucket, so what is wrong is put right by adding to the other part. 345 g of A and 150 g of B at 100 to
 * 45 is 3.4 % too little B: 5.25 g more of it.
 */
export function weighedRatio(
  a: Milligrams,
  b: Milligrams,
  parts: Parts,
  toleranceTenths: number = USUAL_TOLERANCE_TENTHS,
): WeighedRatio | undefined {
  if (!(a > 0 && b > 0)) return undefined;
  const wanted = parts.b / parts.a;
  const errorTenths = Math.round((b / a / wanted - 1) * 1000);
  const within = Math.abs(errorTenths) <= toleranceTenths;
  const moreB = Math.ceil(a * wanted - b);
  const moreA = Math.ceil(b / wanted - a);
  if (moreB > 0) return { errorTenths, within, add: { part: 'B', amount: milligrams(moreB) } };
  return moreA > 0 ? { errorTenths, within, add: { part: 'A', amount: milligrams(moreA) } } : { errorTenths, within };
}
