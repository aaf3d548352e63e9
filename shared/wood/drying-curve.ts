import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DryingCase } from '@/shared/wood/drying-belief';
import { quantilesOf } from '@/shared/wood/quantiles-of';

/** The middle of the belief and the ends of its middle 80 % on a day, per cent. */
export type DryingCurvePoint = {
  readonly on: CalendarDate;
  readonly low: number;
  readonly middle: number;
  readonly high: number;
};

/**
 * The forecast as a curve to draw, from the day of the last reading onwards in equal steps of whole days: `steps` of
 * them after the first point. At each day every case of the belief stands at EMC + (now − EMC) e^(−k days).
 */
export function dryingCurve(
  cases: readonly DryingCase[],
  lastReading: CalendarDate,
  days: number,
  steps = 24,
): readonly DryingCurvePoint[] {
  const every = Math.max(1, Math.ceil(days / steps));
  return Array.from({ length: steps + 1 }, (_, step) => {
    const after = step * every;
    const at = cases.map(({ rate, emc, mcNow, weight }) => ({
      value: emc + (mcNow - emc) * Math.exp(-rate * after),
      weight,
    }));
    const [low, middle, high] = quantilesOf(at, [0.1, 0.5, 0.9]);
    return { on: addDays(lastReading, after), low, middle, high };
  });
}
