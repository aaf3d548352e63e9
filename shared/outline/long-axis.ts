import type { Millimetres } from '@/shared/outline/sheet-marks';
import { err, ok, type Result } from '@/shared/result/result';

/**
 * The way a slab runs: along the longer side of the smallest upright or slanted box around its points, as a step of length
 * one, and the middle of that box. One side of the smallest box lies along a side of the convex hull (Freeman and
 * Shapira, Communications of the ACM 18(7), 1975; from memory). Fails with `no-area` where the points lie on one line.
 * `(0,0) (4,0) (4,1) (0,1)` runs along `{x: 1, y: 0}` through `{x: 2, y: 0.5}`.
 */
export function longAxis(
  points: readonly Millimetres[],
): Result<{ readonly along: Millimetres; readonly middle: Millimetres }, { readonly code: 'no-area' }> {
  const hull = hullOf(points);
  let least = Infinity;
  let found: { along: Millimetres; middle: Millimetres } | undefined;
  for (const [nr, from] of hull.entries()) {
    const to = hull[(nr + 1) % hull.length] ?? from;
    const size = Math.hypot(to.x - from.x, to.y - from.y);
    const step = { x: (to.x - from.x) / size, y: (to.y - from.y) / size };
    const [low, high] = spanOf(hull, ({ x, y }) => x * step.x + y * step.y);
    const [near, far] = spanOf(hull, ({ x, y }) => y * step.x - x * step.y);
    const area = (high - low) * (far - near);
    if (!(area < least)) continue;
    least = area;
    const [u, v] = [(low + high) / 2, (near + far) / 2];
    const middle = { x: u * step.x - v * step.y, y: u * step.y + v * step.x };
    found = { along: high - low >= far - near ? step : { x: -step.y + 0, y: step.x }, middle };
  }
  return found && least > 0 ? ok(found) : err({ code: 'no-area' });
}

function spanOf(points: readonly Millimetres[], value: (point: Millimetres) => number): readonly [number, number] {
  const all = points.map(value);
  return [Math.min(...all), Math.max(...all)];
}

/** The convex hull, counter-clockwise, by going along the lower and back along the upper side. */
function hullOf(points: readonly Millimetres[]): readonly Millimetres[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  const half = (way: readonly Millimetres[]) => {
    const line: Millimetres[] = [];
    for (const point of way) {
      while (line.length > 1 && !turnsLeft(line.at(-2), line.at(-1), point)) line.pop();
      line.push(point);
    }
    return line.slice(0, -1);
  };
  return [...half(sorted), ...half([...sorted].reverse())];
}

function turnsLeft(a: Millimetres | undefined, b: Millimetres | undefined, c: Millimetres): boolean {
  return !a || !b || (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) > 0;
}
