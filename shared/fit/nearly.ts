import { growFrom } from '@/shared/fit/grow-from';
import { marginOf } from '@/shared/fit/holds-shape';
import type { Look, Piece, SearchField } from '@/shared/fit/pieces-to-place';
import type { SmallerTop } from '@/shared/fit/smaller-top';
import { type HalfSizes, stretched } from '@/shared/fit/top-shape';
import type { Region } from '@/shared/outline/effective-region';
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

/** How far along the slab the wood is nearest to a placed top. */
function tightest(regions: readonly Region[], { sizes, found }: SmallerTop): Nanometres {
  const margins = regions.map((region) => ({
    ...marginOf(region, sizes, found.part, found.placement),
    start: Math.min(...region.outline.ring.map(({ x }) => x)),
  }));
  const worst = margins.reduce((least, one) => (one.spare < least.spare ? one : least));
  return nanometres(Math.round(worst.at.x - worst.start) * 1000);
}
