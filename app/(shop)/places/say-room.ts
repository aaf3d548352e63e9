import type { AirNow } from '@/app/_server/climate/air-of';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { printTemperature } from '@/shared/units/print-temperature';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';
import type { UnitSystem } from '@/shared/units/unit-system';
import type { Air } from '@/shared/wood/room-air';

type Says = { readonly today: CalendarDate; readonly order: DateOrder };

const NO_BREAK = '\u00a0';

/** Air in words: `20.5 °C at 45 %`. */
export function sayAir({ tenthsC, humidityTenths }: Air, prefer: UnitSystem): string {
  const degrees = printTemperature(tenthsCelsius(tenthsC), { prefer });
  // A number and its unit stay on one line.
  return `${degrees.replace(' ', NO_BREAK)} at ${humidityTenths / 10}${NO_BREAK}%`;
}

/** What the air of a place rests on: `The mean of 12 noted days, 2 Nov to 24 Nov.` and whose air it is where not its own. */
export function sayBasis(
  { air, of, inherited }: Pick<AirNow, 'air' | 'of' | 'inherited'>,
  { today, order }: Says,
): string {
  const say = (on: CalendarDate) => sayDate(on, { order, today });
  const whose = inherited ? ` It is the air of ${of.name}, which it stands in.` : '';
  if (air.basis === 'season') return `By its season ${air.name}; no log was kept in the last four weeks.${whose}`;
  if (air.days === 1) return `As noted on ${say(air.from)}, the only day of the last four weeks.${whose}`;
  return `The mean of ${air.days} noted days, ${say(air.from)} to ${say(air.to)}.${whose}`;
}
