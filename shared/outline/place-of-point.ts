import { type Outline, type Ring, ringsOf, sidesOf } from '@/shared/outline/outline';
import type { Point } from '@/shared/outline/point';
import { turn } from '@/shared/outline/turn';

export type PlaceOfPoint = 'inside' | 'edge' | 'outside';

/** Where a point lies against one ring, whichever way round the ring runs. Exact for whole points. */
export function placeInRing(ring: Ring, point: Point): PlaceOfPoint {
  let inside = false;
  for (const [a, b] of sidesOf(ring)) {
    const side = turn(a, b, point);
    const between = Math.min(a.x, b.x) <= point.x && point.x <= Math.max(a.x, b.x);
    if (side === 0 && between && Math.min(a.y, b.y) <= point.y && point.y <= Math.max(a.y, b.y)) return 'edge';
    if (a.y > point.y !== b.y > point.y && (b.y > a.y ? side > 0 : side < 0)) inside = !inside;
  }
  return inside ? 'inside' : 'outside';
}

/** Where a point lies against the wood; inside a gap is outside, the rim of a gap is edge. */
export function placeOfPoint(outline: Outline, point: Point): PlaceOfPoint {
  const places = ringsOf(outline).map((ring) => placeInRing(ring, point));
  if (places.includes('edge')) return 'edge';
  return places.filter((place) => place === 'inside').length % 2 === 1 ? 'inside' : 'outside';
}
