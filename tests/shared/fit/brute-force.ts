import type { Placement } from '@/shared/fit/search-places';
import type { HalfSizes } from '@/shared/fit/top-shape';
import type { Region } from '@/shared/outline/effective-region';
import { ringsOf } from '@/shared/outline/outline';

/**
 * Every place on a grid, tried one by one, with a test of its own: the top's edge, at `around` points widened by the
 * clearance along its normal, must be in the wood by ray casting, no corner of the wood may lie within it by its formula,
 * and discs must keep clear of it by distance. It knows nothing of the search. It may say yes where a spike of wood
 * slips between two points of the edge, and no where the grid steps over a place: `around` and `step` set how often.
 */
export function bruteForce(
  region: Region,
  sizes: HalfSizes,
  grid: {
    readonly step: number;
    readonly angles: readonly number[];
    readonly around: number;
    /** Only this place is tried. */
    readonly at?: { readonly x: number; readonly y: number };
  },
): Placement | undefined {
  const edge = edgePoints(sizes, region.clearance, grid.around);
  const rings = ringsOf(region.outline);
  const corners = rings.flat();
  const xs = region.outline.ring.map(({ x }) => x);
  const ys = region.outline.ring.map(({ y }) => y);
  const [left, right] = [
    Math.max(Math.min(...xs), region.from ?? -Infinity),
    Math.min(Math.max(...xs), region.to ?? Infinity),
  ];
  for (const angle of grid.angles) {
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    const turned = edge.map(({ x, y }) => ({ x: x * c - y * s, y: x * s + y * c }));
    if (grid.at) {
      if (lies(grid.at.x, grid.at.y, c, s, turned)) return { ...grid.at, angle };
      continue;
    }
    const reachX = turned.reduce((most, { x }) => Math.max(most, x), 0);
    const reachY = turned.reduce((most, { y }) => Math.max(most, y), 0);
    for (let x = left + reachX - region.clearance; x <= right - reachX + region.clearance; x += grid.step) {
      for (let y = Math.min(...ys) + reachY; y <= Math.max(...ys) - reachY; y += grid.step) {
        if (lies(x, y, c, s, turned)) return { x, y, angle };
      }
    }
  }
  return undefined;

  function lies(x: number, y: number, c: number, s: number, turned: readonly { x: number; y: number }[]): boolean {
    for (const point of turned) {
      const [px, py] = [x + point.x, y + point.y];
      if (region.from !== undefined && px < region.from - region.clearance) return false;
      if (region.to !== undefined && px > region.to + region.clearance) return false;
      if (!isInRings(rings, px, py)) return false;
    }
    for (const corner of corners) {
      const [dx, dy] = [corner.x - x, corner.y - y];
      if (isWithin(sizes, region.clearance, dx * c + dy * s, dy * c - dx * s)) return false;
    }
    for (const place of region.keepOut) {
      if (place.shape !== 'circle') throw new Error('Only discs are tried here.');
      const [dx, dy] = [place.centre.x - x, place.centre.y - y];
      const [u, v] = [dx * c + dy * s, dy * c - dx * s];
      if (isWithin(sizes, 0, u, v)) return false;
      for (const point of turned) if (Math.hypot(point.x - dx, point.y - dy) < place.radius) return false;
    }
    return true;
  }
}

function isInRings(rings: readonly (readonly { x: number; y: number }[])[], px: number, py: number): boolean {
  let inside = false;
  for (const ring of rings) {
    for (let nr = 0, before = ring.length - 1; nr < ring.length; before = nr, nr += 1) {
      const [a, b] = [ring[nr], ring[before]];
      if (!a || !b) continue;
      if (a.y > py !== b.y > py && px < ((b.x - a.x) * (py - a.y)) / (b.y - a.y) + a.x) inside = !inside;
    }
  }
  return inside;
}

function isWithin(sizes: HalfSizes, by: number, x: number, y: number): boolean {
  const [u, v] = [Math.abs(x), Math.abs(y)];
  if (sizes.curve === 'power') return (u / (sizes.a + by)) ** sizes.n + (v / (sizes.b + by)) ** sizes.n < 1;
  const [du, dv] = [u - (sizes.a - sizes.r), v - (sizes.b - sizes.r)];
  if (du <= 0 || dv <= 0) return u < sizes.a + by && v < sizes.b + by;
  return Math.hypot(du, dv) < sizes.r + by;
}

function edgePoints(sizes: HalfSizes, by: number, around: number): { x: number; y: number }[] {
  return Array.from({ length: around }, (_, nr) => {
    const angle = (2 * Math.PI * nr) / around;
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    if (sizes.curve === 'corners') {
      // Points spread by angle from the centre onto the rounded box, so that long sides get theirs too.
      const [u, v] = rounded(sizes.a + by, sizes.b + by, sizes.r + by, c, s);
      return { x: u, y: v };
    }
    const [x, y] = [
      sizes.a * Math.sign(c) * Math.abs(c) ** (2 / sizes.n),
      sizes.b * Math.sign(s) * Math.abs(s) ** (2 / sizes.n),
    ];
    const [gx, gy] = [
      (Math.sign(x) * Math.abs(x / sizes.a) ** (sizes.n - 1)) / sizes.a,
      (Math.sign(y) * Math.abs(y / sizes.b) ** (sizes.n - 1)) / sizes.b,
    ];
    const g = Math.hypot(gx, gy) || 1;
    return { x: x + (by * gx) / g, y: y + (by * gy) / g };
  });
}

function rounded(a: number, b: number, r: number, c: number, s: number): readonly [number, number] {
  const [ux, uy] = [a * c, b * s];
  const scale = 1 / Math.max(Math.abs(c), Math.abs(s));
  const [x, y] = [ux * scale, uy * scale];
  const [dx, dy] = [Math.abs(x) - (a - r), Math.abs(y) - (b - r)];
  if (dx <= 0 || dy <= 0) return [x, y];
  const far = Math.hypot(dx, dy) || 1;
  return [Math.sign(x) * (a - r + (r * dx) / far), Math.sign(y) * (b - r + (r * dy) / far)];
}
