import { faceAndVolume } from '@/app/(shop)/pieces/face-and-volume';
import type { FiguredPiece } from '@/app/(shop)/pieces/figured-piece';
import { DRY_ENOUGH, weighedAt } from '@/app/(shop)/pieces/work-out-weight';
import { ok } from '@/shared/result/result';
import type { Nanometres } from '@/shared/units/nanometres';
import type { Explained } from '@/shared/wood/explained';
import {
  type Flattened,
  type FlatteningPass,
  flattenCutFirst,
  flattenWhole,
  USUAL_PASSES,
} from '@/shared/wood/flatten-piece';
import { massAtMoisture } from '@/shared/wood/mass-at-moisture';
import type { Species } from '@/shared/wood/species';
import { weighBeforeAndAfter } from '@/shared/wood/weigh-before-and-after';

export type FlatteningAsked = {
  readonly thickness: Nanometres;
  readonly width: Nanometres;
  readonly length: Nanometres;
  readonly cup: Nanometres;
  readonly bow: Nanometres;
  readonly twist: Nanometres;
  /** What planing and sanding take, pass by pass; the usual when left out. */
  readonly passes?: readonly FlatteningPass[];
  readonly cutTo?: { readonly width: Nanometres; readonly length: Nanometres };
};

/** The thickness left when it is flattened whole, and when it is cut to a size first. */
export function workOutFlattening(asked: FlatteningAsked): {
  readonly whole: Explained<Flattened>;
  readonly cutFirst?: Explained<Flattened>;
} {
  const { thickness, width, length, cup, bow, twist, passes = USUAL_PASSES, cutTo } = asked;
  const piece = { thickness, width, length, warp: { cup, bow, twist } };
  return {
    whole: flattenWhole(piece, passes),
    ...(cutTo && { cutFirst: flattenCutFirst(piece, cutTo, passes) }),
  };
}

/**
 * What it weighs before and after it is flattened whole, both dried to 8 %: reckoned as it was last read, as its weight is,
 * and the water taken off. Undefined for a wood that is not settled.
 */
export function weighFlattened(
  piece: FiguredPiece,
  species: Species | null,
  thickness: Nanometres,
  thicknessAfter: Nanometres,
) {
  if (!species || piece.form === 'sheet') return undefined;
  const squareMetres = faceAndVolume(piece).squareMetres.value;
  const mc = weighedAt(piece).mc;
  const weighed = weighBeforeAndAfter({
    species,
    mc,
    squareMetres,
    squareMetresAfter: squareMetres,
    thickness,
    thicknessAfter,
    people: 1,
  });
  if (!weighed.ok) return weighed;
  const dried = ({ kilograms }: { kilograms: Explained<number> }) => ({
    kilograms: massAtMoisture(kilograms.value, mc, DRY_ENOUGH),
  });
  return ok({ before: dried(weighed.value.before), after: dried(weighed.value.after) });
}
