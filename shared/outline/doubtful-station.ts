import type { Station, StationValue } from '@/shared/outline/station';

/**
 * The value that most looks like a slip, to be pointed at and not refused; undefined when all run smoothly. A width is
 * doubtful when it is more than twice, or less than half, what its two neighbours give at its place by a straight line,
 * and they agree with one another within that; the end stations, which have one neighbour, only against ten times and a
 * tenth (a slipped decimal point). One side alone is doubtful in the same way against three times and a third, where the
 * width is also off by more than a quarter: a line may run close to one edge, and on a bowed slab it wanders across. The side named is the one further
 * from its neighbours' line. Needs three stations. Common practice. Widths 500, 520, 52, 510: the third, whichever of its
 * sides is off; left sides 350, 36, 350 beside right ones of 340: the second, left.
 */
export function doubtfulStation(stations: readonly Station[]): StationValue | undefined {
  let worst: { value: StationValue; by: number } | undefined;
  if (stations.length < 3) return undefined;
  stations.forEach((station, nr) => {
    const [back, next] = [stations[nr - 1], stations[nr + 1]];
    const only = back ?? next;
    if (!only) return;
    const along = back && next && next.at > back.at ? (station.at - back.at) / (next.at - back.at) : 0;
    const between = (side: Side) => (back && next ? back[side] + (next[side] - back[side]) * along : only[side]);
    const expected = between('left') + between('right');
    const width = station.left + station.right;
    if (expected <= 0 || width <= 0) return;
    const off = (side: Side) => Math.abs(station[side] - between(side));
    const further: Side = off('left') >= off('right') ? 'left' : 'right';
    const isWidthOff =
      agree(back && next ? [widthOf(back), widthOf(next)] : [1, 1], 2) &&
      times(width, expected) > (back && next ? 2 : 10);
    const isSideOff =
      back !== undefined &&
      next !== undefined &&
      agree([back[further], next[further]], 2) &&
      Math.abs(width - expected) > expected / 4 &&
      times(station[further], between(further)) > 3;
    const by = Math.max(
      isWidthOff ? times(width, expected) : 0,
      isSideOff ? times(station[further], between(further)) : 0,
    );
    if (by === 0 || (worst && by <= worst.by)) return;
    worst = { value: { station: nr, value: further }, by };
  });
  return worst?.value;
}

type Side = 'left' | 'right';
const widthOf = ({ left, right }: Station) => left + right;
/** How many times one goes into the other, the larger into the smaller; without end where one is not above zero. */
const times = (a: number, b: number) => (a > 0 && b > 0 ? Math.max(a / b, b / a) : Infinity);
const agree = ([a = 0, b = 0]: readonly number[], within: number) => times(a, b) <= within;
