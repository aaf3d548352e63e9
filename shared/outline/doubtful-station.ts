import type { Station, StationValue } from '@/shared/outline/station';

/**
 * The value that most looks like a slip, to be pointed at and not refused; undefined when all run smoothly. A width is
 * doubtful when it is more than twice, or less than half, what its two neighbours give at its place by a straight line,
 * and they agree with one another within that; the end stations, which have one neighbour, only against ten times and a
 * tenth (a slipped decimal point). The side named is the one further from its neighbours' line. Needs three stations.
 * Common practice. Widths 500, 520, 52, 510: the third, whichever of its sides is off.
 */
export function doubtfulStation(stations: readonly Station[]): StationValue | undefined {
  let worst: { value: StationValue; by: number } | undefined;
  if (stations.length < 3) return undefined;
  stations.forEach((station, nr) => {
    const [back, next] = [stations[nr - 1], stations[nr + 1]];
    const only = back ?? next;
    if (!only) return;
    const limit = back && next ? 2 : 10;
    const along = back && next && next.at > back.at ? (station.at - back.at) / (next.at - back.at) : 0;
    const between = (side: 'left' | 'right') =>
      back && next ? back[side] + (next[side] - back[side]) * along : only[side];
    const expected = between('left') + between('right');
    const width = station.left + station.right;
    if (expected <= 0 || width <= 0) return;
    const widths = back && next ? [back.left + back.right, next.left + next.right] : [1, 1];
    if (Math.max(...widths) > 2 * Math.min(...widths)) return;
    const by = Math.max(width / expected, expected / width);
    if (by <= limit || (worst && by <= worst.by)) return;
    const off = (side: 'left' | 'right') => Math.abs(station[side] - between(side));
    worst = { value: { station: nr, value: off('left') >= off('right') ? 'left' : 'right' }, by };
  });
  return worst?.value;
}
