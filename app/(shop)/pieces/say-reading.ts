import type { ReadingLine } from '@/app/_server/stock/load-piece';
import type { Nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A reading in words: "9.6 %, 1,200 mm along, 20 mm deep, pin meter". */
export function sayReading(reading: ReadingLine, prefer: UnitSystem): string {
  const say = (length: Nanometres) => printLength(length, { prefer, style: 'inches' });
  const { mcTenths, correctedTenths, alongNm, depthNm, spot, meter, inherited } = reading;
  const shown =
    correctedTenths === null ? `${mcTenths / 10} %` : `${correctedTenths / 10} % (${mcTenths / 10} % shown)`;
  return [
    shown,
    alongNm === null ? '' : `${say(alongNm)} along`,
    depthNm === null ? '' : `${say(depthNm)} deep`,
    spot,
    meter,
    inherited ? 'before it was cut' : '',
  ]
    .filter(Boolean)
    .join(', ');
}
