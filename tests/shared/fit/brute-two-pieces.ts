import type { HalfSizes } from '@/shared/fit/top-shape';
import type { Region } from '@/shared/outline/effective-region';

// Written apart from the search and sharing nothing with it: points, ray casting and distances, on a grid.

export type At = { readonly x: number; readonly y: number };
/** A part held at a place: its own point (u, v) lies at `x + u cos − v sin`, `y + u sin + v cos`. */
export type Held = { readonly x: number; readonly y: number; readonly angle: number };

/** Half the width of a shape at `u` from its middle, by its formula; 0 beyond its ends. */
function heightOf(sizes: HalfSizes, u: number): number {
  const t = Math.min(1, Math.abs(u) / sizes.a);
  if (sizes.curve === 'power') return sizes.b * (1 - t ** sizes.n) ** (1 / sizes.n);
  const into = Math.abs(u) - (sizes.a - sizes.r);
  return into <= 0 ? sizes.b : sizes.b - sizes.r + Math.sqrt(Math.max(0, sizes.r ** 2 - into ** 2));
}

export const laid = ({ x, y, angle }: Held, u: number, v: number): At => ({
  x: x + u * Math.cos(angle) - v * Math.sin(angle),
  y: y + u * Math.sin(angle) + v * Math.cos(angle),
});

/** Whether a point is in the wood between the trims, out of every disc, and at least `by` from every edge. */
export function isSound(region: Region, at: At, by = region.clearance): boolean {
  const { x, y } = at;
  if (x < (region.from ?? -Infinity) || x > (region.to ?? Infinity)) return false;
  let inside = false;
  for (const ring of [region.outline.ring, ...region.outline.holes]) {
    ring.forEach((a, nr) => {
      const b = ring[(nr + 1) % ring.length] ?? a;
      if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
    });
  }
  if (!inside) return false;
  for (const place of region.keepOut) {
    if (place.shape !== 'circle') throw new Error('Only discs are tried here.');
    if (Math.hypot(x - place.centre.x, y - place.centre.y) < place.radius + by) return false;
  }
  if (by <= 0) return true;
  return [region.outline.ring, ...region.outline.holes].every((ring) =>
    ring.every((a, nr) => {
      const b = ring[(nr + 1) % ring.length] ?? a;
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const part = Math.max(0, Math.min(1, ((x - a.x) * dx + (y - a.y) * dy) / (dx * dx + dy * dy || 1)));
      return Math.hypot(x - a.x - part * dx, y - a.y - part * dy) >= by;
    }),
  );
}

/**
 * Points all over the part of a shape above `from`, its edge included, `shrunk` in from it: in its own measure, (0, 0)
 * where it is held. `over` turns it over.
 */
export function pointsOver(
  sizes: HalfSizes,
  from: number,
  { over, shrunk, step }: { readonly over: boolean; readonly shrunk: number; readonly step: number },
): At[] {
  const points: At[] = [];
  const columns = Math.ceil((2 * sizes.a) / step);
  for (let nr = 0; nr <= columns; nr += 1) {
    const u = (sizes.a - shrunk) * ((2 * nr) / columns - 1);
    const top = heightOf({ ...sizes, a: sizes.a - shrunk, b: sizes.b - shrunk } as HalfSizes, u) - from;
    const [low, high] = [shrunk, top - shrunk];
    if (high < low) continue;
    const rows = Math.max(1, Math.ceil((high - low) / step));
    for (let row = 0; row <= rows; row += 1) {
      const v = low + ((high - low) * row) / rows;
      points.push({ x: u, y: over ? -v : v });
    }
  }
  return points;
}

/** A place of a grid at which every point lies in sound wood of every region, for a part turned over or not. */
export function bruteHalf(
  regions: readonly Region[],
  sizes: HalfSizes,
  grid: { readonly step: number; readonly angles: readonly number[] },
): (Held & { readonly over: boolean }) | undefined {
  const ring = regions.flatMap(({ outline }) => outline.ring);
  const [xs, ys] = [ring.map(({ x }) => x), ring.map(({ y }) => y)];
  for (const over of [false, true]) {
    // A coarse net first, so that most places are put aside at once; then a fine one of those left.
    const nets = [sizes.b / 2, sizes.b / 16].map((step) => pointsOver(sizes, 0, { over, shrunk: 0, step }));
    for (const angle of grid.angles) {
      for (let x = Math.min(...xs) + sizes.a * 0.98; x <= Math.max(...xs) - sizes.a * 0.98; x += grid.step) {
        for (let y = Math.min(...ys); y <= Math.max(...ys); y += grid.step) {
          const held = { x, y, angle };
          const lies = nets.every((net) =>
            net.every(({ x: u, y: v }) => regions.every((region) => isSound(region, laid(held, u, v)))),
          );
          if (lies) return { ...held, over };
        }
      }
    }
  }
  return undefined;
}

/**
 * The river of a top as somebody with a rule would measure it: at each of `count` places along, from the edge of the top
 * inward to where each piece's wood first ends, in steps of half a millimetre. Piece `nr` is seen with its back upwards.
 * `between` has the places with wood on both sides; `open` is all that no wood of either piece covers, wherever it lies.
 */
export function measuredRiver(
  regions: readonly [Region, Region],
  held: readonly [Held, Held],
  sizes: HalfSizes,
  from: number,
  count: number,
): { readonly between: readonly number[]; readonly area: number; readonly open: number } {
  const between: number[] = [];
  let [area, open] = [0, 0];
  for (let nr = 0; nr < count; nr += 1) {
    const u = -sizes.a + (2 * sizes.a * (nr + 0.5)) / count;
    const edge = heightOf(sizes, u);
    const [one, two] = [bankOf(regions[0], held[0], sizes, from, u), bankOf(regions[1], held[1], sizes, from, -u)];
    const gap = Math.max(0, Math.min(2 * edge, one + two));
    if (one < edge && two < edge) between.push(gap);
    area += gap * ((2 * sizes.a) / count);
    const bare = (v: number) =>
      regions.every((region, at) => {
        const turned = at === 0 ? laid(held[0], u, v - from) : laid(held[1], -u, -v - from);
        return !isSound({ ...region, keepOut: [], clearance: 0 }, turned, 0);
      });
    for (let v = -edge + RULE / 2; v < edge; v += RULE) if (bare(v)) open += RULE * ((2 * sizes.a) / count);
  }
  return { between, area, open };
}

const RULE = 500;

/** Height above the middle of the top at which a piece's wood ends. */
function bankOf(region: Region, held: Held, sizes: HalfSizes, from: number, u: number): number {
  const edge = heightOf(sizes, u);
  let v = edge - 1;
  const wood = (height: number) => isSound({ ...region, clearance: 0 }, laid(held, u, height - from), 0);
  if (!wood(v)) return edge;
  while (v > -2 * sizes.b && wood(v - RULE)) v -= RULE;
  return v;
}
