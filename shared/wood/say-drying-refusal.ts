import type { DryingRefusal } from '@/shared/wood/forecast-drying';

/** Why there is no forecast, and what would give one. `no-readings` → "It was never read." and what one reading would do. */
export function sayDryingRefusal(refusal: DryingRefusal): { readonly says: string; readonly todo: string } {
  switch (refusal.code) {
    case 'no-readings':
      return {
        says: 'Its moisture was never read, so there is nothing to forecast from.',
        todo: 'Read it once for a first, wide date; read it again two weeks later and the date narrows.',
      };
    case 'no-thickness':
      return {
        says: 'Its thickness is not known, so its pace can only come from readings.',
        todo: `Measure its thickness, or read it on ${refusal.wanted === 1 ? 'one more day' : `${refusal.wanted} more days`}, a week or two apart.`,
      };
    case 'room-too-damp':
      return {
        says: `Where it stands wood settles at ${refusal.emc.toFixed(1)} %, so it will not come down to ${refusal.target} %.`,
        todo: 'Move it to a drier room or dry the air, then read it again.',
      };
    case 'target-out-of-range':
      return {
        says: `A target lies between ${refusal.leastTenths / 10} and ${refusal.mostTenths / 10} %.`,
        todo: 'Set a target in that range; indoor furniture is commonly 6 to 10 %.',
      };
  }
}
