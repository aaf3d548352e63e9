import { type FiguredPiece, newestReadings } from '@/app/(shop)/pieces/figured-piece';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { daysBetween } from '@/shared/calendar/days-between';
import type { Result } from '@/shared/result/result';
import { type DryingCurvePoint, dryingCurve } from '@/shared/wood/drying-curve';
import { type DryingPoint, dryingSeries } from '@/shared/wood/drying-series';
import type { Explained } from '@/shared/wood/explained';
import { type DryingForecast, type DryingRefusal, forecastDrying } from '@/shared/wood/forecast-drying';
import { isSteady, type Steadiness } from '@/shared/wood/is-steady';
import { oneMoreReading, type ReadingGain } from '@/shared/wood/one-more-reading';
import type { ReadingSummary } from '@/shared/wood/summarise-readings';

export type DryingAsked = {
  readonly targetTenths: number;
  /** What the room settles wood at; undefined while the room is not given. */
  readonly emc: number | undefined;
  readonly speciesId: string | null;
  readonly today: CalendarDate;
};

export type PieceDrying = {
  readonly series: readonly DryingPoint[];
  readonly summary: ReadingSummary | null;
  readonly steadiness: Steadiness | null;
  /** Undefined while the room is not given, though there is something to forecast from. */
  readonly forecast?: Result<Explained<DryingForecast>, DryingRefusal>;
  readonly curve: readonly DryingCurvePoint[];
  readonly gain?: ReadingGain;
  /** The days to draw. */
  readonly from: CalendarDate;
  readonly to: CalendarDate;
};

/** One more reading is looked at two weeks on, or today where the last one is older. */
const NEXT_READING_DAYS = 14;
/** A drawing shows the forecast to its latest date and no further than this past the last reading. */
const MOST_DRAWN_DAYS = 900;
/** Without a forecast, or for one single day, so much is drawn on either side. */
const ROOM_DAYS = 7;

/** Everything the readings of a piece say of its drying: summary, rest, forecast, curve, and what one more would do. */
export function workOutDrying(piece: FiguredPiece, asked: DryingAsked): PieceDrying {
  const series = dryingSeries(piece.readings);
  const [first] = series;
  const last = series.at(-1);
  const summary = newestReadings(piece);
  const { today, targetTenths, emc } = asked;
  if (!first || !last) {
    const refused = { ok: false, error: { code: 'no-readings', wanted: 1 } } as const;
    return { series, summary, steadiness: null, forecast: refused, curve: [], from: today, to: today };
  }
  const known = { series, summary, steadiness: isSteady(series), from: addDays(first.on, -ROOM_DAYS) };
  const drawnTo = (days: number) => addDays(last.on, Math.max(days, daysBetween(last.on, today)) + ROOM_DAYS);
  if (emc === undefined) return { ...known, curve: [], to: drawnTo(0) };
  const thickness = piece.size.thickness > 0 ? piece.size.thickness : null;
  const wanted = { points: series, targetTenths, emc, speciesId: asked.speciesId, thickness };
  const forecast = forecastDrying(wanted);
  if (!forecast.ok) return { ...known, forecast, curve: [], to: drawnTo(0) };
  const { days, cases, reached } = forecast.value.value;
  const drawn = Math.max(2 * ROOM_DAYS, Math.min(days.latest ?? (days.likely ?? 0) * 2, MOST_DRAWN_DAYS));
  const to = drawnTo(drawn);
  const gain = reached ? undefined : oneMoreReading(wanted, Math.max(NEXT_READING_DAYS, daysBetween(last.on, today)));
  return {
    ...known,
    forecast,
    curve: dryingCurve(cases, last.on, daysBetween(last.on, to)),
    ...(gain?.ok && { gain: gain.value }),
    to,
  };
}
