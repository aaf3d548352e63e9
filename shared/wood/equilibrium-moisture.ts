import { err, ok, type Result } from '@/shared/result/result';
import { type Explained, explained } from '@/shared/wood/explained';

export type AirTemperature = { readonly scale: 'C' | 'F'; readonly degrees: number };

/** `beyondTable`: the handbook's own table ends at 30 °F (−1.1 °C) and 210 °F (98.9 °C); the equation is stretched. */
export type EquilibriumMoisture = { readonly mc: number; readonly beyondTable: boolean };

export type EmcError =
  | { readonly code: 'humidity-out-of-range'; readonly least: 0; readonly below: 100 }
  | { readonly code: 'temperature-out-of-range'; readonly leastC: number; readonly mostC: number };

const COLDEST_C = -30;
const HOTTEST_C = 100;
const TABLE_C = { from: (30 - 32) / 1.8, to: (210 - 32) / 1.8 };

type Quadratic = readonly [number, number, number];
const at = ([a, b, c]: Quadratic, t: number) => a + b * t + c * t * t;

/** Both sets as the handbook prints them; they differ by less than 0.02 point, from rounding the constants. */
const CONSTANTS: Record<AirTemperature['scale'], { w: Quadratic; k: Quadratic; k1: Quadratic; k2: Quadratic }> = {
  F: {
    w: [330, 0.452, 0.00415],
    k: [0.791, 0.000463, -0.000000844],
    k1: [6.34, 0.000775, -0.0000935],
    k2: [1.09, 0.0284, -0.0000904],
  },
  C: {
    w: [349, 1.29, 0.0135],
    k: [0.805, 0.000736, -0.00000273],
    k1: [6.27, -0.00938, -0.000303],
    k2: [1.91, 0.0407, -0.000293],
  },
};

/**
 * The moisture content, per cent of dry weight, that wood of any species settles at in still air of this temperature and
 * relative humidity. Humidity from 0 up to but not including 100 % (at 100 % wood goes to fibre saturation, about 30 %,
 * which the equation does not give), else `humidity-out-of-range`. Temperature −30 to 100 °C, else
 * `temperature-out-of-range`; outside 30 to 210 °F `beyondTable` is true. Wood that is drying settles a little higher than
 * wood that is wetting; the equation is the mean. Wood Handbook FPL-GTR-190 (2010), Equation 4-5, p. 4-3.
 * 70 °F at 50 % is 9.2 %.
 */
export function equilibriumMoisture(
  temperature: AirTemperature,
  humidity: number,
): Result<Explained<EquilibriumMoisture>, EmcError> {
  if (!(humidity >= 0 && humidity < 100)) return err({ code: 'humidity-out-of-range', least: 0, below: 100 });
  const { scale, degrees } = temperature;
  const celsius = scale === 'C' ? degrees : (degrees - 32) / 1.8;
  if (!(celsius >= COLDEST_C && celsius <= HOTTEST_C)) {
    return err({ code: 'temperature-out-of-range', leastC: COLDEST_C, mostC: HOTTEST_C });
  }
  const { w, k, k1, k2 } = CONSTANTS[scale];
  const x = at(k, degrees) * (humidity / 100);
  const one = at(k1, degrees) * x;
  const two = at(k1, degrees) * at(k2, degrees) * x * x;
  const mc = (1800 / at(w, degrees)) * (x / (1 - x) + (one + 2 * two) / (1 + one + two));
  const beyondTable = celsius < TABLE_C.from - 1e-9 || celsius > TABLE_C.to + 1e-9;
  return ok(explained({ mc, beyondTable }, 'emc', { [`temperature°${scale}`]: degrees, humidityPercent: humidity }));
}
