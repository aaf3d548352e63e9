import { BARE } from '@/app/(shop)/jobs/[id]/pours/typed-plan';
import type { Nanometres } from '@/shared/units/nanometres';
import type { UnitSystem } from '@/shared/units/unit-system';

/** The bare edge of both banks as it is typed: their lengths in millimetres times the depth. 3 m by 40 mm is 0.12 m². */
export function sealOfBanks(banks: readonly [number, number], depth: Nanometres, units: UnitSystem): string {
  const area = (banks[0] + banks[1]) * (depth / 1e6);
  return String(Math.round((area / BARE[units]) * 1000) / 1000);
}
