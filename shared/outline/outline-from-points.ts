import { findCrossing } from '@/shared/outline/find-crossing';
import type { Outline, Ring } from '@/shared/outline/outline';
import { placeInRing } from '@/shared/outline/place-of-point';
import { isPlace } from '@/shared/outline/point';
import { twiceRingArea } from '@/shared/outline/ring-area';
import { err, ok, type Result } from '@/shared/result/result';

/** What was tapped: the edge all round, and each gap right through the slab. Either way round. */
export type TappedOutline = { readonly edge: Ring; readonly gaps?: readonly Ring[] };

/** The wrong point: `gap` is undefined on the edge; `point` counts from 0. `other` is where the second side begins. */
export type OutlineFault = {
  readonly code:
    | 'too-few-points'
    | 'out-of-range'
    | 'repeated-point'
    | 'sides-cross'
    | 'no-area'
    | 'gap-outside'
    | 'gap-in-gap';
  readonly gap?: number;
  readonly point: number;
  readonly other?: { readonly gap?: number; readonly point: number };
};

/** The fault and, untouched, what was entered. */
export type OutlineRefusal<Entered> = OutlineFault & { readonly entered: Entered };

/**
 * An outline from points tapped round the edge. Refused, with the point to look at, when fewer than three points, a
 * coordinate is not whole micrometres within 20 m, a point stands twice in a row, two sides cross or touch (not simple),
 * nothing is enclosed, a gap is outside the edge or inside another gap. The ring is turned counter-clockwise, gaps
 * clockwise; points stay as they were entered. (0,0) (4,4) (4,0) (0,4) is a bow-tie: `sides-cross` at point 0, other 2.
 */
export function outlineFromPoints(entered: TappedOutline): Result<Outline, OutlineRefusal<TappedOutline>> {
  const fault = faultOf(entered);
  if (fault) return err({ ...fault, entered });
  return ok({ ring: turned(entered.edge, 1), holes: (entered.gaps ?? []).map((gap) => turned(gap, -1)) });
}

function faultOf({ edge, gaps = [] }: TappedOutline): OutlineFault | undefined {
  const rings = [edge, ...gaps];
  for (const [nr, ring] of rings.entries()) {
    const fault = faultOfRing(ring);
    if (fault) return { ...fault, ...gapOf(nr) };
  }
  const crossing = findCrossing(rings);
  if (crossing) {
    const other = { ...gapOf(crossing.otherRing), point: crossing.otherSide };
    return { code: 'sides-cross', ...gapOf(crossing.ring), point: crossing.side, other };
  }
  for (const [nr, ring] of rings.entries()) {
    if (twiceRingArea(ring) === 0n) return { code: 'no-area', ...gapOf(nr), point: 0 };
  }
  for (const [nr, gap] of gaps.entries()) {
    const point = gap[0];
    if (!point || placeInRing(edge, point) !== 'inside') return { code: 'gap-outside', gap: nr, point: 0 };
    const around = gaps.findIndex((other, at) => at !== nr && placeInRing(other, point) === 'inside');
    if (around >= 0) return { code: 'gap-in-gap', gap: nr, point: 0, other: { gap: around, point: 0 } };
  }
  return undefined;
}

function faultOfRing(ring: Ring): OutlineFault | undefined {
  const far = ring.findIndex((point) => !isPlace(point));
  if (far >= 0) return { code: 'out-of-range', point: far };
  if (ring.length < 3) return { code: 'too-few-points', point: Math.max(0, ring.length - 1) };
  const repeated = ring.findIndex((point, nr) => {
    const before = ring[(nr + ring.length - 1) % ring.length];
    return before?.x === point.x && before.y === point.y;
  });
  if (repeated < 0) return undefined;
  // The point that closes a ring by standing on its first is the last one, not the first.
  return { code: 'repeated-point', point: repeated === 0 ? ring.length - 1 : repeated };
}

function gapOf(ring: number): { readonly gap?: number } {
  return ring === 0 ? {} : { gap: ring - 1 };
}

function turned(ring: Ring, way: 1 | -1): Ring {
  return twiceRingArea(ring) > 0n === (way === 1) ? ring : [...ring].reverse();
}
