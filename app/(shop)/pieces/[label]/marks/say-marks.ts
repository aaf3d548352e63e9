import type { Defect } from '@/shared/outline/defect';
import { boundsOf } from '@/shared/outline/outline-bounds';
import type { PieceMarks } from '@/shared/outline/piece-marks';
import { nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';

export type SaidMark = { readonly id: number; readonly title: string; readonly where: string; readonly note: string };

const DECISIONS = { 'keep-out': 'kept out', fill: 'filled with resin', leave: 'left as it is' };

/** Each mark as a line of a list: what, what is done with it, and where; in the order they were made. */
export function sayMarks({ defects, endChecks, straps }: PieceMarks, prefer: UnitSystem): readonly SaidMark[] {
  const say = (um: number) => sayPlaceLength(um, prefer);
  const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
  const said = [
    ...defects.map(({ id, note, kind, place, depth, decision }) => ({
      id,
      note,
      title: `${capital(kind)}, ${DECISIONS[decision]}`,
      where: `${sayPlace(place, say)}; ${depth.face === 'through' ? 'right through' : `${say(depth.depth / 1000)} deep from face ${depth.face}`}`,
    })),
    ...endChecks.map(({ id, note, end, depth }) => ({
      id,
      note,
      title: `End check at the ${end}`,
      where: `${say(depth / 1000)} in: that much is trimmed`,
    })),
    ...straps.map(({ id, note, from, to }) => ({
      id,
      note,
      title: 'Strap',
      where: from.x === to.x ? `${say(from.x)} along` : `from ${say(to.x)} to ${say(from.x)} along`,
    })),
  ];
  return said.sort((a, b) => a.id - b.id);
}

/** To the millimetre or the sixteenth of an inch: nobody finds a place on wood any finer. */
function sayPlaceLength(um: number, prefer: UnitSystem): string {
  const step = prefer === 'metric' ? 1000 : 25_400 / 16;
  return printLength(nanometres(Math.round(um / step) * step * 1000), { prefer, style: 'inches' });
}

function sayPlace(place: Defect['place'], say: (um: number) => string): string {
  if (place.shape === 'circle') {
    const { x, y } = place.centre;
    return `${say(2 * place.radius)} across, ${say(x)} along, ${sayAcross(y, say)}`;
  }
  const { left, right, bottom, top } = boundsOf(place.ring);
  return `from ${say(left)} to ${say(right)} along, ${sayAcross((bottom + top) / 2, say)}`;
}

function sayAcross(y: number, say: (um: number) => string): string {
  return y === 0 ? 'on the line' : `${say(Math.abs(y))} ${y > 0 ? 'left' : 'right'} of the line`;
}
