import { parseTemperature } from '@/shared/units/parse-temperature';
import type { UnitSystem } from '@/shared/units/unit-system';
import { type AirTemperature, type EquilibriumMoisture, equilibriumMoisture } from '@/shared/wood/equilibrium-moisture';
import type { Explained } from '@/shared/wood/explained';
import { readHumidity } from '@/shared/wood/read-humidity';

export type RoomRead = {
  /** What wood settles at there; undefined until both fields read. */
  readonly emc?: Explained<EquilibriumMoisture>;
  readonly temperature?: AirTemperature;
  /** What is wrong with a field that is not empty. */
  readonly problems: { readonly temperature?: string; readonly humidity?: string };
};

const TEMPERATURE_PROBLEM = 'This does not read as a temperature of a room. Try 20 °C or 68 °F.';
const HUMIDITY_PROBLEM = 'Relative humidity lies between 0 and 99 %. Type what the hygrometer shows, for example 45.';

/** The air of a room as it is typed, and the moisture content wood settles at in it. `20 °C`, `45` settles at 8.5 %. */
export function readRoom(typed: { temperature: string; humidity: string }, prefer: UnitSystem): RoomRead {
  const degrees = parseTemperature(typed.temperature, { prefer });
  const humidity = readHumidity(typed.humidity);
  const temperature: AirTemperature | undefined = degrees.ok ? { scale: 'C', degrees: degrees.value / 10 } : undefined;
  const emc = temperature && equilibriumMoisture(temperature, humidity ?? 0);
  const cold = typed.temperature.trim() !== '' && !emc?.ok;
  return {
    ...(emc?.ok && humidity !== undefined && { emc: emc.value }),
    ...(emc?.ok && temperature && { temperature }),
    problems: {
      ...(cold && { temperature: TEMPERATURE_PROBLEM }),
      ...(typed.humidity.trim() !== '' && humidity === undefined && { humidity: HUMIDITY_PROBLEM }),
    },
  };
}
