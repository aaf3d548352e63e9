import { airOfPlace } from '@/app/_server/climate/read-air';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { type EquilibriumMoisture, equilibriumMoisture } from '@/shared/wood/equilibrium-moisture';
import type { Explained } from '@/shared/wood/explained';
import { type UsualAir, usualAir } from '@/shared/wood/room-air';

/** The air wood stands in at a place, what it settles at in it, and which place says so. */
export type AirNow = {
  readonly air: UsualAir;
  readonly emc: Explained<EquilibriumMoisture>;
  readonly of: { readonly label: string; readonly name: string };
  /** It is a place around the one asked for that says so. */
  readonly inherited: boolean;
};

/**
 * The air of a place to reckon with today: the mean of its log over the last weeks, else its season, else that of the
 * nearest place around it that knows. Undefined where nobody has said anything of use today.
 */
export async function airOf(book: OpenBook, placeId: number, today: CalendarDate): Promise<AirNow | undefined> {
  const known = await airOfPlace(book, { id: placeId }, today);
  const air = known && usualAir(known, today);
  const emc = air && equilibriumMoisture({ scale: 'C', degrees: air.tenthsC / 10 }, air.humidityTenths / 10);
  if (!known || !air || !emc?.ok) return undefined;
  return { air, emc: emc.value, of: { label: known.of.label, name: known.of.name }, inherited: known.inherited };
}
