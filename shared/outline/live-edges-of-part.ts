import { type Outline, sidesOf } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { distanceToSegment } from '@/shared/outline/segment-distance';

/** New corners are rounded, and an edge may be bent by as much: micrometres. */
const NEAR = 3;
/** Of the length of a piece, how much of an edge must be the slab's own to be called its natural edge. Common practice. */
const LEAST = 0.25;

/**
 * Which of a slab's long edges a piece of it still has, left and right of the chalk line: a quarter of its length at
 * least. Ripped down the middle, the left half has the left edge. Both outlines in one place, micrometres.
 */
export function edgesOfPart(slab: Outline, part: Outline): { readonly left: boolean; readonly right: boolean } {
  const edges = sidesOf(slab.ring);
  const { left, right } = boundsOf(part.ring);
  const had = { left: 0, right: 0 };
  for (const [a, b] of sidesOf(part.ring)) {
    const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
    if (!edges.some(([from, to]) => distanceToSegment(middle, from, to) <= NEAR)) continue;
    // The ring runs counter-clockwise: back along the left edge, on along the right.
    if (b.x < a.x) had.left += a.x - b.x;
    else had.right += b.x - a.x;
  }
  const least = (right - left) * LEAST;
  return { left: had.left >= least, right: had.right >= least };
}
