import { err, ok, type Result } from '@/shared/result/result';
import { type AirTemperature, type EmcError, equilibriumMoisture } from '@/shared/wood/equilibrium-moisture';
import { type Explained, explained } from '@/shared/wood/explained';

export type HumidityError =
  | EmcError
  /** Between 0 and the moisture at 99.9 % humidity. */
  | { readonly code: 'moisture-out-of-range'; readonly most: number };

const MOST_HUMIDITY = 99.9;
/** Halvings; 40 narrow 100 % of humidity to less than a billionth of a point. */
const HALVINGS = 40;

/**
 * The relative humidity, per cent, a room must hold for wood to settle at `mc`: Equation 4-5 turned round by halving,
 * which is exact because EMC rises with humidity everywhere. `moisture-out-of-range` below 0 or above what 99.9 % gives.
 * 8 % at 70 °F takes about 42 %.
 */
export function humidityForMoisture(temperature: AirTemperature, mc: number): Result<Explained<number>, HumidityError> {
  const highest = equilibriumMoisture(temperature, MOST_HUMIDITY);
  if (!highest.ok) return highest;
  const most = highest.value.value.mc;
  if (!(mc >= 0 && mc <= most)) return err({ code: 'moisture-out-of-range', most });
  let low = 0;
  let high = MOST_HUMIDITY;
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    const here = equilibriumMoisture(temperature, middle);
    if (!here.ok) return here;
    if (here.value.value.mc < mc) low = middle;
    else high = middle;
  }
  return ok(
    explained((low + high) / 2, 'emc-inverse', { [`temperature°${temperature.scale}`]: temperature.degrees, mc }),
  );
}
