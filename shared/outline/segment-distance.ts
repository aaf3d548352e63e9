import type { Point } from '@/shared/outline/point';

/** How far a point is from a segment, in the unit of its coordinates. (0,3) is 3 from (−1,0)–(1,0). */
export function distanceToSegment(point: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const length = dx * dx + dy * dy;
  const along = length === 0 ? 0 : ((point.x - a.x) * dx + (point.y - a.y) * dy) / length;
  const part = Math.min(1, Math.max(0, along));
  return Math.hypot(point.x - a.x - part * dx, point.y - a.y - part * dy);
}
