import { micrometres } from '@/shared/outline/point';
import { err, ok, type Result } from '@/shared/result/result';
import type { Nanometres } from '@/shared/units/nanometres';

/** What a top looks like from above, finished. Its length lies along the grain. */
export type TopShape =
  | {
      readonly kind: 'rectangle';
      readonly length: Nanometres;
      readonly width: Nanometres;
      readonly cornerRadius: Nanometres;
    }
  | { readonly kind: 'round'; readonly diameter: Nanometres }
  | { readonly kind: 'oval'; readonly length: Nanometres; readonly width: Nanometres }
  /** |x/a|ⁿ + |y/b|ⁿ = 1: an oval at n = 2, squarer above. */
  | {
      readonly kind: 'superellipse';
      readonly length: Nanometres;
      readonly width: Nanometres;
      readonly exponent: number;
    };

/** A shape in micrometres about its centre: half length `a`, half width `b`, corner radius `r` or exponent `n`. */
export type HalfSizes = { readonly a: number; readonly b: number } & (
  | { readonly curve: 'corners'; readonly r: number }
  | { readonly curve: 'power'; readonly n: number }
);

export type TopShapeError =
  | { readonly code: 'bad-length' | 'bad-width' | 'bad-corner-radius' }
  | { readonly code: 'bad-exponent'; readonly least: number; readonly most: number };

/** The exponents of a superellipse that are drawn and searched; the values themselves are allowed. */
export const LEAST_EXPONENT = 1.5;
export const MOST_EXPONENT = 20;

const LONGEST_TOP = 15_000_000;

/**
 * The half sizes of a shape, or which of its numbers cannot be: lengths above zero and up to 15 m, a corner radius of at
 * most half the shorter side (which makes a stadium), an exponent from 1.5 to 20. A round of 1 m has a = b = 500 000, n 2.
 */
export function halfSizes(shape: TopShape): Result<HalfSizes, TopShapeError> {
  const [length, width] = shape.kind === 'round' ? [shape.diameter, shape.diameter] : [shape.length, shape.width];
  const [a, b] = [micrometres(length) / 2, micrometres(width) / 2];
  if (!(a > 0 && 2 * a <= LONGEST_TOP)) return err({ code: 'bad-length' });
  if (!(b > 0 && 2 * b <= LONGEST_TOP)) return err({ code: 'bad-width' });
  if (shape.kind === 'rectangle') {
    const r = micrometres(shape.cornerRadius);
    return r >= 0 && r <= Math.min(a, b) ? ok({ a, b, curve: 'corners', r }) : err({ code: 'bad-corner-radius' });
  }
  const n = shape.kind === 'superellipse' ? shape.exponent : 2;
  if (!(n >= LEAST_EXPONENT && n <= MOST_EXPONENT)) {
    return err({ code: 'bad-exponent', least: LEAST_EXPONENT, most: MOST_EXPONENT });
  }
  return ok({ a, b, curve: 'power', n });
}

/** The shape scaled along and across. A corner radius keeps its proportion to the smaller of the two. */
export function stretched(sizes: HalfSizes, along: number, across: number): HalfSizes {
  const [a, b] = [sizes.a * along, sizes.b * across];
  if (sizes.curve === 'power') return { ...sizes, a, b };
  return { ...sizes, a, b, r: Math.min(along === across ? sizes.r * along : sizes.r, a, b) };
}
