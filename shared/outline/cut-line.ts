import type { Bounds } from '@/shared/outline/outline-bounds';
import type { Point } from '@/shared/outline/point';
import { segmentsMeet } from '@/shared/outline/segments-meet';

/** A line to cut or break along, straight or bent, in micrometres. */
export type CutLine = {
  readonly points: readonly Point[];
  /** What the saw takes, half to either side; 0 where the wood breaks. */
  readonly kerf: number;
  /** A place in the only piece it goes through; where there is none it goes through all there are by then. */
  readonly within?: Point;
};

/** How a line was meant: across the slab, along it, free, or a break, which takes no wood. */
export const LINE_WAYS = ['cross', 'rip', 'free', 'break'] as const;
export type LineWay = (typeof LINE_WAYS)[number];
export type NamedLine = CutLine & { readonly way: LineWay };

export type LineFault = 'line-has-no-direction' | 'line-crosses-itself';

/** How far beyond the wood a line is drawn out, micrometres. */
const BEYOND = 10_000;

/** The box around the wood and a line through it, with room all round. */
export function boxAround({ left, right, bottom, top }: Bounds, points: readonly Point[]): Bounds {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return {
    left: Math.min(left, ...xs) - BEYOND,
    right: Math.max(right, ...xs) + BEYOND,
    bottom: Math.min(bottom, ...ys) - BEYOND,
    top: Math.max(top, ...ys) + BEYOND,
  };
}

/**
 * A line drawn out at both ends, straight on, to the edge of a box that holds it: a cut goes right through. Points that
 * stand twice in a row count once. Whole micrometres. Answers what is wrong where fewer than two points differ, or the
 * line, drawn out, meets itself. From (0,0) to (1,0) in a box from −5 to 5 it runs from (−5,0) to (5,0).
 */
export function runThrough(points: readonly Point[], box: Bounds): readonly Point[] | LineFault {
  const line = points.filter((point, nr) => nr === 0 || !isSame(point, points[nr - 1]));
  const [first, second] = line;
  const [last, beforeLast] = [line.at(-1), line.at(-2)];
  if (!first || !second || !last || !beforeLast) return 'line-has-no-direction';
  const through = [onBox(second, first, box), ...line.slice(1, -1), onBox(beforeLast, last, box)];
  return meetsItself(through) ? 'line-crosses-itself' : through;
}

/** Where the ray from `back` through `at` leaves the box. */
function onBox(back: Point, at: Point, box: Bounds): Point {
  const [dx, dy] = [at.x - back.x, at.y - back.y];
  const edgeX = dx > 0 ? box.right : box.left;
  const edgeY = dy > 0 ? box.top : box.bottom;
  const toX = dx === 0 ? Infinity : (edgeX - at.x) / dx;
  const toY = dy === 0 ? Infinity : (edgeY - at.y) / dy;
  return toX <= toY
    ? { x: edgeX, y: Math.round(at.y + dy * toX) + 0 }
    : { x: Math.round(at.x + dx * toY) + 0, y: edgeY };
}

function meetsItself(line: readonly Point[]): boolean {
  return line.slice(1).some((b, nr) => {
    const a = line[nr];
    if (!a) return false;
    return line.slice(nr + 3).some((d, later) => {
      const c = line[nr + 2 + later];
      return c !== undefined && segmentsMeet(a, b, c, d);
    });
  });
}

const isSame = (one: Point, two: Point | undefined) => two !== undefined && one.x === two.x && one.y === two.y;
