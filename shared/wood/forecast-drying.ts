import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { err, ok, type Result } from '@/shared/result/result';
import type { Nanometres } from '@/shared/units/nanometres';
import { type DryingCase, dryingBelief } from '@/shared/wood/drying-belief';
import { dryingPrior } from '@/shared/wood/drying-prior';
import type { DryingPoint } from '@/shared/wood/drying-series';
import { type Explained, explained } from '@/shared/wood/explained';
import { quantilesOf } from '@/shared/wood/quantiles-of';

export type DryingAsked = {
  /** One point a day, oldest first, as `dryingSeries` gives them. */
  readonly points: readonly DryingPoint[];
  readonly targetTenths: number;
  /** Where the piece stands: its EMC in per cent, and how unsure it is; 0.7 point unless told. */
  readonly emc: number;
  readonly emcDeviation?: number;
  readonly speciesId: string | null;
  readonly thickness: Nanometres | null;
};

/** Days and dates of the middle belief and of the ends of the middle 80 %. `null` is beyond ten years, or never. */
type DryingDates = {
  readonly earliest: CalendarDate | null;
  readonly likely: CalendarDate | null;
  readonly latest: CalendarDate | null;
};

export type DryingForecast = {
  /** The piece is already at or below the target, by more than half of the belief. */
  readonly reached: boolean;
  readonly dates: DryingDates;
  /** Days from the last reading. */
  readonly days: { readonly earliest: number | null; readonly likely: number | null; readonly latest: number | null };
  /** Share of belief in which the room is too damp for the piece ever to reach the target. */
  readonly neverShare: number;
  readonly ratePerDay: number;
  readonly cases: readonly DryingCase[];
};

export type DryingRefusal =
  /** Nothing was read. One reading gives a first, wide date; a second, two weeks later, narrows it most. */
  | { readonly code: 'no-readings'; readonly wanted: 1 }
  /** Without a thickness the pace can only come from readings: two more days of them are wanted. */
  | { readonly code: 'no-thickness'; readonly wanted: number }
  /** The room itself settles wood at or above the target: no time will do. */
  | { readonly code: 'room-too-damp'; readonly emc: number; readonly target: number }
  | { readonly code: 'target-out-of-range'; readonly leastTenths: number; readonly mostTenths: number };

const EMC_DEVIATION = 0.7;
/** A date further off is no date. */
const FARTHEST_DAYS = 3650;
const LEAST_TARGET = 30;
const MOST_TARGET = 300;
/** Without a thickness: any piece from 1/2 in to 4 in, as unsure as that. Common practice. */
const UNKNOWN_THICKNESS = 38_100_000 as Nanometres;
const UNKNOWN_THICKNESS_DEVIATION = 1;
const POINTS_WITHOUT_THICKNESS = 3;

/**
 * When a piece reaches a moisture content, with the dates between which the truth lies four times out of five. The model
 * is an exponential approach to the room's EMC (see `dryingBelief`); the pace comes from thickness and species
 * (`dryingPrior`) and is sharpened by the piece's own readings. One reading already gives a date, with a wide interval;
 * none gives `no-readings`. It assumes that the room stays as it is: a heated winter or a move starts it anew, and the
 * meter in the wood decides. Days are rounded up to whole days. Errors: `no-readings`, `no-thickness` (then three days
 * of readings are needed), `room-too-damp`, `target-out-of-range` (3 to 30 %).
 * 1 in of black cherry read once at 30 % in a room of 7 % EMC reaches 10 % in about 118 days, 59 to 240.
 */
export function forecastDrying(asked: DryingAsked): Result<Explained<DryingForecast>, DryingRefusal> {
  const { points, targetTenths, emc, speciesId, thickness } = asked;
  const last = points.at(-1);
  if (!last) return err({ code: 'no-readings', wanted: 1 });
  if (!(targetTenths >= LEAST_TARGET && targetTenths <= MOST_TARGET)) {
    return err({ code: 'target-out-of-range', leastTenths: LEAST_TARGET, mostTenths: MOST_TARGET });
  }
  if (thickness === null && points.length < POINTS_WITHOUT_THICKNESS) {
    return err({ code: 'no-thickness', wanted: POINTS_WITHOUT_THICKNESS - points.length });
  }
  const target = targetTenths / 10;
  const prior = dryingPrior(speciesId, thickness ?? UNKNOWN_THICKNESS);
  const deviation = Math.hypot(prior.deviation, thickness === null ? UNKNOWN_THICKNESS_DEVIATION : 0);
  const emcDeviation = asked.emcDeviation ?? EMC_DEVIATION;
  const rates = { meanLnRate: prior.meanLnRate, deviation };
  const cases = dryingBelief(points, rates, { mean: emc, deviation: emcDeviation });
  const waits = cases.map((each) => ({ value: daysToReach(each, target), weight: each.weight }));
  const whole = (wait: number) => (Math.ceil(wait) <= FARTHEST_DAYS ? Math.ceil(wait) : null);
  const ends = quantilesOf(waits, [0.1, 0.5, 0.9]);
  const [earliest, likely, latest] = [whole(ends[0]), whole(ends[1]), whole(ends[2])];
  if (likely !== 0 && emc >= target) return err({ code: 'room-too-damp', emc, target });
  const on = (wait: number | null) => (wait === null ? null : addDays(last.on, wait));
  return ok(
    explained(
      {
        reached: likely === 0,
        dates: { earliest: on(earliest), likely: on(likely), latest: on(latest) },
        days: { earliest, likely, latest },
        neverShare: waits.reduce(
          (sum, { value, weight }) => sum + (value === Number.POSITIVE_INFINITY ? weight : 0),
          0,
        ),
        ratePerDay: quantilesOf(
          cases.map(({ rate, weight }) => ({ value: rate, weight })),
          [0.5],
        )[0],
        cases,
      },
      'drying-forecast',
      {
        readings: points.length,
        lastReadingPercent: last.mcTenths / 10,
        targetPercent: target,
        emc,
        emcDeviation,
        species: speciesId ?? 'unknown',
        thicknessMm: thickness === null ? 'unknown' : thickness / 1e6,
        priorDaysTo20: prior.daysTo20,
        priorSource: prior.source,
        priorDeviation: deviation,
      },
    ),
  );
}

function daysToReach({ rate, emc, mcNow }: DryingCase, target: number): number {
  if (mcNow <= target) return 0;
  return emc >= target ? Number.POSITIVE_INFINITY : Math.log((mcNow - emc) / (target - emc)) / rate;
}
