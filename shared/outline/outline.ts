import type { Point } from '@/shared/outline/point';

/** A closed line of points; the last joins the first, which is not repeated. */
export type Ring = readonly Point[];

/**
 * The wood of a slab seen from face A: a simple ring, counter-clockwise, and the gaps right through it, clockwise. Made
 * by `outlineFromStations`, `outlineFromPoints` and `cutOutline`, which refuse what is not simple.
 */
export type Outline = { readonly ring: Ring; readonly holes: readonly Ring[] };

/** Every closed line of an outline, the outer one first. */
export function ringsOf({ ring, holes }: Outline): readonly Ring[] {
  return [ring, ...holes];
}

/** The sides of a ring, each from a point to the next. */
export function sidesOf(ring: Ring): readonly (readonly [Point, Point])[] {
  return ring.map((from, nr) => [from, ring[(nr + 1) % ring.length] ?? from] as const);
}
