import type { AirOfPlace } from '@/app/_server/climate/read-air';
import { readRoom } from '@/app/(shop)/pieces/read-room';
import type { UnitSystem } from '@/shared/units/unit-system';
import type { EquilibriumMoisture } from '@/shared/wood/equilibrium-moisture';
import type { Explained } from '@/shared/wood/explained';
import { seasonMoisture } from '@/shared/wood/season-moisture';

type Settles = Explained<EquilibriumMoisture>;

/** The driest and the dampest air of a year, what wood settles at in each, and both in words. */
export type HomeAir = { readonly dry: Settles; readonly damp: Settles; readonly says: string };

/** The two ends of a room's year by its seasons; undefined where fewer than two are known. */
export function airBySeasons(air: Pick<AirOfPlace, 'seasons'> | undefined): HomeAir | undefined {
  if (!air || air.seasons.length < 2) return undefined;
  const year = seasonMoisture(
    air.seasons.map(({ name, tenthsC, humidityTenths }) => ({
      name,
      temperature: { scale: 'C' as const, degrees: tenthsC / 10 },
      humidity: humidityTenths / 10,
    })),
  );
  if (!year.ok) return undefined;
  const { driest, dampest } = year.value;
  const say = ({ season }: typeof driest) => `${season.name} at ${season.humidity} %`;
  return { dry: driest.emc, damp: dampest.emc, says: `${say(driest)} and ${say(dampest)}` };
}

/** The same of a home whose driest and dampest air are typed; undefined while they do not read. */
export function airAsTyped(
  home: { readonly dry: string; readonly damp: string; readonly temperature: string },
  prefer: UnitSystem,
): HomeAir | undefined {
  const dry = readRoom({ temperature: home.temperature, humidity: home.dry }, prefer).emc;
  const damp = readRoom({ temperature: home.temperature, humidity: home.damp }, prefer).emc;
  return dry && damp ? { dry, damp, says: `${home.dry.trim()} and ${home.damp.trim()} % humidity` } : undefined;
}
