import type { Nanometres } from '@/shared/units/nanometres';
import { type Explained, explained } from '@/shared/wood/explained';

export type ThreeWidths = {
  readonly length: Nanometres;
  readonly start: Nanometres;
  readonly middle: Nanometres;
  readonly end: Nanometres;
  readonly thickness: Nanometres;
};

const NM_PER_METRE = 1e9;

/**
 * Face in square metres and volume in cubic metres of a piece known by its length, three widths and one thickness: two
 * trapezoids, from the start to halfway and from there to the end. Bark and hollows are in it as far as the widths took
 * them in; a face that bulges or wanes between the three is not seen. Geometry. Throws below zero.
 * 2 m long, 400, 500 and 600 mm wide, 50 mm thick: 1 m² and 0.05 m³.
 */
export function threeWidthVolume({ length, start, middle, end, thickness }: ThreeWidths): {
  readonly squareMetres: Explained<number>;
  readonly cubicMetres: Explained<number>;
} {
  if ([length, start, middle, end, thickness].some((each) => each < 0)) throw new RangeError('No piece is below zero');
  const lengthMetres = length / NM_PER_METRE;
  const squareMetres = (lengthMetres * (start / NM_PER_METRE + (2 * middle) / NM_PER_METRE + end / NM_PER_METRE)) / 4;
  return {
    squareMetres: explained(squareMetres, 'three-width-area', {
      lengthMm: length / 1e6,
      startMm: start / 1e6,
      middleMm: middle / 1e6,
      endMm: end / 1e6,
    }),
    cubicMetres: explained((squareMetres * thickness) / NM_PER_METRE, 'plate-volume', {
      squareMetres,
      thicknessMm: thickness / 1e6,
    }),
  };
}
