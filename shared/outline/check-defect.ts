import type { Defect } from '@/shared/outline/defect';
import { findCrossing } from '@/shared/outline/find-crossing';
import { type Outline, ringsOf, sidesOf } from '@/shared/outline/outline';
import { outlineFromPoints } from '@/shared/outline/outline-from-points';
import { placeInRing, placeOfPoint } from '@/shared/outline/place-of-point';
import { FURTHEST, isPlace, type Point } from '@/shared/outline/point';
import { distanceToSegment } from '@/shared/outline/segment-distance';
import { err, ok, type Result } from '@/shared/result/result';

/** What is wrong with a defect, the point of its ring to look at (0 for a circle), and what was entered. */
export type DefectRefusal = {
  readonly code: 'defect-outside' | 'defect-not-simple' | 'bad-radius' | 'bad-depth' | 'out-of-range';
  readonly point: number;
  readonly entered: Defect;
};

/**
 * A defect marked on a slab. It may run over the edge, as bark does, but some of it must lie on the wood: otherwise
 * `defect-outside`, naming its first point. `defect-not-simple` names the side that crosses, `bad-radius` is zero, below
 * or beyond 20 m, `bad-depth` a face depth of zero or less, `out-of-range` a point that is not whole micrometres in 20 m.
 */
export function checkDefect(outline: Outline, entered: Defect): Result<Defect, DefectRefusal> {
  const refuse = (code: DefectRefusal['code'], point = 0) => err({ code, point, entered });
  const { place, depth } = entered;
  if (depth.face !== 'through' && depth.depth <= 0) return refuse('bad-depth');
  if (place.shape === 'circle') {
    if (!isPlace(place.centre)) return refuse('out-of-range');
    if (!Number.isInteger(place.radius) || place.radius <= 0 || place.radius > FURTHEST) return refuse('bad-radius');
    return discTouches(outline, place.centre, place.radius) ? ok(entered) : refuse('defect-outside');
  }
  const ring = outlineFromPoints({ edge: place.ring });
  if (!ring.ok) {
    return refuse(ring.error.code === 'out-of-range' ? 'out-of-range' : 'defect-not-simple', ring.error.point);
  }
  return ringTouches(outline, place.ring) ? ok(entered) : refuse('defect-outside');
}

function discTouches(outline: Outline, centre: Point, radius: number): boolean {
  if (placeOfPoint(outline, centre) === 'inside') return true;
  return ringsOf(outline)
    .flatMap(sidesOf)
    .some(([a, b]) => distanceToSegment(centre, a, b) < radius);
}

function ringTouches(outline: Outline, ring: readonly Point[]): boolean {
  if (ring.some((point) => placeOfPoint(outline, point) === 'inside')) return true;
  const first = outline.ring[0];
  return (
    findCrossing([...ringsOf(outline), ring]) !== undefined ||
    (first !== undefined && placeInRing(ring, first) === 'inside')
  );
}
