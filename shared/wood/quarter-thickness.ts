import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import type { WoodSourceId } from '@/shared/wood/sources';

export type QuarterThickness = {
  /** Quarters of an inch, rough: 8 for 8/4. */
  readonly quarters: number;
  readonly rough: Nanometres;
  /** Surfaced one side and two sides; one side is by agreement, and unknown for some. */
  readonly surfacedOne: Nanometres | null;
  readonly surfacedTwo: Nanometres;
  readonly source: WoodSourceId;
};

const SIXTEENTH = 1_587_500;

const row = (
  quarters: number,
  one: number | null,
  two: number,
  source: WoodSourceId = 'hardwood-thickness',
): QuarterThickness => ({
  quarters,
  rough: nanometres(quarters * 4 * SIXTEENTH),
  surfacedOne: one === null ? null : nanometres(one * SIXTEENTH),
  surfacedTwo: nanometres(two * SIXTEENTH),
  source,
});

/** Hardwood thicknesses, surfaced ones in sixteenths of an inch. The surfaced size is what a grader uses; real ones vary. */
export const QUARTER_THICKNESSES: readonly QuarterThickness[] = [
  row(3, 10, 9),
  row(4, 14, 13),
  row(5, 18, 17),
  row(6, 22, 21),
  row(7, null, 24),
  row(8, 29, 28),
  row(10, null, 36, 'hardwood-thickness-memory'),
  row(12, 45, 44),
  row(14, null, 52),
  row(16, 61, 60),
];

/**
 * Rough and surfaced thickness of a hardwood sold as so many quarters; undefined where the trade has no such size.
 * `quarterThickness(4)?.surfacedTwo` is 13/16 in.
 */
export function quarterThickness(quarters: number): QuarterThickness | undefined {
  return QUARTER_THICKNESSES.find((each) => each.quarters === quarters);
}
