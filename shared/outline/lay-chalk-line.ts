import { micrometres, type Point } from '@/shared/outline/point';
import type { ChalkLine, Station, StationValue } from '@/shared/outline/station';

/** A point of the drawing and the typed value it came from. */
export type LaidPoint = Point & { readonly from: StationValue };

export type LaidLine = { readonly edge: readonly LaidPoint[]; readonly gaps: readonly (readonly LaidPoint[])[] };

/**
 * The points of a chalk line in drawing order, without judging them: down the right edge, across the end, back up the
 * left edge. A gap that reaches an end is let into the edge there; the others are rings of their own. The drawing that
 * grows while stations are typed is made of this.
 */
export function layChalkLine({ stations, gaps = [] }: ChalkLine): LaidLine {
  const [first, last] = [stations[0]?.at, stations.at(-1)?.at];
  const [atStart, atEnd, inside]: [LaidPoint[][], LaidPoint[][], LaidPoint[][]] = [[], [], []];
  gaps.forEach(({ stations: banks }, gap) => {
    const left = bank(banks, 'left', gap);
    const right = bank(banks, 'right', gap);
    const opens = (station: Station | undefined) => station !== undefined && station.left + station.right > 0;
    if (banks.at(-1)?.at === last && opens(banks.at(-1))) atEnd.push([...right.reverse(), ...left]);
    else if (banks[0]?.at === first && opens(banks[0])) atStart.push([...left, ...right.reverse()]);
    else inside.push([...right, ...left.reverse()]);
  });
  atEnd.sort((a, b) => (a[0]?.y ?? 0) - (b[0]?.y ?? 0));
  atStart.sort((a, b) => (b[0]?.y ?? 0) - (a[0]?.y ?? 0));
  const edge = [...bank(stations, 'right'), ...atEnd.flat(), ...bank(stations, 'left').reverse(), ...atStart.flat()];
  return { edge: withoutDoubles(edge), gaps: inside.map(withoutDoubles) };
}

function bank(stations: readonly Station[], value: 'left' | 'right', gap?: number): LaidPoint[] {
  return stations.map((station, nr) => ({
    x: micrometres(station.at),
    y: value === 'left' ? micrometres(station.left) : -micrometres(station.right) + 0,
    from: { ...(gap === undefined ? {} : { gap }), station: nr, value },
  }));
}

/** Pointed ends give the same point from both edges, and a step that moves one edge repeats the other. */
function withoutDoubles(points: readonly LaidPoint[]): LaidPoint[] {
  return points.filter((point, nr) => {
    const before = points[(nr + points.length - 1) % points.length];
    return points.length < 2 || before?.x !== point.x || before.y !== point.y;
  });
}
