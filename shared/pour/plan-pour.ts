import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { daysBetween } from '@/shared/calendar/days-between';
import { cautionsOfLift, type LiftCaution } from '@/shared/pour/cautions-of-lift';
import { type MassRatio, massRatio, type RatioError } from '@/shared/pour/check-ratio';
import { liftBatches } from '@/shared/pour/lift-batches';
import { type MixedDensity, mixedDensity } from '@/shared/pour/mixed-density';
import { isOfASeal } from '@/shared/pour/of-a-seal';
import { evenLifts, type LiftsError, MOST_LIFTS, planLifts } from '@/shared/pour/plan-lifts';
import { type PotLifeHere, potLifeAt } from '@/shared/pour/pot-life-at';
import { type PourNeed, type PourNeedError, pourNeed } from '@/shared/pour/pour-need';
import type { ResinSheet } from '@/shared/pour/resin-sheet';
import { daysToPourAgain, type PourDays, type PourDaysError, schedulePour } from '@/shared/pour/schedule-pour';
import type { BatchesError } from '@/shared/pour/split-batches';
import { type MeasuredVoid, measureVoid, type PourVoid, type VoidError } from '@/shared/pour/void-volume';
import type { WeighedOut } from '@/shared/pour/weigh-out';
import { err, ok, type Result } from '@/shared/result/result';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { type Microlitres, type Milligrams, microlitres, milligrams } from '@/shared/units/stock-unit';
import type { TenthsCelsius } from '@/shared/units/tenths-celsius';

export type PourAsk = {
  readonly sheet: ResinSheet;
  readonly space: PourVoid;
  /** Bare wood sealed first, square millimetres; 0 for no seal coat. */
  readonly sealArea: number;
  readonly sealPerSquareMetre: Microlitres;
  readonly leakagePercent: number;
  readonly lossPerBatch: Microlitres;
  readonly room: TenthsCelsius;
  /** What the bucket takes with room to stir. */
  readonly bucket: Milligrams;
  readonly minutesPerKilogram: number;
  readonly step: Milligrams;
  /** Lifts there are to be, where it is not left to the sheet. */
  readonly lifts?: number | undefined;
  readonly first: CalendarDate;
  /**
   * What has been begun already: its lifts from the bottom up stay as they are, and so does the seal coat. `last` is the
   * day its last was poured on, or can be at the earliest; `ready` the day on which, by the hour, the sheet's window opens.
   */
  readonly poured?:
    | {
        readonly lifts: number;
        readonly depth: Nanometres;
        readonly last: CalendarDate;
        readonly ready?: CalendarDate | undefined;
      }
    | undefined;
};

export type PlannedLift = {
  /** 0 is the seal coat. */
  readonly nr: number;
  readonly on: CalendarDate;
  readonly joins: 'seal' | 'first' | 'while-tacky' | 'sand-first';
  /** Of the seal coat 0. */
  readonly depth: Nanometres;
  /** What it fills, what leaks away, and what stays in its cups. */
  readonly fills: Microlitres;
  readonly leaks: Microlitres;
  readonly cups: Microlitres;
  readonly mass: Milligrams;
  readonly batches: readonly WeighedOut[];
  /** Of its largest batch; undefined where the sheet does not say. */
  readonly potLife?: PotLifeHere;
  readonly cautions: readonly LiftCaution['code'][];
};

export type PourPlan = {
  readonly ratio: MassRatio;
  readonly density: MixedDensity;
  readonly depth: Nanometres;
  readonly need: PourNeed;
  readonly lifts: readonly PlannedLift[];
  readonly days: Pick<PourDays, 'lastLift' | 'demould' | 'fullCure'>;
  readonly totalA: Milligrams;
  readonly totalB: Milligrams;
};

export type PourPlanError =
  | RatioError
  | VoidError
  | PourNeedError
  | LiftsError
  | BatchesError
  | PourDaysError
  | { readonly code: 'no-mixed-density' }
  | { readonly code: 'nothing-left-to-pour' };

/**
 * Lays a whole pour out: what it takes, in how many lifts of which depth on which days, and for each the batches that fit
 * the bucket and the pot life, in grams of A and B on the scale's step. The fewest even lifts the sheet allows, by depth
 * and by mass, unless a number of lifts is asked for; then what goes beyond the sheet is a caution. Every lift has its
 * share of leakage by what it fills. Volumes of all lifts add up to the void, masses of all batches to what is weighed.
 * A pour that was begun goes on no sooner than its last lift can be poured on. `isClosed` says which days the shop is shut.
 */
export function planPour(ask: PourAsk, isClosed: (day: CalendarDate) => boolean): Result<PourPlan, PourPlanError> {
  const { sheet, room, poured } = ask;
  const ratio = massRatio(sheet);
  if (!ratio.ok) return ratio;
  const { parts } = ratio.value;
  const density = mixedDensity(sheet, parts);
  if (!density) return err({ code: 'no-mixed-density' });
  const measured = measureVoid(ask.space);
  if (!measured.ok) return measured;
  const space = measured.value;
  const floor = poured?.depth ?? 0;
  if (floor >= space.depth) return err({ code: 'nothing-left-to-pour' });

  const massOf = (volume: number) => milligrams(Math.ceil((volume * density.gramsPerLitre) / 1000));
  const leaksOf = (fills: number) => Math.ceil((fills * ask.leakagePercent) / 100);
  const lossPerBatch = massOf(ask.lossPerBatch);
  const batchesOf = (volume: number) =>
    liftBatches({ ...ask, mass: massOf(volume), loss: lossPerBatch, parts, potLives: sheet.potLives });
  /** With what stays in its buckets, as it is weighed; a lift that fits no bucket is refused further down. */
  const weighedFor = (fills: number) => {
    const batches = batchesOf(fills + leaksOf(fills));
    return batches.ok ? massIn(batches.value) : massOf(fills + leaksOf(fills));
  };
  const depths = depthsOf(ask, space, nanometres(floor), weighedFor);
  if (!depths.ok) return depths;
  const isSealed = ask.sealArea > 0 && !poured;
  const first = pourNeed({
    form: space.holds,
    displaced: space.wood,
    sealArea: isSealed ? ask.sealArea : 0,
    sealPerSquareMetre: ask.sealPerSquareMetre,
    leakagePercent: ask.leakagePercent,
    lossPerBatch: ask.lossPerBatch,
    batches: 1,
  });
  if (!first.ok) return first;
  const days = schedulePour(depths.value.length + (isSealed ? 1 : 0), firstDay(ask), sheet, isClosed);
  if (!days.ok) return days;

  const lifts: PlannedLift[] = [];
  const add = (lift: Pick<PlannedLift, 'nr' | 'depth' | 'fills' | 'leaks'>): BatchesError | undefined => {
    const day = days.value.lifts[lifts.length];
    const batches = batchesOf(lift.fills + lift.leaks);
    if (!batches.ok) return batches.error;
    const mass = massIn(batches.value);
    const batch = milligrams(Math.max(...batches.value.map(({ total }) => total)));
    const potLife = potLifeAt(sheet.potLives, { room, mass: batch });
    lifts.push({
      ...lift,
      on: day?.on ?? ask.first,
      joins: lift.nr === 0 ? 'seal' : joinsOf(day, ask),
      cups: microlitres(ask.lossPerBatch * batches.value.length),
      mass,
      batches: batches.value,
      ...(potLife && { potLife }),
      cautions: cautionsOfLift(sheet, { depth: lift.depth, mass, room, batch })
        .map(({ code }) => code)
        .filter((code) => lift.nr > 0 || isOfASeal(code)),
    });
    return undefined;
  };
  if (isSealed) {
    const wrong = add({ nr: 0, depth: nanometres(0), fills: first.value.seal, leaks: microlitres(0) });
    if (wrong) return err(wrong);
  }
  let bottom = floor;
  for (const [row, depth] of depths.value.entries()) {
    const fills = microlitres(space.below(nanometres(bottom + depth)) - space.below(nanometres(bottom)));
    const wrong = add({ nr: (poured?.lifts ?? 0) + row + 1, depth, fills, leaks: microlitres(leaksOf(fills)) });
    if (wrong) return err(wrong);
    bottom += depth;
  }
  const sum = (of: (lift: PlannedLift) => number) => lifts.reduce((all, lift) => all + of(lift), 0);
  const [leakage, cups] = [microlitres(sum(({ leaks }) => leaks)), microlitres(sum((lift) => lift.cups))];
  const toFill = microlitres(sum(({ nr, fills }) => (nr === 0 ? 0 : fills)));
  const total = microlitres(toFill + first.value.seal + leakage + cups);
  return ok({
    ratio: ratio.value,
    density,
    depth: space.depth,
    need: { void: toFill, seal: first.value.seal, leakage, cups, total },
    lifts,
    days: {
      lastLift: days.value.lastLift,
      ...(days.value.demould && { demould: days.value.demould }),
      ...(days.value.fullCure && { fullCure: days.value.fullCure }),
    },
    totalA: milligrams(sum(({ batches }) => batches.reduce((all, { a }) => all + a, 0))),
    totalB: milligrams(sum(({ batches }) => batches.reduce((all, { b }) => all + b, 0))),
  });
}

const massIn = (batches: readonly WeighedOut[]): Milligrams =>
  milligrams(batches.reduce((sum, { total }) => sum + total, 0));

function depthsOf(
  { sheet, room, lifts }: PourAsk,
  space: MeasuredVoid,
  floor: Nanometres,
  massOf: (fills: number) => Milligrams,
): Result<readonly Nanometres[], PourPlanError> {
  const depth = nanometres(space.depth - floor);
  if (lifts !== undefined) {
    return Number.isInteger(lifts) && lifts >= 1 && lifts <= MOST_LIFTS
      ? ok(evenLifts(depth, lifts))
      : err({ code: 'too-many-lifts', most: MOST_LIFTS });
  }
  const below = (height: Nanometres) => space.below(nanometres(floor + height));
  return planLifts(depth, sheet.depths, room, (bottom, top) => massOf(below(top) - below(bottom)));
}

/** The first day: as asked for, but not before what was begun can be poured on. */
function firstDay({ first, poured, sheet }: PourAsk): CalendarDate {
  if (!poured) return first;
  const days = [first, addDays(poured.last, daysToPourAgain(sheet)), poured.ready ?? first].sort();
  return days.at(-1) ?? first;
}

function joinsOf(day: PourDays['lifts'][number] | undefined, { poured, sheet }: PourAsk): PlannedLift['joins'] {
  if (!day) return 'first';
  if (day.joins !== 'first' || !poured) return day.joins;
  const hours = daysBetween(poured.last, day.on) * 24;
  return sheet.againToHours !== undefined && hours <= sheet.againToHours ? 'while-tacky' : 'sand-first';
}
