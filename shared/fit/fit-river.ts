import { type ReadRequest, regionFor, type SlabToSearch } from '@/shared/fit/fit-request';
import { holdsShape } from '@/shared/fit/holds-shape';
import { pairBanks, type RiverGap } from '@/shared/fit/pair-banks';
import { findPlace, type Piece, searchField } from '@/shared/fit/pieces-to-place';
import { type Back, backsOf } from '@/shared/fit/river-backs';
import { type RiverPiece, type RiverVoid, riverVoid } from '@/shared/fit/river-void';
import { upperPart } from '@/shared/fit/searched-shape';
import { stretched } from '@/shared/fit/top-shape';
import { cutOutline } from '@/shared/outline/cut-outline';
import type { Region } from '@/shared/outline/effective-region';
import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { minorUnits } from '@/shared/units/minor-units';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';

export type RiverRequest = {
  /** The river is nowhere narrower than this. */
  readonly least: Nanometres;
  /** Nor wider than this, where told. */
  readonly most?: Nanometres;
  /** Each piece has at least this depth of wood at its back, along its whole length. Above zero. */
  readonly leastWood: Nanometres;
  /** Lost between two pieces sawn from one slab. */
  readonly kerf: Nanometres;
  /** Of the finished top, for the volume of resin. */
  readonly thickness: Nanometres;
};

export type RiverAnswer =
  | {
      readonly answer: 'yes';
      readonly pieces: readonly [RiverPiece, RiverPiece];
      readonly river: RiverGap;
      readonly resin: number;
    }
  | {
      readonly answer: 'nearly';
      /** `part` is how much of the length and width that is. */
      readonly largest: {
        readonly length: Nanometres;
        readonly width: Nanometres;
        readonly part: number;
        readonly fit: RiverYes;
      };
      readonly because: RiverReason;
    }
  | { readonly answer: 'no'; readonly because: RiverReason };

type RiverYes = Extract<RiverAnswer, { answer: 'yes' }>;

/**
 * Why not: a piece's back fits in slab 0 or 1 nowhere (proved to the tolerance), or backs fit and no pair of banks looked
 * at leaves a river within its limits (`looked` pairs, a search on a grid and no proof).
 */
type RiverReason =
  | { readonly code: 'no-room-for-a-piece'; readonly slab: 0 | 1 }
  | { readonly code: 'banks-do-not-pair'; readonly looked: number };

/**
 * Whether two slabs, or one sawn down its length (`slabs` with one member), make a top of two pieces either side of a
 * river, live edges inward. Each piece is all the wood from the edge of the top in to the first live edge, and nothing that
 * is kept out lies in it; its back, the
 * part of the top within `leastWood` of the outermost line, must lie wholly in sound wood. That decides most noes, and is
 * proved. Then places of the backs are looked at on a grid (five angles, 13 places along, each slid across exactly), and
 * the pair that takes the least resin within the limits is answered, its backs judged by `holdsShape` and its river
 * measured afresh at every turn of both banks. `resin` is the volume in cubic millimetres of what the outlines leave open
 * (`riverVoid`); of a sawn slab whose gaps lie in the top that is less than the river's width says.
 */
export function fitRiver(
  slabs: readonly [SlabToSearch] | readonly [SlabToSearch, SlabToSearch],
  request: ReadRequest,
  river: RiverRequest,
): RiverAnswer {
  const regions = slabs.map((slab) => regionFor(slab, request));
  const whole = attempt(regions, request, river, 1);
  const filled = (fit: RiverYes, part: number): RiverYes => ({
    ...fit,
    resin: riverAsCut(slabs, request, { fit, part }).area * (river.thickness / 1e6),
  });
  if (whole.answer === 'yes') return filled(whole, 1);
  let [low, high] = [request.nearlyFrom, 1];
  let best = attempt(regions, request, river, low);
  if (best.answer !== 'yes') return { answer: 'no', because: whole.because };
  while ((high - low) * request.sizes.a * 2 > NEAR) {
    const middle = (low + high) / 2;
    const next = attempt(regions, request, river, middle);
    if (next.answer === 'yes') [low, best] = [middle, next];
    else high = middle;
  }
  const size = (half: number) => nanometres(Math.floor((2 * half * low) / 1000) * 1_000_000);
  const largest = { length: size(request.sizes.a), width: size(request.sizes.b), part: low, fit: filled(best, low) };
  return { answer: 'nearly', largest, because: whole.because };
}

/**
 * The river that was found by the exact outlines, the ends of both slabs cut off as the request says; `part` is how much of
 * the length and width was found, 1 for the whole.
 */
export function riverAsCut(
  slabs: readonly [SlabToSearch] | readonly [SlabToSearch, SlabToSearch],
  request: ReadRequest,
  { fit, part }: { readonly fit: Pick<RiverYes, 'pieces'>; readonly part: number },
): RiverVoid {
  const [one, two] = slabs;
  const cut = (slab: SlabToSearch) => trimmed(regionFor(slab, request)).outline;
  return riverVoid(two ? [cut(one), cut(two)] : [cut(one)], stretched(request.sizes, part, part), fit.pieces);
}

/** The largest of these proportions is looked for to 20 mm of its length: the grid is not worth more. */
const NEAR = 20_000;

/** Whether the numbers of a river can be: none below zero, wood and thickness above it, the most not under the least. */
export function checkRiver({ least, most, leastWood, kerf, thickness }: RiverRequest): boolean {
  return least >= 0 && (most === undefined || most >= least) && leastWood > 0 && kerf >= 0 && thickness > 0;
}

function attempt(
  regions: readonly Region[],
  request: ReadRequest,
  river: RiverRequest,
  part: number,
): RiverYes | Extract<RiverAnswer, { answer: 'no' }> {
  const sizes = stretched(request.sizes, part, part);
  const leastWood = river.leastWood / 1000;
  const from = Math.max(0, sizes.b - leastWood);
  const backs: Back[][] = [];
  for (const [nr, region] of regions.entries()) {
    const slab = nr === 0 ? 0 : 1;
    const pieces: Piece[] = [false, true].map((over) => ({
      part: { part: 'above', from, over },
      shape: upperPart(sizes, from, region.clearance, over),
    }));
    const field = searchField([region]);
    const look = { window: request.window, tolerance: request.tolerance };
    const found = pieces.map((piece) => findPlace(field, sizes, [piece], look).found);
    // One slab has to give both pieces, one towards each of its edges.
    if (regions.length === 1 ? found.includes(undefined) : found.every((one) => !one)) {
      return { answer: 'no', because: { code: 'no-room-for-a-piece', slab } };
    }
    backs.push(backsOf(trimmed(region), field, sizes, pieces, found, { from, window: request.window }));
  }
  const [upper = [], lower = upper] = backs;
  const pairs = pairBanks(upper, lower, sizes, {
    from,
    least: river.least / 1000,
    most: (river.most ?? Infinity) / 1000,
    apart: regions.length === 1 ? 2 * (sizes.b - from) + river.kerf / 1000 : undefined,
  });
  for (const { pieces, river: gap } of pairs.found) {
    const held = pieces.every(({ part: of, placement }, nr) => {
      const region = regions[Math.min(nr, regions.length - 1)];
      return region !== undefined && holdsShape(region, sizes, of, placement);
    });
    if (!held) continue;
    const [one, two] = pieces;
    const answer: RiverYes = {
      answer: 'yes',
      pieces: [
        { slab: 0, part: one.part, placement: one.placement },
        { slab: regions.length === 1 ? 0 : 1, part: two.part, placement: two.placement },
      ],
      river: gap,
      resin: (gap.area / 1e6) * (river.thickness / 1e6),
    };
    return answer;
  }
  return { answer: 'no', because: { code: 'banks-do-not-pair', looked: pairs.looked } };
}

/** The region with its trimmed ends cut away, so that no bank is looked for in them. */
function trimmed(region: Region): Region {
  const { bottom, top } = boundsOf(region.outline.ring);
  const keep = (outline: Outline, x: number | undefined, side: 'left' | 'right'): Outline => {
    if (x === undefined) return outline;
    const cut = cutOutline(outline, { from: { x, y: bottom - 1 }, to: { x, y: top + 1 } }, minorUnits(0));
    if (!cut.ok) return outline;
    const kept = cut.value.filter((piece) => piece.side === side);
    return kept.reduce(
      (most, piece) => (piece.twiceArea > most.twiceArea ? piece : most),
      kept[0] ?? { outline, twiceArea: 0 },
    ).outline;
  };
  return { ...region, outline: keep(keep(region.outline, region.from, 'right'), region.to, 'left') };
}
