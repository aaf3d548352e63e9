import type { AirOfPlace } from '@/app/_server/climate/read-air';
import type { RoomRead } from '@/app/(shop)/pieces/read-room';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { equilibriumMoisture } from '@/shared/wood/equilibrium-moisture';
import { type UsualAir, usualAir } from '@/shared/wood/room-air';

export type RoomOfPlace = {
  readonly air: UsualAir;
  readonly of: AirOfPlace['of'];
  readonly inherited: boolean;
  readonly read: Pick<RoomRead, 'emc' | 'temperature'>;
};

/** The room a piece stands in as the book knows it today; undefined where it does not. */
export function roomOfPlace(known: AirOfPlace | undefined, today: CalendarDate): RoomOfPlace | undefined {
  const air = known && usualAir(known, today);
  if (!known || !air) return undefined;
  const temperature = { scale: 'C', degrees: air.tenthsC / 10 } as const;
  const emc = equilibriumMoisture(temperature, air.humidityTenths / 10);
  if (!emc.ok) return undefined;
  return { air, of: known.of, inherited: known.inherited, read: { emc: emc.value, temperature } };
}
