import type { BookHead } from '@/app/_server/book/read-book';
import type { ShapeFacts } from '@/app/_server/shapes/read-shape';
import { sayDate } from '@/shared/calendar/say-date';
import { nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';

/** How an outline came about: "Drawn to scale as measured down a chalk line on 12 Nov by Ada." */
export function sayShape(shape: ShapeFacts, { today, units: prefer, dateOrder: order }: BookHead): string {
  const by = `${shape.who ? ` by ${shape.who}` : ''}`;
  const on = sayDate(shape.measuredOn, { order, today });
  const off =
    shape.photoErrorUm === null
      ? ''
      : ` True to ${printLength(nanometres(shape.photoErrorUm * 1000), { prefer })} where it is furthest from the sheet.`;
  const how = {
    stations: `as measured down a chalk line on ${on}${by}`,
    photo: `from a photo of ${on}${by}`,
    cut: `as it was cut on ${on}${by}`,
  }[shape.source];
  const times = shape.measurings > 1 ? ` Measured ${shape.measurings} times; the newest counts.` : '';
  return `Drawn to scale ${how}.${off}${times}`;
}
