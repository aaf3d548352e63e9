import { ok, type Result } from '@/shared/result/result';
import type { Nanometres } from '@/shared/units/nanometres';
import type { Explained } from '@/shared/wood/explained';
import { type LiftingCaution, liftingCaution, SLAB_LIFT } from '@/shared/wood/lifting-caution';
import type { Lift } from '@/shared/wood/recommended-weight';
import type { Species } from '@/shared/wood/species';
import type { DensityOfWoodError } from '@/shared/wood/wood-density';
import { woodMass } from '@/shared/wood/wood-mass';

export type WeighAsked = {
  readonly species: Species;
  readonly mc: number;
  /** Of its outline now, and of what it is cut to; the same when only flattened. */
  readonly squareMetres: number;
  readonly squareMetresAfter: number;
  readonly thickness: Nanometres;
  readonly thicknessAfter: Nanometres;
  readonly people: number;
  readonly lift?: Lift;
};

type Weighed = { readonly kilograms: Explained<number>; readonly caution: Explained<LiftingCaution> };

const NM_PER_METRE = 1e9;

/**
 * What a piece weighs now and after it is cut and flattened, each with the lifting caution for so many people. Area times
 * thickness is its volume, so bark and a waney edge are in it when they are in the outline. Errors as `woodMass`.
 * Black walnut at 12 %, 2 m² of 60 mm flattened to 44 mm: 73.9 kg, then 54.2 kg.
 */
export function weighBeforeAndAfter(
  asked: WeighAsked,
): Result<{ readonly before: Weighed; readonly after: Weighed }, DensityOfWoodError> {
  const weigh = (squareMetres: number, thickness: Nanometres): Result<Weighed, DensityOfWoodError> => {
    const kilograms = woodMass(asked.species, (squareMetres * thickness) / NM_PER_METRE, asked.mc);
    if (!kilograms.ok) return kilograms;
    const caution = liftingCaution(kilograms.value.value, asked.people, asked.lift ?? SLAB_LIFT);
    return ok({ kilograms: kilograms.value, caution });
  };
  const before = weigh(asked.squareMetres, asked.thickness);
  if (!before.ok) return before;
  const after = weigh(asked.squareMetresAfter, asked.thicknessAfter);
  return after.ok ? ok({ before: before.value, after: after.value }) : after;
}
