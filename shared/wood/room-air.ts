import { addDays } from '@/shared/calendar/add-days';
import { type CalendarDate, partsOf } from '@/shared/calendar/calendar-date';

/** Air: tenths of a degree Celsius, and relative humidity in tenths of a per cent. */
export type Air = { readonly tenthsC: number; readonly humidityTenths: number };

/** The air of one day. */
export type AirDay = Air & { readonly on: CalendarDate };

/** The air a room usually has from a month on, until the next season begins. */
export type AirSeason = Air & { readonly name: string; readonly fromMonth: number };

/** The air that is reckoned with, and what it rests on. */
export type UsualAir = Air &
  (
    | { readonly basis: 'log'; readonly days: number; readonly from: CalendarDate; readonly to: CalendarDate }
    | { readonly basis: 'season'; readonly name: string }
  );

/** Nobody keeps wood in warmer air outside a kiln, tenths of °C; the log takes no more. Common practice. */
export const WARMEST_TENTHS = 800;

/** The log of so many days says what the coming weeks are like. Common practice. */
const LOG_DAYS = 28;

const mean = (figures: readonly number[]) => Math.round(figures.reduce((sum, each) => sum + each, 0) / figures.length);

/** What was read on one day becomes its mean, oldest day first. Two lines of one day at 40 and 50 % are one day at 45 %. */
export function airDays(lines: readonly AirDay[]): readonly AirDay[] {
  const byDay = new Map<CalendarDate, AirDay[]>();
  for (const line of lines) byDay.set(line.on, [...(byDay.get(line.on) ?? []), line]);
  return [...byDay]
    .map(([on, all]) => ({
      on,
      tenthsC: mean(all.map(({ tenthsC }) => tenthsC)),
      humidityTenths: mean(all.map(({ humidityTenths }) => humidityTenths)),
    }))
    .sort((a, b) => (a.on < b.on ? -1 : 1));
}

/** The season of a day: the one that began last, over the turn of the year too; undefined where there is none. */
export function seasonOn<S extends AirSeason>(seasons: readonly S[], on: CalendarDate): S | undefined {
  const { month } = partsOf(on);
  const inOrder = [...seasons].sort((a, b) => a.fromMonth - b.fromMonth);
  return inOrder.filter(({ fromMonth }) => fromMonth <= month).at(-1) ?? inOrder.at(-1);
}

/**
 * The air to reckon with today: the mean of the days logged in the last four weeks, else the season of today, else
 * nothing. Temperature and humidity are each averaged; what wood settles at bends so little between the two that the order
 * makes no odds. A log of 40, 44 and 48 % this month is 44 %, whatever its seasons say.
 */
export function usualAir(
  { days, seasons }: { readonly days: readonly AirDay[]; readonly seasons: readonly AirSeason[] },
  today: CalendarDate,
): UsualAir | undefined {
  const recent = days.filter(({ on }) => on > addDays(today, -LOG_DAYS) && on <= today);
  const [first] = recent;
  const last = recent.at(-1);
  if (first && last) {
    return {
      basis: 'log',
      days: recent.length,
      from: first.on,
      to: last.on,
      tenthsC: mean(recent.map(({ tenthsC }) => tenthsC)),
      humidityTenths: mean(recent.map(({ humidityTenths }) => humidityTenths)),
    };
  }
  const season = seasonOn(seasons, today);
  return (
    season && { basis: 'season', name: season.name, tenthsC: season.tenthsC, humidityTenths: season.humidityTenths }
  );
}
