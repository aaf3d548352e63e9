import type { Outline, Ring } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import type { Point } from '@/shared/outline/point';

/** The long edges of a slab, each from the start of the chalk line to its end. */
export type LongEdges = { readonly left: readonly Point[]; readonly right: readonly Point[] };

/** The ring between its two ends: what lies above is the left edge, below the right one. The sawn ends are in neither. */
export function longEdges({ ring }: Outline): LongEdges {
  const { left, right } = boundsOf(ring);
  const at = (x: number, pick: (a: Point, b: Point) => boolean) =>
    ring.reduce((best, point, nr) => {
      const held = ring[best];
      return point.x === x && (held?.x !== x || pick(point, held)) ? nr : best;
    }, 0);
  const lower = (a: Point, b: Point) => a.y < b.y;
  const upper = (a: Point, b: Point) => a.y > b.y;
  return {
    right: stretch(ring, at(left, lower), at(right, lower)),
    left: [...stretch(ring, at(right, upper), at(left, upper))].reverse(),
  };
}

function stretch(ring: Ring, from: number, to: number): Point[] {
  const points: Point[] = [];
  for (let nr = from; ; nr = (nr + 1) % ring.length) {
    const point = ring[nr];
    if (point) points.push(point);
    if (nr === to) return points;
  }
}

const STEPS = 14;

/** Lines along the slab part of the way across, as its grain runs: `parts` of the way from the right edge to the left. */
export function grainLines(edges: LongEdges, parts: readonly number[]): readonly (readonly Point[])[] {
  const [start, end] = [edges.right[0]?.x ?? 0, edges.right.at(-1)?.x ?? 0];
  const places = Array.from({ length: STEPS + 1 }, (_, nr) => start + ((end - start) * nr) / STEPS);
  const [low, high] = [heightsAt(edges.right, places), heightsAt(edges.left, places)];
  return parts.map((part) =>
    places.map((x, nr) => ({ x, y: (low[nr] ?? 0) + ((high[nr] ?? 0) - (low[nr] ?? 0)) * part })),
  );
}

/** How far across an edge lies at each place, places in order. An edge that turns back is taken where it is first met. */
function heightsAt(edge: readonly Point[], places: readonly number[]): number[] {
  let nr = 0;
  return places.map((x) => {
    while (nr + 2 < edge.length && (edge[nr + 1]?.x ?? x) < x) nr += 1;
    const [a, b] = [edge[nr], edge[nr + 1] ?? edge[nr]];
    if (!a || !b) return 0;
    const part = b.x === a.x ? 0 : Math.min(1, Math.max(0, (x - a.x) / (b.x - a.x)));
    return a.y + (b.y - a.y) * part;
  });
}
