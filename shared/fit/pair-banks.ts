import { type Back, bankHeight, SAMPLES } from '@/shared/fit/river-backs';
import { edgeAt, sidesSeen } from '@/shared/fit/river-bank';
import type { HalfSizes } from '@/shared/fit/top-shape';

/**
 * A river as measured between two banks, in micrometres and square micrometres. `narrowest` is taken where there is wood
 * on both sides: where one bank has run out to the edge of the top, at the tip of an oval, the river opens into it.
 */
export type RiverGap = { readonly narrowest: number; readonly widest: number; readonly area: number };

export type PairLimits = {
  /** The height above the middle of the top at which backs are held. */
  readonly from: number;
  readonly least: number;
  readonly most: number;
  /** Two backs of one slab are held at least so far apart across it, at one angle. */
  readonly apart: number | undefined;
};

export type Paired = { readonly pieces: readonly [PlacedBack, PlacedBack]; readonly river: RiverGap };
type PlacedBack = Pick<Back, 'placement'> & { readonly part: Back['piece']['part'] };

const HAIR = 1;
const KEPT = 8;

/**
 * Pairs of backs whose banks leave a river within the limits, least resin first. Sliding a piece towards its live edge
 * widens the river by as much everywhere, so each pair is first put as close as the wood allows and then drawn apart by
 * exactly what the limits, and what is kept out of the wood, ask; the second piece is the first one's turned by half a turn, so its bank runs the other way.
 */
export function pairBanks(
  upper: readonly Back[],
  lower: readonly Back[],
  sizes: HalfSizes,
  limits: PairLimits,
): { readonly found: readonly Paired[]; readonly looked: number } {
  let looked = 0;
  const edges = Float64Array.from(
    { length: SAMPLES },
    (_, at) => edgeAt(sizes, -sizes.a + (2 * sizes.a * at) / (SAMPLES - 1)) ?? 0,
  );
  const rough: { readonly one: Back; readonly two: Back; readonly draw: number; readonly area: number }[] = [];
  for (const one of upper) {
    for (const two of lower) {
      if (limits.apart !== undefined && (one.over || !two.over || one.placement.angle !== two.placement.angle))
        continue;
      looked += 1;
      let [narrowest, total] = [Infinity, 0];
      for (let at = 0; at < SAMPLES; at += 1) {
        const [upperBank, lowerBank] = [one.bank[at] ?? 0, two.bank[SAMPLES - 1 - at] ?? 0];
        const gap = upperBank + lowerBank;
        if (isBetween(upperBank, lowerBank, edges[at] ?? 0)) narrowest = Math.min(narrowest, gap);
        total += Math.max(0, Math.min(2 * (edges[at] ?? 0), gap));
      }
      const toPart = limits.apart === undefined ? 0 : limits.apart - (two.across - one.across);
      const draw = Math.max(one.leastSlide + two.leastSlide, limits.least - narrowest, toPart);
      if (draw <= one.slide + two.slide) rough.push({ one, two, draw, area: total / SAMPLES + draw });
    }
  }
  rough.sort((a, b) => a.area - b.area);
  const found: Paired[] = [];
  for (const pair of rough.slice(0, KEPT * 8)) {
    const paired = settle(pair, sizes, limits);
    if (paired) found.push(paired);
    if (found.length >= KEPT) break;
  }
  return { found: found.sort((a, b) => a.river.area - b.river.area), looked };
}

/** Places a pair, measures its river at every turn of both banks, and draws it apart by what the samples had missed. */
function settle(
  { one, two, draw }: { readonly one: Back; readonly two: Back; readonly draw: number },
  sizes: HalfSizes,
  limits: PairLimits,
): Paired | undefined {
  let drawn = draw;
  for (let again = 0; again < 3; again += 1) {
    const [room, other] = [one.slide - one.leastSlide, two.slide - two.leastSlide];
    const more = drawn - one.leastSlide - two.leastSlide;
    const first = one.leastSlide + Math.min(room, (more * room) / (room + other || 1));
    const pieces = [slid(one, first), slid(two, Math.min(two.slide, drawn - first))] as const;
    const river = measure(one, pieces[0], two, pieces[1], sizes, limits.from);
    if (river.narrowest >= limits.least - HAIR)
      return river.widest <= limits.most + HAIR ? { pieces, river } : undefined;
    drawn += limits.least - river.narrowest + HAIR / 2;
    if (drawn > one.slide + two.slide) return undefined;
  }
  return undefined;
}

/** Whether both banks are wood, and not the edge of the top where there is none. */
function isBetween(high: number, low: number, edge: number): boolean {
  return high < edge - HAIR && low < edge - HAIR;
}

function slid({ placement, piece, over }: Back, by: number): PlacedBack {
  const down = over ? by : -by;
  const { x, y, angle } = placement;
  return { part: piece.part, placement: { x: x - down * Math.sin(angle), y: y + down * Math.cos(angle), angle } };
}

function measure(
  one: Back,
  first: PlacedBack,
  two: Back,
  second: PlacedBack,
  sizes: HalfSizes,
  from: number,
): RiverGap {
  const sides = [
    sidesSeen(one.region, first.placement, one.over),
    sidesSeen(two.region, second.placement, two.over),
  ] as const;
  const turns = sides.flatMap((seen, nr) =>
    seen.flatMap(({ x0, x1 }) => [x0 - 2, x0, x0 + 2, x1 - 2, x1, x1 + 2].map((x) => (nr === 0 ? x : -x))),
  );
  const grid = Array.from({ length: 201 }, (_, nr) => -sizes.a + (2 * sizes.a * nr) / 200);
  const places = [...turns.filter((x) => Math.abs(x) < sizes.a), ...grid].sort((a, b) => a - b);
  let [narrowest, widest, area] = [Infinity, -Infinity, 0];
  let before: { readonly x: number; readonly gap: number } | undefined;
  for (const x of places) {
    const edge = edgeAt(sizes, x) ?? 0;
    const [high, low] = [bankHeight(sides[0], sizes, from, x), bankHeight(sides[1], sizes, from, -x)];
    // One piece may have a tip of the top to itself.
    const gap = Math.max(0, Math.min(2 * edge, high + low));
    if (isBetween(high, low, edge)) narrowest = Math.min(narrowest, gap);
    widest = Math.max(widest, gap);
    if (before) area += ((before.gap + gap) / 2) * (x - before.x);
    before = { x, gap };
  }
  return { narrowest: narrowest === Infinity ? widest : narrowest, widest, area };
}
