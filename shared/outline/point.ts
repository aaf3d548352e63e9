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

/** Whether both coordinates are whole micrometres within 20 m. */
export function isPlace({ x, y }: Point): boolean {
  return Number.isInteger(x) && Number.isInteger(y) && Math.abs(x) <= FURTHEST && Math.abs(y) <= FURTHEST;
}
