import type { LiftDepth } from '@/shared/pour/resin-sheet';
import { err, ok, type Result } from '@/shared/result/result';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import type { TenthsCelsius } from '@/shared/units/tenths-celsius';

export type LiftsError =
  | { readonly code: 'no-depth-limit' | 'too-warm-for-the-sheet' | 'not-above-zero' }
  /** No number of even lifts is at once shallow and deep enough. */
  | { readonly code: 'thinner-than-the-sheet'; readonly least: Nanometres; readonly each: Nanometres };

/**
 * The depths of the lifts that fill a void, deepest allowed, even, from the bottom up: the fewest whose depth is at most
 * what the sheet allows at the room's temperature. Nanometres that do not share out evenly go to the lowest lifts. Of
 * several limits the one counts whose temperature is the lowest that is not below the room's, or one that names none.
 * Fails where the sheet gives none (`no-depth-limit`), none for so warm a room, or where even lifts would be thinner than
 * its least depth. 100 mm with at most 50 mm is two lifts of 50 mm; 101 mm is three of 33.67 mm.
 */
export function planLifts(
  depth: Nanometres,
  depths: readonly LiftDepth[],
  room: TenthsCelsius,
): Result<readonly Nanometres[], LiftsError> {
  if (!(depth > 0)) return err({ code: 'not-above-zero' });
  if (depths.length === 0) return err({ code: 'no-depth-limit' });
  const limit = limitAt(depths, room);
  if (!limit) return err({ code: 'too-warm-for-the-sheet' });
  const count = Math.ceil(depth / limit.most);
  const each = Math.floor(depth / count);
  if (each < limit.least) return err({ code: 'thinner-than-the-sheet', least: limit.least, each: nanometres(each) });
  return ok(Array.from({ length: count }, (_, nr) => nanometres(each + (nr < depth % count ? 1 : 0))));
}

/** The limit that counts in a room of this temperature, or undefined where the sheet has none for it. */
export function limitAt(depths: readonly LiftDepth[], room: TenthsCelsius): LiftDepth | undefined {
  return [...depths]
    .sort((a, b) => (a.upTo ?? Infinity) - (b.upTo ?? Infinity))
    .find(({ upTo }) => upTo === undefined || upTo >= room);
}
