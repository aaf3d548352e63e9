import { type Explained, explained } from '@/shared/wood/explained';
import { type Lift, recommendedWeight } from '@/shared/wood/recommended-weight';

export type LiftingCaution = {
  /** `lift`: within the limit. `help`: above it. `machine`: three times above it, or no hand lift at all. */
  readonly word: 'lift' | 'help' | 'machine';
  readonly kgEach: number;
  readonly limitKg: number;
  /** Load each over the limit; `null` when the limit is nothing. */
  readonly index: number | null;
  /** More than one person: the equation does not cover it, people do not share a load evenly. */
  readonly teamLift: boolean;
};

/** A slab taken from knee height to a bench by its edge: arms out, poor grip. Common practice. */
export const SLAB_LIFT: Lift = { reach: 40, height: 50, travel: 40, turn: 0, grip: 'poor' };

/**
 * Whether so many people may lift a piece by hand. The load is shared evenly, which real lifts are not, and the limit is
 * for one healthy person; so `lift` is no promise and anything above calls for help or a machine. The index above 1
 * strains some people, above 3 many. NIOSH 94-110 (1994). Two people with a slab of 60 kg: `help`.
 */
export function liftingCaution(kilograms: number, people: number, lift: Lift = SLAB_LIFT): Explained<LiftingCaution> {
  if (!Number.isInteger(people) || people < 1) throw new RangeError(`Not a number of people: ${people}`);
  if (!(kilograms >= 0)) throw new RangeError(`Not a mass: ${kilograms}`);
  const limit = recommendedWeight(lift);
  const kgEach = kilograms / people;
  const index = limit.value > 0 ? kgEach / limit.value : null;
  const word = index === null || index > 3 ? 'machine' : index > 1 ? 'help' : 'lift';
  return explained({ word, kgEach, limitKg: limit.value, index, teamLift: people > 1 }, 'lifting-index', {
    ...limit.how.inputs,
    kilograms,
    people,
    limitKg: limit.value,
  });
}
