import { ringAround } from '@/shared/fit/obstacles';
import type { Placement } from '@/shared/fit/search-places';
import type { HalfSizes } from '@/shared/fit/top-shape';
import type { Region } from '@/shared/outline/effective-region';
import { ringsOf, sidesOf } from '@/shared/outline/outline';
import type { Point } from '@/shared/outline/point';

type Line = { readonly x0: number; readonly y0: number; readonly x1: number; readonly y1: number };

/** The wood's sides as the upper piece of a top sees them: its back upwards, the river below, x along the top. */
export type SeenSides = readonly Line[];

/** Half the width of a shape's edge above its middle line, at `along` from its middle; undefined beyond its ends. */
export function edgeAt(sizes: HalfSizes, along: number): number | undefined {
  const t = Math.abs(along);
  if (t > sizes.a) return undefined;
  if (sizes.curve === 'power') return sizes.b * (1 - (t / sizes.a) ** sizes.n) ** (1 / sizes.n);
  const into = t - (sizes.a - sizes.r);
  return into <= 0 ? sizes.b : sizes.b - sizes.r + Math.sqrt(Math.max(0, sizes.r ** 2 - into ** 2));
}

/** How a piece held at `placement` sees a point of its slab; `over` turns it by half a turn more. */
function seenFrom(placement: Placement, over: boolean): (point: Point) => Point {
  const angle = placement.angle + (over ? Math.PI : 0);
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return ({ x, y }) => {
    const [dx, dy] = [x - placement.x, y - placement.y];
    return { x: dx * cos + dy * sin, y: dy * cos - dx * sin };
  };
}

/** The sides of a region's wood, as a piece held at `placement` sees them. What is kept out of the top is no bank of it. */
export function sidesSeen(region: Region, placement: Placement, over: boolean): SeenSides {
  const seen = seenFrom(placement, over);
  return ringsOf(region.outline)
    .flatMap(sidesOf)
    .map(([a, b]) => {
      const [p, q] = [seen(a), seen(b)];
      return p.x <= q.x ? { x0: p.x, y0: p.y, x1: q.x, y1: q.y } : { x0: q.x, y0: q.y, x1: p.x, y1: p.y };
    });
}

/**
 * How far a piece held at `placement` must slide towards its live edge until whatever is kept out of the top lies beyond
 * the top's outer edge, or past its ends: 0 where all of it does already. Never too little; where the edge of the top is
 * curved it may be more than needed, since the highest edge over the place is compared with the lowest of the place.
 */
export function slideClear(
  region: Region,
  placement: Placement,
  over: boolean,
  sizes: HalfSizes,
  from: number,
): number {
  const seen = seenFrom(placement, over);
  let slide = 0;
  for (const place of region.keepOut) {
    const ring = ringAround(place).map(seen);
    const left = Math.min(...ring.map(({ x }) => x)) - region.clearance;
    const right = Math.max(...ring.map(({ x }) => x)) + region.clearance;
    if (left >= sizes.a || right <= -sizes.a) continue;
    // The edge of a top is highest at its middle.
    const along = left > 0 ? left : Math.min(right, 0);
    const edge = edgeAt(sizes, along) ?? sizes.b;
    slide = Math.max(slide, edge - from + region.clearance - Math.min(...ring.map(({ y }) => y)));
  }
  return slide;
}

/**
 * How far below its held line the wood of a piece reaches at `along`, going down from `begin` (above zero is above the
 * line): the height of the first side met. Undefined when there is no side below.
 */
export function bankBelow(sides: SeenSides, along: number, begin: number): number | undefined {
  let bank = -Infinity;
  for (const { x0, y0, x1, y1 } of sides) {
    if (along < x0 || along > x1) continue;
    const y = x1 > x0 ? y0 + ((along - x0) / (x1 - x0)) * (y1 - y0) : Math.max(y0, y1);
    if (y <= begin && y > bank) bank = y;
  }
  return bank === -Infinity ? undefined : bank;
}

/** Whether the place `along`, `height` lies in wood: an odd number of sides stands above it. */
export function isInWood(sides: SeenSides, along: number, height: number): boolean {
  let above = 0;
  for (const { x0, y0, x1, y1 } of sides) {
    if (along < x0 || along >= x1) continue;
    if (y0 + ((along - x0) / (x1 - x0)) * (y1 - y0) > height) above += 1;
  }
  return above % 2 === 1;
}
