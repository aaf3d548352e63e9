import type { ReadingLine } from '@/app/_server/stock/load-piece';
import { saySetting } from '@/app/_server/stock/say-setting';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A reading in words: "9.6 %, 1,200 mm along, 20 mm deep, pin meter". */
export function sayReading(reading: ReadingLine, prefer: UnitSystem): string {
  const { mcTenths, correctedTenths, inherited } = reading;
  const shown =
    correctedTenths === null ? `${mcTenths / 10} %` : `${correctedTenths / 10} % (${mcTenths / 10} % shown)`;
  return [shown, sayWhere(reading, prefer), inherited ? 'before it was cut' : ''].filter(Boolean).join(', ');
}

/** Where and with what it was read: "1,200 mm along, 40 mm right, 20 mm deep, pin meter". Empty where nothing was noted. */
export function sayWhere({ alongNm, acrossNm, depthNm, spot, ...meter }: ReadingLine, prefer: UnitSystem): string {
  const say = (length: Nanometres) => printLength(length, { prefer, style: 'inches' });
  const side = acrossNm === null || acrossNm === 0 ? '' : acrossNm > 0 ? 'left' : 'right';
  return [
    alongNm === null ? '' : `${say(alongNm)} along`,
    acrossNm === null || side === '' ? '' : `${say(nanometres(Math.abs(acrossNm)))} ${side}`,
    depthNm === null ? '' : `${say(depthNm)} deep`,
    spot,
    saySetting(meter),
  ]
    .filter(Boolean)
    .join(', ');
}
