import type { LiftDepth } from '@/shared/pour/resin-sheet';
import type { Milligrams } from '@/shared/units/stock-unit';
import type { TenthsCelsius } from '@/shared/units/tenths-celsius';

/** The row of the depth table that counts for a lift, and whether the lift is heavier than any row for such a room. */
export type LiftLimit = { readonly row: LiftDepth; readonly isTooHeavy: boolean };

/**
 * The row that counts for a lift of a mass in a room: of those that are for a room at least as warm and a lift at least as
 * heavy, the coolest, and of several of that the lightest; one that names no temperature or mass holds for any. Where the
 * lift is heavier than every row for such a room, the one for the heaviest, `isTooHeavy`. Undefined where no row is for so
 * warm a room. Of up to 1 kg 50 mm and up to 5 kg 20 mm, a lift of 1.6 kg goes by the 20 mm.
 */
export function limitOfLift(
  depths: readonly LiftDepth[],
  { room, mass }: { readonly room: TenthsCelsius; readonly mass: Milligrams },
): LiftLimit | undefined {
  const warmEnough = depths
    .filter(({ upTo }) => upTo === undefined || upTo >= room)
    .sort((a, b) => upper(a.upTo) - upper(b.upTo) || upper(a.mostMass) - upper(b.mostMass));
  const row = warmEnough.find(({ mostMass }) => upper(mostMass) >= mass);
  if (row) return { row, isTooHeavy: false };
  const [first, ...others] = warmEnough;
  if (!first) return undefined;
  const heaviest = others.reduce((most, each) => (upper(each.mostMass) > upper(most.mostMass) ? each : most), first);
  return { row: heaviest, isTooHeavy: true };
}

/** Two rows without a limit are equal: infinity less infinity would be no number. */
const upper = (limit: number | undefined) => limit ?? Number.MAX_SAFE_INTEGER;
