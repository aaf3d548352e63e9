import type { Ring } from '@/shared/outline/outline';
import type { Point } from '@/shared/outline/point';

/**
 * A crack as a closed line: the broken line through these points, so wide, ends cut square, corners mitred. Whole
 * micrometres, counter-clockwise. Undefined with fewer than two different points or no width. A sharp bend of a wide crack
 * may cross itself: `checkDefect` says so. (0,0) to (1000,0), 100 wide, is the rectangle from (0,-50) to (1000,50).
 */
export function thickLine(points: readonly Point[], width: number): Ring | undefined {
  const line = points.filter((point, nr) => {
    const before = points[nr - 1];
    return !before || before.x !== point.x || before.y !== point.y;
  });
  if (line.length < 2 || !(width > 0)) return undefined;
  const right = line.map((_, nr) => beside(line, nr, width / 2));
  const left = line.map((_, nr) => beside(line, nr, -width / 2));
  return [...right, ...left.reverse()];
}

/** The point at one side of a corner: on the mitre, no further out than four half widths. */
function beside(line: readonly Point[], nr: number, off: number): Point {
  const here = line[nr] ?? { x: 0, y: 0 };
  const before = direction(line[nr - 1], here);
  const after = direction(here, line[nr + 1]);
  const one = before ?? after ?? { x: 1, y: 0 };
  const two = after ?? one;
  const [nx, ny] = [one.y + two.y, -(one.x + two.x)];
  const length = Math.hypot(nx, ny);
  if (length === 0) return { x: Math.round(here.x + one.y * off), y: Math.round(here.y - one.x * off) };
  // Half the angle between the stretches makes the mitre this much longer than the half width.
  const stretch = Math.min(4, 2 / length);
  return {
    x: Math.round(here.x + (nx / length) * off * stretch),
    y: Math.round(here.y + (ny / length) * off * stretch),
  };
}

function direction(from: Point | undefined, to: Point | undefined): Point | undefined {
  if (!from || !to) return undefined;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return length === 0 ? undefined : { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}
