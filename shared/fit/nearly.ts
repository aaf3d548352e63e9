import { growFrom } from '@/shared/fit/grow-from';
import { marginOf } from '@/shared/fit/holds-shape';
import type { Look, Piece, SearchField } from '@/shared/fit/pieces-to-place';
import type { Placement } from '@/shared/fit/search-places';
import type { SmallerTop } from '@/shared/fit/smaller-top';
import { type HalfSizes, stretched } from '@/shared/fit/top-shape';
import type { Region } from '@/shared/outline/effective-region';
import { placesAlong, woodRunsAt } from '@/shared/outline/wood-runs-at';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';

/** What is missing. Every top named here has been found a place for. */
export type Nearly = {
  /** The full length fits at so much less width; `at` is how far along the slab the wood is tightest there. */
  readonly tooNarrow?: SmallerTop & { readonly by: Nanometres; readonly at: Nanometres };
  /** The full width fits at so much less length. */
  readonly tooShort?: SmallerTop & { readonly by: Nanometres };
  /** The largest of these proportions that does fit. */
  readonly largest: SmallerTop;
};

/**
 * What a top that does not fit lacks, to a whole millimetre: less width at full length, less length at full width, and
 * the largest of the same proportions; undefined when none of the three reaches `from` of the size asked for, which is
 * proved to four times the tolerance. From there each is made larger, a millimetre being the last step, at some twenty
 * angles of the window and closer about the best of them. Every top answered lies in the wood by the containment test;
 * that it is the largest is as good as those angles.
 */
export function nearlyFits(
  field: SearchField,
  sizes: HalfSizes,
  piecesOf: (sizes: HalfSizes) => readonly Piece[],
  { from, look }: { readonly from: number; readonly look: Look },
): Nearly | undefined {
  const grow = (size: number, stretch: (part: number) => HalfSizes) =>
    growFrom(field, size, from, stretch, piecesOf, look);
  const round = sizes.curve === 'power' && sizes.n === 2 && sizes.a === sizes.b;
  const largest = grow(2 * sizes.a, (part) => stretched(sizes, part, part));
  if (!largest) return undefined;
  const narrower = round ? undefined : grow(2 * sizes.b, (part) => stretched(sizes, 1, part));
  const shorter = round ? undefined : grow(2 * sizes.a, (part) => stretched(sizes, part, 1));
  return {
    largest: largest.top,
    ...(narrower ? { tooNarrow: { ...narrower.top, by: narrower.by, at: tightest(field.regions, narrower.top) } } : {}),
    ...(shorter ? { tooShort: { ...shorter.top, by: shorter.by } } : {}),
  };
}

/**
 * How far along the slab the wood is nearest to a placed top; where that is one of its ends, which it may well touch, where
 * the wood beside it is narrowest.
 */
function tightest(regions: readonly Region[], { sizes, found }: SmallerTop): Nanometres {
  const margins = regions.map((region) => ({
    ...marginOf(region, sizes, found.part, found.placement),
    region,
    start: Math.min(...region.outline.ring.map(({ x }) => x)),
  }));
  const worst = margins.reduce((least, one) => (one.spare < least.spare ? one : least));
  const { x, angle } = found.placement;
  const reach = sizes.a * Math.cos(angle);
  const isAtEnd = Math.min(Math.abs(worst.at.x - (x - reach)), Math.abs(worst.at.x - (x + reach))) < NEAR_END;
  const place = isAtEnd ? narrowestAlong(worst.region, found.placement, reach) : worst.at.x;
  return nanometres(Math.round(place - worst.start) * 1000);
}

const NEAR_END = 1000;

/** Where the run of wood that a placed top lies on is narrowest, between its ends. */
function narrowestAlong({ outline }: Region, { x, y, angle }: Placement, reach: number): number {
  const [from, to] = [x - reach + NEAR_END, x + reach - NEAR_END];
  const places = [from, ...placesAlong(outline).filter((place) => place > from && place < to), to];
  const widths = places.map((place) => {
    const middle = y + (place - x) * Math.tan(angle);
    const run = woodRunsAt(outline, place).find((each) => each.from <= middle && each.to >= middle);
    return { place, width: run ? run.to - run.from : Infinity };
  });
  return widths.reduce((least, one) => (one.width < least.width ? one : least)).place;
}
