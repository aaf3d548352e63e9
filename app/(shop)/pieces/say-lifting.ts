import { sayMass } from '@/app/(shop)/pieces/say-mass';
import type { UnitSystem } from '@/shared/units/unit-system';
import type { LiftingCaution } from '@/shared/wood/lifting-caution';

const COUNT = ['Nobody', 'One', 'Two', 'Three', 'Four'];

export type SaidLifting = {
  readonly word: 'use' | 'care' | 'stop';
  readonly says: string;
  readonly todo: string;
};

/** A lifting caution in words. Two people with 60 kg: "Too heavy for two: 30 kg each, and 12 kg is the limit for one." */
export function sayLifting(
  { word, kgEach, limitKg, teamLift }: LiftingCaution,
  people: number,
  prefer: UnitSystem,
): SaidLifting {
  const who = COUNT[people] ?? String(people);
  const each = `${sayMass(kgEach, prefer)}${people > 1 ? ' each' : ''}`;
  const limit = `${sayMass(limitKg, prefer)} is the limit for one`;
  const uneven = teamLift ? ' People never share a load evenly.' : '';
  switch (word) {
    case 'lift':
      return {
        word: 'use',
        says: `${who} can lift it: ${each}, and ${limit}.`,
        todo: `Clear the way first, keep it close, and gloves on: a slab’s edge is a poor grip.${uneven}`,
      };
    case 'help':
      return {
        word: 'care',
        says: `Too heavy for ${who.toLowerCase()}: ${each}, and ${limit}.`,
        todo: `Take more people, tip it from end to end, or use a cart.${uneven}`,
      };
    case 'machine':
      return {
        word: 'stop',
        says: `Not by hand: ${each} with ${who.toLowerCase()}, more than three times the ${sayMass(limitKg, prefer)} that is the limit for one.`,
        todo: 'Use a hoist, a lift table or a cart, and keep feet and hands from under it.',
      };
  }
}
