import { sayTemperatureError } from '@/app/(shop)/places/say-temperature-error';
import { parseTemperature } from '@/shared/units/parse-temperature';
import type { UnitSystem } from '@/shared/units/unit-system';
import { equilibriumMoisture } from '@/shared/wood/equilibrium-moisture';
import { readHumidity } from '@/shared/wood/read-humidity';
import { type Air, WARMEST_TENTHS } from '@/shared/wood/room-air';

export type TypedAir = {
  readonly air?: Air;
  /** What wood settles at in it, per cent. */
  readonly emc?: number;
  readonly problems: { readonly temperature?: string; readonly humidity?: string };
};

const HUMIDITY = 'Relative humidity lies between 0 and 99.9 %. Type what the hygrometer shows, for example 45.';

/** The air of a room as typed, what wood settles at in it, and what is wrong beside each field. */
export function readTypedAir(typed: { temperature: string; humidity: string }, prefer: UnitSystem): TypedAir {
  const degrees = parseTemperature(typed.temperature, { prefer });
  const humidity = readHumidity(typed.humidity);
  const noHumidity = humidity === undefined ? { humidity: HUMIDITY } : {};
  if (!degrees.ok) return { problems: { temperature: sayTemperatureError(degrees.error, prefer), ...noHumidity } };
  const emc = equilibriumMoisture({ scale: 'C', degrees: degrees.value / 10 }, humidity ?? 0);
  if (!emc.ok || degrees.value > WARMEST_TENTHS) {
    const temperature = 'Wood is reckoned with from −30 to 80 °C. Check the number and its unit.';
    return { problems: { temperature, ...noHumidity } };
  }
  if (humidity === undefined) return { problems: noHumidity };
  const air = { tenthsC: degrees.value, humidityTenths: Math.round(humidity * 10) };
  return { air, emc: emc.value.value.mc, problems: {} };
}
