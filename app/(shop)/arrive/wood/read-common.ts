import type { readFields, Typing } from '@/app/(shop)/arrive/read-fields';
import type { TypedWood } from '@/app/(shop)/arrive/wood/schema';
import { readMoisture, sayMoistureError } from '@/shared/wood/read-moisture';

/** What is asked of all wood that comes in, whatever its form; undefined where a day does not read. */
export function readCommon(typed: TypedWood, typing: Typing, read: ReturnType<typeof readFields>) {
  if (typed.species.trim() === '') read.say('species', 'Say what wood it is.');
  const receivedOn = typed.receivedOn.trim() === '' ? typing.today : read.day('receivedOn', typed.receivedOn);
  const costMinor = read.money('cost', typed.cost);
  const moisture = typed.moisture.trim() === '' ? undefined : readMoisture(typed.moisture);
  if (moisture && !moisture.ok) read.say('moisture', sayMoistureError(moisture.error));
  const sapwoodNm = read.length('sapwood', typed.sapwood);
  if (receivedOn === undefined) return undefined;
  return {
    species: typed.species.trim(),
    flags: [...typed.flags],
    flitch: typed.flitch,
    origin: typed.origin,
    sapwoodNm,
    quarters: /^\d{1,2}$/.test(typed.quarters) ? Number(typed.quarters) : undefined,
    surfacing: typed.surfacing || undefined,
    costMinor,
    receivedOn,
    placeLabel: typed.placeLabel || undefined,
    note: typed.note,
    reading: moisture?.ok
      ? { mcTenths: moisture.value, meter: typed.meter.trim(), spot: typed.spot.trim() }
      : undefined,
    photo: typed.photo && typed.photo.size > 0 ? typed.photo : undefined,
  };
}
