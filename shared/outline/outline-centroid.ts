import { type Outline, ringsOf, sidesOf } from '@/shared/outline/outline';
import type { Point } from '@/shared/outline/point';

/** Where the wood balances if it is of one thickness: the centroid of its area, gaps left out, in micrometres (not whole). */
export function outlineCentroid(outline: Outline): Point {
  const from = outline.ring[0] ?? { x: 0, y: 0 };
  let [twice, x, y] = [0, 0, 0];
  for (const [a, b] of ringsOf(outline).flatMap(sidesOf)) {
    const [ax, ay, bx, by] = [a.x - from.x, a.y - from.y, b.x - from.x, b.y - from.y];
    const cross = ax * by - ay * bx;
    twice += cross;
    x += (ax + bx) * cross;
    y += (ay + by) * cross;
  }
  return { x: from.x + x / (3 * twice), y: from.y + y / (3 * twice) };
}
