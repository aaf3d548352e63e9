import { limitOfLift } from '@/shared/pour/limit-of-lift';
import type { LiftDepth } from '@/shared/pour/resin-sheet';
import { err, ok, type Result } from '@/shared/result/result';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { type Milligrams, milligrams } from '@/shared/units/stock-unit';
import type { TenthsCelsius } from '@/shared/units/tenths-celsius';

export type LiftsError =
  | { readonly code: 'no-depth-limit' | 'too-warm-for-the-sheet' | 'not-above-zero' }
  | { readonly code: 'too-many-lifts'; readonly most: number }
  /** No number of even lifts is at once shallow and deep enough. */
  | { readonly code: 'thinner-than-the-sheet'; readonly least: Nanometres; readonly each: Nanometres };

/** More lifts than anybody pours: a slip of the unit. */
export const MOST_LIFTS = 40;

/** What is weighed for the lift between two heights over the bottom of what is still to be filled. */
type MassBetween = (bottom: Nanometres, top: Nanometres) => Milligrams;

/**
 * The depths of the lifts that fill a void, deepest allowed, even, from the bottom up: the fewest of which each keeps the
 * row that counts for its own mass in this room (`limitOfLift`). Nanometres that do not share out evenly go to the lowest
 * lifts. Where every number of them is too heavy, the most lifts, and so the lightest, that are not thinner than the sheet
 * asks for: what is too heavy in them is a caution. Fails where the sheet has no depth (`no-depth-limit`), none for so
 * warm a room, or where even lifts would be thinner than its least depth, or more than 40. 100 mm with at most 50 mm is two
 * lifts of 50 mm; 101 mm is three of 33.67 mm.
 */
export function planLifts(
  depth: Nanometres,
  depths: readonly LiftDepth[],
  room: TenthsCelsius,
  massOf: MassBetween = () => milligrams(0),
): Result<readonly Nanometres[], LiftsError> {
  if (!(depth > 0)) return err({ code: 'not-above-zero' });
  if (depths.length === 0) return err({ code: 'no-depth-limit' });
  if (!limitOfLift(depths, { room, mass: milligrams(0) })) return err({ code: 'too-warm-for-the-sheet' });
  let lightest: readonly Nanometres[] | undefined;
  let thin: LiftsError | undefined;
  for (let count = 1; count <= MOST_LIFTS; count += 1) {
    const lifts = evenLifts(depth, count);
    const [fit, least] = fits(lifts, depths, room, massOf);
    if (fit === 'allowed') return ok(lifts);
    if (fit === 'too-heavy') lightest = lifts;
    if (fit === 'too-thin') {
      thin ??= { code: 'thinner-than-the-sheet', least, each: nanometres(Math.floor(depth / count)) };
    }
  }
  if (lightest) return ok(lightest);
  return err(thin ?? { code: 'too-many-lifts', most: MOST_LIFTS });
}

/** So many lifts of one depth, to the nanometre. */
export const evenLifts = (depth: Nanometres, count: number): readonly Nanometres[] =>
  Array.from({ length: count }, (_, nr) => nanometres(Math.floor(depth / count) + (nr < depth % count ? 1 : 0)));

type Fit = 'allowed' | 'too-deep' | 'too-thin' | 'too-heavy';

/** How lifts stand to the sheet, by the worst of them, and the least depth the thinnest of them should have. */
function fits(
  lifts: readonly Nanometres[],
  depths: readonly LiftDepth[],
  room: TenthsCelsius,
  massOf: MassBetween,
): [Fit, Nanometres] {
  let bottom = 0;
  let least = nanometres(0);
  const each = lifts.map((lift): Fit => {
    const top = nanometres(bottom + lift);
    const limit = limitOfLift(depths, { room, mass: massOf(nanometres(bottom), top) });
    bottom = top;
    if (!limit || lift > limit.row.most) return 'too-deep';
    if (lift < limit.row.least) {
      least = limit.row.least;
      return 'too-thin';
    }
    return limit.isTooHeavy ? 'too-heavy' : 'allowed';
  });
  const worst = (['too-deep', 'too-thin', 'too-heavy'] as const).find((fit) => each.includes(fit));
  return [worst ?? 'allowed', least];
}
