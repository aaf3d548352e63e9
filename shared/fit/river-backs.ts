import type { FoundPlace, Piece, SearchField } from '@/shared/fit/pieces-to-place';
import { bankBelow, edgeAt, isInWood, type SeenSides, sidesSeen, slideClear } from '@/shared/fit/river-bank';
import type { Placement } from '@/shared/fit/search-places';
import type { HalfSizes } from '@/shared/fit/top-shape';
import type { Region } from '@/shared/outline/effective-region';

/** A back held as far from its live edge as the wood allows, and how far it may slide towards it. */
export type Back = {
  readonly region: Region;
  readonly piece: Piece;
  readonly over: boolean;
  readonly placement: Placement;
  readonly slide: number;
  /** How far it must slide, so that nothing that is kept out lies in its wood. */
  readonly leastSlide: number;
  /** Where it is held across the turned slab, to keep two backs of one slab apart. */
  readonly across: number;
  /** Height of the live edge above the middle line of the top at each of `SAMPLES` places along it, from end to end. */
  readonly bank: Float64Array;
};

export const SAMPLES = 49;
const PLACES_ALONG = 12;

/** The backs of one slab that are worth pairing. */
export function backsOf(
  region: Region,
  { turned }: SearchField,
  sizes: HalfSizes,
  pieces: readonly Piece[],
  found: readonly (FoundPlace | undefined)[],
  { from, window }: { readonly from: number; readonly window: number },
): Back[] {
  const backs: Back[] = [];
  pieces.forEach((piece, nr) => {
    const known = found[nr];
    if (!known) return;
    const over = nr === 1;
    turned.use(piece.shape);
    for (const angle of new Set([0, known.placement.angle, -window / 2, window / 2, -window, window])) {
      if (!turned.turn(angle, 0)) continue;
      const [left, right] = [turned.left, turned.right];
      const own = turned.fromSlab(known.placement.x, known.placement.y).x;
      const grid = Array.from({ length: PLACES_ALONG + 1 }, (_, at) => left + ((right - left) * at) / PLACES_ALONG);
      for (const x of angle === known.placement.angle ? [...grid, own] : grid) {
        if (x < left || x > right) continue;
        for (const run of turned.freeAt(x)) {
          const across = over ? run.from : run.to;
          const placement = { ...turned.onSlab(x, across), angle };
          const leastSlide = slideClear(region, placement, over, sizes, from);
          if (leastSlide > run.to - run.from) continue;
          const sides = sidesSeen(region, placement, over);
          const bank = Float64Array.from({ length: SAMPLES }, (_, at) =>
            bankHeight(sides, sizes, from, -sizes.a + (2 * sizes.a * at) / (SAMPLES - 1)),
          );
          backs.push({ region, piece, over, placement, slide: run.to - run.from, leastSlide, across, bank });
        }
      }
    }
  });
  return backs;
}

/**
 * How high above the middle line of the top the wood of a piece ends, at a place along: where the live edge is, but the
 * edge of the top itself where there is no wood.
 */
export function bankHeight(sides: SeenSides, sizes: HalfSizes, from: number, along: number): number {
  const edge = edgeAt(sizes, Math.max(-sizes.a, Math.min(sizes.a, along))) ?? 0;
  // Looked at from just inside the top, so that its own corner is not taken for a bank.
  const begin = Math.min(0, edge - from) - 1;
  const at = Math.max(-sizes.a + 1, Math.min(sizes.a - 1, along));
  if (!isInWood(sides, at, begin)) return edge;
  return (bankBelow(sides, at, begin) ?? begin) + from;
}
