import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Result } from '@/shared/result/result';
import { dryingCurve } from '@/shared/wood/drying-curve';
import { type DryingAsked, type DryingRefusal, forecastDrying } from '@/shared/wood/forecast-drying';

/** Days between the ends of the middle 80 %; `null` when an end is beyond ten years. */
export type ReadingGain = {
  readonly on: CalendarDate;
  readonly widthNow: number | null;
  readonly widthThen: number | null;
};

const width = (days: { readonly earliest: number | null; readonly latest: number | null }) =>
  days.earliest === null || days.latest === null ? null : days.latest - days.earliest;

/**
 * What one more reading would do: how wide the forecast's interval is now, and how wide it would be after a reading so
 * many days after the last one that shows just what the forecast expects. Refused as the forecast is. Two weeks on, a
 * piece with one reading narrows by about a third.
 */
export function oneMoreReading(asked: DryingAsked, daysAfter = 14): Result<ReadingGain, DryingRefusal> {
  const now = forecastDrying(asked);
  if (!now.ok) return now;
  const last = asked.points.at(-1);
  if (!last) throw new RangeError('A forecast without a reading');
  const expected = dryingCurve(now.value.value.cases, last.on, daysAfter, 1).at(-1)?.middle ?? last.mcTenths / 10;
  const on = addDays(last.on, daysAfter);
  const points = [...asked.points, { on, mcTenths: Math.round(expected * 10) }];
  const then = forecastDrying({ ...asked, points });
  if (!then.ok) return then;
  return { ok: true, value: { on, widthNow: width(now.value.value.days), widthThen: width(then.value.value.days) } };
}
