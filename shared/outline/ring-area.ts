import type { Ring } from '@/shared/outline/outline';

/**
 * Twice the area of a ring in square micrometres, exact, by the shoelace formula: above zero counter-clockwise, below
 * zero clockwise. Twice, because the area of whole points may end in a half. A ring (0,0) (4,0) (0,3) gives 12.
 */
export function twiceRingArea(ring: Ring): bigint {
  const first = ring[0];
  if (!first) return 0n;
  // Taken from the first point, a triangle of points within 20 m stays below 2^53, so only the sum needs a bigint.
  let sum = 0n;
  for (let nr = 1; nr + 1 < ring.length; nr += 1) {
    const [a, b] = [ring[nr], ring[nr + 1]];
    if (a && b) sum += BigInt((a.x - first.x) * (b.y - first.y) - (a.y - first.y) * (b.x - first.x));
  }
  return sum;
}
