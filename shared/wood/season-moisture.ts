import { err, ok, type Result } from '@/shared/result/result';
import {
  type AirTemperature,
  type EmcError,
  type EquilibriumMoisture,
  equilibriumMoisture,
} from '@/shared/wood/equilibrium-moisture';
import type { Explained } from '@/shared/wood/explained';

/** A stretch of the year, or one reading of the room’s log. */
export type Season = { readonly name: string; readonly temperature: AirTemperature; readonly humidity: number };
type SeasonMoisture = { readonly season: Season; readonly emc: Explained<EquilibriumMoisture> };

export type RoomYear = {
  readonly seasons: readonly SeasonMoisture[];
  readonly driest: SeasonMoisture;
  readonly dampest: SeasonMoisture;
};

export type SeasonError =
  | { readonly code: 'no-seasons' }
  | { readonly code: 'season'; readonly at: number; readonly why: EmcError };

/**
 * The moisture content wood would settle at in each season of a room, and the driest and dampest of them (the earlier
 * when equal). Thick wood lags and never quite reaches either, so a top that allows for both is safe. Fails with
 * `no-seasons`, or with the place of the season that cannot be. Winter 20 °C at 30 % and summer 24 °C at 65 % settle at
 * about 6 and 12 %.
 */
export function seasonMoisture(seasons: readonly Season[]): Result<RoomYear, SeasonError> {
  const all: SeasonMoisture[] = [];
  for (const [at, season] of seasons.entries()) {
    const emc = equilibriumMoisture(season.temperature, season.humidity);
    if (!emc.ok) return err({ code: 'season', at, why: emc.error });
    all.push({ season, emc: emc.value });
  }
  const [first] = all;
  if (!first) return err({ code: 'no-seasons' });
  const mc = (each: SeasonMoisture) => each.emc.value.mc;
  const driest = all.reduce((least, each) => (mc(each) < mc(least) ? each : least), first);
  const dampest = all.reduce((most, each) => (mc(each) > mc(most) ? each : most), first);
  return ok({ seasons: all, driest, dampest });
}
