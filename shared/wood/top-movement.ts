import { err, ok, type Result } from '@/shared/result/result';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import type { Cut, CutStretch } from '@/shared/wood/cut-share';
import { type Explained, explained } from '@/shared/wood/explained';
import type { Species } from '@/shared/wood/species';
import { type WidthChangeError, widthChange } from '@/shared/wood/width-change';

export type TopAsked = {
  readonly species: Species;
  /** Across the grain, as it measures on the day it is fixed. */
  readonly width: Nanometres;
  readonly cut: Cut | readonly CutStretch[];
  /** The wood’s own moisture content on the day it is fixed. */
  readonly fixedMc: number;
  /** The EMC of the driest and of the dampest season where it will live. */
  readonly driestMc: number;
  readonly dampestMc: number;
  /** Distance from the fixed line to the screw farthest from it; half the width when left out (fixed at the middle). */
  readonly reach?: Nanometres;
  /** Spare room each way, for a screw that is not centred. 1 mm unless told; common practice. */
  readonly clearance?: Nanometres;
};

export type TopMovement = {
  /** From the fixed width: zero or below, and zero or above. */
  readonly shrinks: Explained<Nanometres>;
  readonly grows: Explained<Nanometres>;
  /** Between the two seasons, whatever the day it was fixed. */
  readonly betweenSeasons: Nanometres;
  /** What a slot must leave on the side towards the fixed line and on the side away from it, beyond the screw itself. */
  readonly slot: { readonly inward: Explained<Nanometres>; readonly outward: Explained<Nanometres> };
  /** What no fixing cures: said beside the numbers. */
  readonly notes: readonly TopNote[];
};

export type TopNote =
  | 'fix-one-line-only'
  | 'breadboard-centre-glued-ends-slotted'
  | 'batten-slotted-never-glued'
  | 'cut-unknown';

export type TopMovementError = WidthChangeError | { readonly code: 'seasons-swapped' };

const CLEARANCE = nanometres(1_000_000);

/**
 * How much a solid top moves across its width between a dry and a damp season, and how far a slotted fixing must let it
 * go each side. Movement starts at the wood's own moisture content on the day it is fixed, so a top fixed damp needs its
 * room inward. Each screw's room is the movement over its distance from the fixed line, plus the clearance. Length along
 * the grain is left out: it moves about a fiftieth as much. A breadboard end or batten crosses the grain: glue it at the
 * fixed line only and slot the rest by the same amounts. `seasons-swapped` when the driest is above the dampest.
 * White oak, flat, 300 mm fixed at 12 % and living at 8 to 12 %, shrinks 4.38 mm.
 */
export function topMovement(asked: TopAsked): Result<TopMovement, TopMovementError> {
  const { driestMc, dampestMc, fixedMc } = asked;
  if (driestMc > dampestMc) return err({ code: 'seasons-swapped' });
  const reach = asked.reach ?? nanometres(Math.ceil(asked.width / 2));
  const clearance = asked.clearance ?? CLEARANCE;
  const move = (width: Nanometres, toMc: number) => widthChange({ ...asked, width, fromMc: fixedMc, toMc });
  const results = [
    move(asked.width, Math.min(driestMc, fixedMc)),
    move(asked.width, Math.max(dampestMc, fixedMc)),
    move(reach, Math.min(driestMc, fixedMc)),
    move(reach, Math.max(dampestMc, fixedMc)),
  ] as const;
  const [shrinks, grows, inward, outward] = results;
  if (!shrinks.ok) return shrinks;
  if (!grows.ok) return grows;
  if (!inward.ok) return inward;
  if (!outward.ok) return outward;
  const dry = move(asked.width, driestMc);
  const damp = move(asked.width, dampestMc);
  if (!dry.ok) return dry;
  if (!damp.ok) return damp;
  const room = (change: Explained<Nanometres>) =>
    explained(nanometres(Math.abs(change.value) + clearance), 'slot-each-side', {
      ...change.how.inputs,
      movementMm: Math.abs(change.value) / 1e6,
      clearanceMm: clearance / 1e6,
    });
  const unknown =
    asked.cut === 'unknown' || (typeof asked.cut !== 'string' && asked.cut.some((each) => each.cut === 'unknown'));
  return ok({
    shrinks: shrinks.value,
    grows: grows.value,
    betweenSeasons: nanometres(damp.value.value - dry.value.value),
    slot: { inward: room(inward.value), outward: room(outward.value) },
    notes: [
      'fix-one-line-only',
      'breadboard-centre-glued-ends-slotted',
      'batten-slotted-never-glued',
      ...(unknown ? (['cut-unknown'] as const) : []),
    ],
  });
}
