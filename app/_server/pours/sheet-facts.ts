import type { PotLife, ResinSheet } from '@/shared/pour/resin-sheet';

/** Facts as they may stand in the book: sheets kept before pot lives had rows have one. */
type KeptFacts = ResinSheet & { potLife?: PotLife };

/** What a sheet of the book says, whenever it was kept. */
export function sheetFacts({ potLife, ...facts }: KeptFacts): ResinSheet {
  return potLife ? { ...facts, potLives: [potLife] } : facts;
}
