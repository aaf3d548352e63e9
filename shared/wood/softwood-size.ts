import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { type Explained, explained } from '@/shared/wood/explained';

const QUARTER = 6_350_000;

/** Dressed dry size in quarters of an inch by nominal size in quarters. Boards and dimension lumber, below 5 in thick. */
const THICKNESS = new Map([
  [4, 3],
  [5, 4],
  [6, 5],
  [8, 6],
  [10, 8],
  [12, 10],
  [14, 12],
  [16, 14],
]);
const WIDTH = new Map([
  [8, 6],
  [12, 10],
  [16, 14],
  [20, 18],
  [24, 22],
  [28, 26],
  [32, 29],
  [40, 37],
  [48, 45],
  [56, 53],
  [64, 61],
]);

export type SoftwoodSize = { readonly thickness: Nanometres; readonly width: Nanometres };

/**
 * Dressed dry size of a softwood sold by its nominal size in inches; undefined where the standard has none, and for
 * timbers of 5 in and thicker, which are dressed green. American Softwood Lumber Standard PS 20. `softwoodSize(2, 8)` is
 * 1 1/2 in by 7 1/4 in.
 */
export function softwoodSize(thicknessInches: number, widthInches: number): SoftwoodSize | undefined {
  const thickness = THICKNESS.get(thicknessInches * 4);
  const width = WIDTH.get(widthInches * 4);
  if (thickness === undefined || width === undefined) return undefined;
  return { thickness: nanometres(thickness * QUARTER), width: nanometres(width * QUARTER) };
}

/** Board feet of softwood from nominal inches and feet of length, unrounded. A 2 by 8 of 12 ft is 16. */
export function softwoodBoardFeet(thicknessInches: number, widthInches: number, feet: number): Explained<number> {
  if (!(thicknessInches >= 0 && widthInches >= 0 && feet >= 0)) throw new RangeError('A size is never below zero');
  const counted = Math.max(1, thicknessInches);
  return explained((counted * widthInches * feet) / 12, 'softwood-board-feet', {
    thicknessInches: counted,
    widthInches,
    feet,
  });
}
