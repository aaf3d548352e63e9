import type { FiguredPiece } from '@/app/(shop)/pieces/figured-piece';
import { type Explained, explained } from '@/shared/wood/explained';
import { threeWidthVolume } from '@/shared/wood/three-width-volume';

/** Face in square metres and volume in cubic metres: by the measured outline, or else by three widths. */
export function faceAndVolume({ measured, size }: Pick<FiguredPiece, 'measured' | 'size'>): {
  readonly squareMetres: Explained<number>;
  readonly cubicMetres: Explained<number>;
} {
  if (!measured) return threeWidthVolume(size);
  const { squareMetres, points } = measured;
  return {
    squareMetres: explained(squareMetres, 'outline-area', { points }),
    cubicMetres: explained((squareMetres * size.thickness) / 1e9, 'plate-volume', {
      squareMetres,
      thicknessMm: size.thickness / 1e6,
    }),
  };
}
