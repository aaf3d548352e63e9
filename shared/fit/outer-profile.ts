import type { HalfSizes } from '@/shared/fit/top-shape';

/**
 * How far a convex shape reaches up at each distance from its middle line, in micrometres: straight between the samples,
 * falling from `u[0]` at 0, concave, ending at `s.at(-1)`. It is never below the true shape and at most `CLOSE` above.
 */
export type Profile = {
  readonly s: Float64Array;
  readonly u: Float64Array;
  /** Slopes between samples, falling. */
  readonly slope: Float64Array;
  /** For each of 128 equal parts of the half length, the sample to begin looking from. */
  readonly begin: Int32Array;
  readonly half: number;
};

/** The outermost point of a shape in a direction (c, s) of the first quadrant. */
export type Contact = (c: number, s: number) => readonly [number, number];

/** How far outside the shape its drawn edge may be: 20 µm, well under the millimetre the search answers to. */
const CLOSE = 20;

const PARTS = 128;
const DEEPEST = 14;

/** The outermost points of a quarter of a shape widened by `by` all round. */
export function contactOf(sizes: HalfSizes, by: number): Contact {
  const { a, b } = sizes;
  if (sizes.curve === 'corners') {
    const { r } = sizes;
    return (c, s) => [a - r + (r + by) * c, b - r + (r + by) * s];
  }
  // The support function of an n-norm ball is the norm with 1/n + 1/q = 1 (Hölder).
  const q = sizes.n / (sizes.n - 1);
  return (c, s) => {
    const reach = ((a * c) ** q + (b * s) ** q) ** (1 / q);
    return [a * ((a * c) / reach) ** (q - 1) + by * c, b * ((b * s) / reach) ** (q - 1) + by * s];
  };
}

/** The outermost points of a convex chain in the first quadrant widened by `by`. */
export function contactOfChain(chain: readonly (readonly [number, number])[], by: number): Contact {
  return (c, s) => {
    let best = chain[0] ?? [0, 0];
    for (const point of chain) if (point[0] * c + point[1] * s > best[0] * c + best[1] * s) best = point;
    return [best[0] + by * c, best[1] + by * s];
  };
}

/** The corners of a line of tangents drawn close round a quarter, from the top (0, u) to the far end (a, 0). */
export function outerQuarter(contact: Contact): readonly (readonly [number, number])[] {
  type Tangent = {
    readonly angle: number;
    readonly c: number;
    readonly s: number;
    readonly at: readonly [number, number];
    readonly reach: number;
  };
  const tangent = (angle: number): Tangent => {
    const c = angle === Math.PI / 2 ? 0 : Math.cos(angle);
    const s = Math.sin(angle);
    const at = contact(c, s);
    return { angle, c, s, at, reach: at[0] * c + at[1] * s };
  };
  const corners: (readonly [number, number])[] = [];
  const add = (one: Tangent, two: Tangent, depth: number) => {
    const sine = one.s * two.c - one.c * two.s;
    const corner = [
      (two.reach * one.s - one.reach * two.s) / sine,
      (one.reach * two.c - two.reach * one.c) / sine,
    ] as const;
    const [dx, dy] = [two.at[0] - one.at[0], two.at[1] - one.at[1]];
    const chord = Math.hypot(dx, dy);
    const out = chord > 0 ? Math.abs(dx * (corner[1] - one.at[1]) - dy * (corner[0] - one.at[0])) / chord : 0;
    if (out <= CLOSE || depth >= DEEPEST) {
      corners.push(corner);
      return;
    }
    const middle = tangent((one.angle + two.angle) / 2);
    add(one, middle, depth + 1);
    add(middle, two, depth + 1);
  };
  const [top, end] = [tangent(Math.PI / 2), tangent(0)];
  add(top, end, 0);
  return [[0, top.reach], ...corners, [end.reach, 0]];
}

/** The profile of a quarter drawn by `outerQuarter`. */
export function profileOf(quarter: readonly (readonly [number, number])[]): Profile {
  const kept: (readonly [number, number])[] = [];
  for (const [x, y] of quarter.slice(0, -1)) {
    const last = kept.at(-1);
    if (!last || x > last[0] + 1e-6) kept.push([x, Math.min(y, last?.[1] ?? y)]);
  }
  const s = Float64Array.from(kept, ([x]) => x);
  const u = Float64Array.from(kept, ([, y]) => y);
  const slope = Float64Array.from(kept.slice(1), ([x, y], nr) => {
    const [x0, y0] = kept[nr] ?? [0, 0];
    return (y - y0) / (x - x0);
  });
  const half = kept.at(-1)?.[0] ?? 0;
  const begin = new Int32Array(PARTS + 1);
  let at = 0;
  for (let part = 0; part <= PARTS; part += 1) {
    while (at + 2 < s.length && (s[at + 1] ?? 0) <= (part * half) / PARTS) at += 1;
    begin[part] = at;
  }
  return { s, u, slope, begin, half };
}

/** The height of a profile at a distance of 0 to `half` from the middle. */
export function heightAt({ s, u, slope, begin, half }: Profile, distance: number): number {
  if (slope.length === 0) return u[0] as number;
  let at = begin[Math.min(PARTS, ((distance / half) * PARTS) | 0)] as number;
  while (at + 1 < slope.length && (s[at + 1] as number) < distance) at += 1;
  return (u[at] as number) + (slope[at] as number) * (distance - (s[at] as number));
}

/** The distance from the middle, zero or more, at which `pull × distance + height` is greatest, for a pull above zero. */
export function pulledTo({ s, slope }: Profile, pull: number): number {
  let [low, high] = [0, slope.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((slope[middle] as number) + pull > 0) low = middle + 1;
    else high = middle;
  }
  return s[low] as number;
}
