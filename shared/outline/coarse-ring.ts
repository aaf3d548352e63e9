import type { Ring } from '@/shared/outline/outline';
import { distanceToSegment } from '@/shared/outline/segment-distance';

/**
 * The ring with points left out that lie no farther than `tolerance` from the line without them: for drawings too small to
 * show them, never for measuring. Ramer, Douglas and Peucker's method (1972, 1973) between the first point and the one
 * farthest from it, so at least those and what lies beside their line stay. A square with a point on each side is four
 * points.
 */
export function coarseRing(ring: Ring, tolerance: number): Ring {
  const first = ring[0];
  if (!first || ring.length <= 3) return ring;
  let far = 0;
  let most = -1;
  for (const [nr, { x, y }] of ring.entries()) {
    const distance = Math.hypot(x - first.x, y - first.y);
    if (distance > most) [far, most] = [nr, distance];
  }
  const kept = new Set([0, far]);
  keepBetween(ring, 0, far, tolerance, kept);
  keepBetween(ring, far, ring.length, tolerance, kept);
  const coarse = ring.filter((_, nr) => kept.has(nr));
  return coarse.length >= 3 ? coarse : ring;
}

function keepBetween(ring: Ring, start: number, end: number, tolerance: number, kept: Set<number>): void {
  const spans: [number, number][] = [[start, end]];
  for (let span = spans.pop(); span; span = spans.pop()) {
    const [from, to] = span;
    const [a, b] = [ring[from], ring[to % ring.length]];
    if (!a || !b) continue;
    let most = tolerance;
    let at = -1;
    for (let nr = from + 1; nr < to; nr += 1) {
      const point = ring[nr];
      const distance = point ? distanceToSegment(point, a, b) : 0;
      if (distance > most) [at, most] = [nr, distance];
    }
    if (at < 0) continue;
    kept.add(at);
    spans.push([from, at], [at, to]);
  }
}
