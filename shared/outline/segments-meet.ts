import type { Point } from '@/shared/outline/point';
import { turn } from '@/shared/outline/turn';

/** Whether two segments share a point, ends counted. Exact. (0,0)–(2,2) and (0,2)–(2,0) do. */
export function segmentsMeet(a: Point, b: Point, c: Point, d: Point): boolean {
  if (Math.max(a.x, b.x) < Math.min(c.x, d.x) || Math.max(c.x, d.x) < Math.min(a.x, b.x)) return false;
  if (Math.max(a.y, b.y) < Math.min(c.y, d.y) || Math.max(c.y, d.y) < Math.min(a.y, b.y)) return false;
  const [c1, d1, a1, b1] = [turn(a, b, c), turn(a, b, d), turn(c, d, a), turn(c, d, b)];
  // With overlapping boxes, four zeros are two segments of one line that overlap.
  return Math.sign(c1) * Math.sign(d1) <= 0 && Math.sign(a1) * Math.sign(b1) <= 0;
}
