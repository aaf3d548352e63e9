import type { Placement } from '@/shared/fit/search-places';
import type { HalfSizes } from '@/shared/fit/top-shape';

/** Which part of a shape: all of it, or what lies above a line `from` above its middle, turned over or not. */
export type ShapePart =
  | { readonly part: 'whole' }
  | { readonly part: 'above'; readonly from: number; readonly over: boolean };

export const WHOLE: ShapePart = { part: 'whole' };

type At = { readonly x: number; readonly y: number };

const SAGITTA = 20;

/**
 * The edge of a shape lying on a slab, as points on its true curve, counter-clockwise, in micrometres: nowhere more than
 * 20 µm inside the curve. A part is held where its straight side crosses the middle of the shape.
 */
export function drawnShape(sizes: HalfSizes, part: ShapePart, { x, y, angle }: Placement): readonly At[] {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return pointsOf(sizes, part).map((point) => ({
    x: x + point.x * cos - point.y * sin,
    y: y + point.x * sin + point.y * cos,
  }));
}

function pointsOf(sizes: HalfSizes, part: ShapePart): readonly At[] {
  const right = rightUpper(sizes);
  const upper = [...right, ...right.map(({ x, y }) => ({ x: -x, y })).reverse()];
  if (part.part === 'whole') return [...upper, ...upper.map(({ x, y }) => ({ x: -x, y: -y }))];
  const above: At[] = [];
  upper.forEach((at, nr) => {
    const before = upper[nr - 1];
    if (before && before.y < part.from !== at.y < part.from) {
      const along = (part.from - before.y) / (at.y - before.y);
      above.push({ x: before.x + (at.x - before.x) * along, y: 0 });
    }
    if (at.y >= part.from) above.push({ x: at.x, y: at.y - part.from });
  });
  const first = above[0];
  // The side of a rectangle runs straight down to the line; its lowest point of the quarter may stand above it.
  if (first && first.y > 0) {
    above.unshift({ x: first.x, y: 0 });
    above.push({ x: -first.x, y: 0 });
  }
  return part.over ? above.map(({ x, y }) => ({ x, y: -y })).reverse() : above;
}

/** From the right end up to the top, points of the first quadrant. */
function rightUpper(sizes: HalfSizes): readonly At[] {
  const { a, b } = sizes;
  if (sizes.curve === 'corners') {
    const { r } = sizes;
    const count = r === 0 ? 0 : Math.max(4, Math.ceil((Math.PI / 4) * Math.sqrt((2 * r) / SAGITTA) * 0.75));
    return Array.from({ length: count + 1 }, (_, nr) => {
      const angle = count === 0 ? Math.PI / 4 : (nr / count) * (Math.PI / 2);
      return count === 0 ? { x: a, y: b } : { x: a - r + r * Math.cos(angle), y: b - r + r * Math.sin(angle) };
    });
  }
  const at = (angle: number) => ({
    x: a * Math.max(0, Math.cos(angle)) ** (2 / sizes.n),
    y: b * Math.max(0, Math.sin(angle)) ** (2 / sizes.n),
  });
  const points: At[] = [{ x: a, y: 0 }];
  const add = (from: number, to: number, depth: number) => {
    const [p, q] = [at(from), at(to)];
    const m = at((from + to) / 2);
    const off =
      Math.abs((q.x - p.x) * (m.y - p.y) - (q.y - p.y) * (m.x - p.x)) / (Math.hypot(q.x - p.x, q.y - p.y) || 1);
    if ((depth >= 5 && off <= SAGITTA) || depth >= 14) points.push(q);
    else {
      add(from, (from + to) / 2, depth + 1);
      add((from + to) / 2, to, depth + 1);
    }
  };
  add(0, Math.PI / 2, 0);
  points[points.length - 1] = { x: 0, y: b };
  return points;
}
