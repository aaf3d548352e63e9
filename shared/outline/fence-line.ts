import type { Outline } from '@/shared/outline/outline';
import type { Point } from '@/shared/outline/point';
import { turn } from '@/shared/outline/turn';

/**
 * The line a rip takes so far in from an edge, the slab run with that edge against a straight fence: the fence touches the
 * two places of the edge that stand out furthest about the middle of its length. Whole micrometres, from the start on.
 * From the left edge of a slab with sides 500 mm apart, 100 mm in, it runs 400 mm above the right one. A distance below
 * zero lies outside the wood.
 */
export function fenceLine({ ring }: Outline, edge: 'left' | 'right', distance: number): readonly [Point, Point] {
  const side = edge === 'left' ? -1 : 1;
  const sorted = [...ring].sort((a, b) => a.x - b.x || side * (a.y - b.y));
  const chain: Point[] = [];
  for (const point of sorted) {
    while (chain.length > 1) {
      const [before, last] = [chain.at(-2), chain.at(-1)];
      // What lies behind the line from the point before to this one is not touched by the fence.
      if (!before || !last || side * turn(before, last, point) > 0) break;
      chain.pop();
    }
    chain.push(point);
  }
  const [first, end] = [sorted[0], sorted.at(-1)];
  const middle = ((first?.x ?? 0) + (end?.x ?? 0)) / 2;
  const to = chain.findIndex(({ x }, nr) => nr > 0 && x >= middle);
  const [a, b] = [chain[to - 1] ?? { x: 0, y: 0 }, chain[to] ?? { x: 1, y: 0 }];
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const [inX, inY] = [(-side * (b.y - a.y)) / length, (side * (b.x - a.x)) / length];
  const move = ({ x, y }: Point) => ({
    x: Math.round(x + inX * distance) + 0,
    y: Math.round(y + inY * distance) + 0,
  });
  return [move(a), move(b)];
}
