import { err, ok, type Result } from '@/shared/result/result';
import type { Nanometres } from '@/shared/units/nanometres';

/**
 * A place on a slab in whole micrometres: `x` along the chalk line from where it begins, `y` across it, above zero to the
 * left as one looks along the line, face A up. Micrometres, because within 20 m every orientation test is then an exact
 * integer in a double; a 1/64 in that ends in a fraction of one is rounded by at most half of it.
 */
export type Point = { readonly x: number; readonly y: number };

/** No coordinate is further from the beginning of the line than this: 20 m. The value itself is allowed. */
export const FURTHEST = 20_000_000;

/** Whole micrometres nearest to a length in nanometres, half away from zero. An inch gives 25 400. */
export function micrometres(length: Nanometres): number {
  return Math.sign(length) * Math.round(Math.abs(length) / 1000) + 0;
}

/**
 * A point from millimetres, rounded to the micrometre, as a straightened photo gives it. Fails with `out-of-range` for
 * what is no number or beyond 20 m. `pointFromMillimetres(12.5, -3)` is `{ x: 12500, y: -3000 }`.
 */
export function pointFromMillimetres(x: number, y: number): Result<Point, { readonly code: 'out-of-range' }> {
  const point = { x: Math.round(x * 1000) + 0, y: Math.round(y * 1000) + 0 };
  return isPlace(point) ? ok(point) : err({ code: 'out-of-range' });
}

/** Whether both coordinates are whole micrometres within 20 m. */
export function isPlace({ x, y }: Point): boolean {
  return Number.isInteger(x) && Number.isInteger(y) && Math.abs(x) <= FURTHEST && Math.abs(y) <= FURTHEST;
}
