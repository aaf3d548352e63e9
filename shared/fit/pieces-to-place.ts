import { type ShapePart, WHOLE } from '@/shared/fit/drawn-shape';
import { holdsShape } from '@/shared/fit/holds-shape';
import { type Obstacles, obstaclesOf } from '@/shared/fit/obstacles';
import { type Placement, searchPlaces } from '@/shared/fit/search-places';
import { type SearchedShape, upperPart, wholeShape } from '@/shared/fit/searched-shape';
import type { HalfSizes } from '@/shared/fit/top-shape';
import { TurnedField } from '@/shared/fit/turned-field';
import type { Region } from '@/shared/outline/effective-region';

/** A part of the top as one slab would give it. */
export type Piece = { readonly part: ShapePart; readonly shape: SearchedShape };

/** A place that the search found and the containment test agreed to. */
export type FoundPlace = { readonly part: ShapePart; readonly placement: Placement };

export type Look = { readonly window: number; readonly tolerance: number };

/** The whole top. */
export function wholePiece(sizes: HalfSizes, clearance: number): readonly Piece[] {
  return [{ part: WHOLE, shape: wholeShape(sizes, clearance) }];
}

/** Half the top, its joint to the right of the line or to the left of it. */
export function halfPieces(sizes: HalfSizes, clearance: number): readonly Piece[] {
  return [false, true].map((over) => ({
    part: { part: 'above', from: 0, over },
    shape: upperPart(sizes, 0, clearance, over),
  }));
}

/** The wood to search: what may not be crossed, the regions to judge by, and room to work in, used again and again. */
export type SearchField = {
  readonly obstacles: Obstacles;
  readonly regions: readonly Region[];
  readonly turned: TurnedField;
};

/** The field of regions that a piece must lie in all at once. */
export function searchField(regions: readonly Region[]): SearchField {
  const obstacles = obstaclesOf(regions);
  return { obstacles, regions, turned: new TurnedField(obstacles) };
}

/** Whether every region holds the piece there. */
export function allHold(regions: readonly Region[], sizes: HalfSizes, { part, placement }: FoundPlace): boolean {
  return regions.every((region) => holdsShape(region, sizes, part, placement));
}

/**
 * The first of the pieces that can lie in all the regions, and where; else the proof that none can. `doubted` counts
 * places that the search gave and the containment test refused, which are never answered as places.
 */
export function findPlace(
  field: SearchField,
  sizes: HalfSizes,
  pieces: readonly Piece[],
  look: Look,
): { readonly found?: FoundPlace; readonly stretches: number; readonly doubted: number } {
  let [stretches, doubted] = [0, 0];
  for (const piece of pieces) {
    const answer = searchPlaces(field.turned, piece.shape, look);
    stretches += answer.stretches;
    if (!answer.fits) continue;
    const found = { part: piece.part, placement: answer.placement };
    if (allHold(field.regions, sizes, found)) return { found, stretches, doubted };
    doubted += 1;
  }
  return { stretches, doubted };
}
