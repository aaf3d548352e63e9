import { type LaidPoint, layChalkLine } from '@/shared/outline/lay-chalk-line';
import type { Outline } from '@/shared/outline/outline';
import { type OutlineFault, outlineFromPoints } from '@/shared/outline/outline-from-points';
import { micrometres } from '@/shared/outline/point';
import type { ChalkLine, Station, StationValue } from '@/shared/outline/station';
import { err, type Result } from '@/shared/result/result';

/** The value to look at, and, untouched, what was entered. */
export type StationRefusal = StationValue & {
  readonly code:
    | 'too-few-stations'
    | 'station-out-of-order'
    | 'station-repeated'
    | 'edges-cross'
    | 'no-wood-here'
    | 'gap-outside'
    | OutlineFault['code'];
  readonly entered: ChalkLine;
};

/**
 * The outline a maker measures: stations down a chalk line, joined by straight edges. At least two stations, each
 * further along than the one before; two may share a distance and are then a step. The width is above zero everywhere
 * but at the two ends, which may come to a point. Refused with the value to look at: `station-out-of-order` and
 * `station-repeated` (also three at one distance, or a step at an end), `edges-cross` (the right edge left of the left
 * one, or a step whose parts do not meet), `no-wood-here` (pinched to nothing between the ends), `gap-outside` (beyond
 * the ends or the edges), and what `outlineFromPoints` refuses. Stations (0, 100, 100) and (1000, 100, 100) in
 * millimetres are a rectangle of 1000 × 200.
 */
export function outlineFromStations(entered: ChalkLine): Result<Outline, StationRefusal> {
  const fault = faultOfStations(entered);
  if (fault) return err({ ...fault, entered });
  const laid = layChalkLine(entered);
  const made = outlineFromPoints({ edge: laid.edge.map(place), gaps: laid.gaps.map((gap) => gap.map(place)) });
  if (made.ok) return made;
  const { gap, point, other } = made.error;
  const rings = [laid.edge, ...laid.gaps];
  const at = rings[gap === undefined ? 0 : gap + 1]?.[point];
  const against = other && rings[other.gap === undefined ? 0 : other.gap + 1]?.[other.point];
  // Where a gap meets an edge, the gap is what is in the wrong place.
  const blamed = against?.from.gap !== undefined && at?.from.gap === undefined ? against : (at ?? against);
  const where = blamed?.from ?? { station: 0, value: 'left' as const };
  const code = made.error.code === 'sides-cross' && where.gap !== undefined ? 'gap-outside' : made.error.code;
  return err({ code, ...where, entered });
}

function place({ x, y }: LaidPoint): { x: number; y: number } {
  return { x, y };
}

type Fault = Omit<StationRefusal, 'entered'>;

function faultOfStations({ stations, gaps = [] }: ChalkLine): Fault | undefined {
  const slab = faultOfRun(stations, 'slab');
  if (slab) return slab;
  const [first, last] = [stations[0]?.at ?? 0, stations.at(-1)?.at ?? 0];
  for (const [gap, { stations: banks }] of gaps.entries()) {
    const fault = faultOfRun(banks, 'gap');
    if (fault) return { ...fault, gap };
    const beyond = banks.findIndex(({ at }) => at < first || at > last);
    if (beyond >= 0) return { code: 'gap-outside', gap, station: beyond, value: 'at' };
  }
  return undefined;
}

function faultOfRun(run: readonly Station[], of: 'slab' | 'gap'): Fault | undefined {
  if (run.length < 2) return { code: 'too-few-stations', station: Math.max(0, run.length - 1), value: 'at' };
  for (const [station, { at, left, right }] of run.entries()) {
    const [back, back2, next] = [run[station - 1], run[station - 2], run[station + 1]];
    if (back && at < back.at) return { code: 'station-out-of-order', station, value: 'at' };
    if (back && at === back.at) {
      const same = back.left === left && back.right === right;
      const isEnd = station === 1 || station === run.length - 1;
      if (same || isEnd || back2?.at === at) return { code: 'station-repeated', station, value: 'at' };
      const overlap =
        Math.min(micrometres(left), micrometres(back.left)) + Math.min(micrometres(right), micrometres(back.right));
      if (overlap <= 0) return { code: 'edges-cross', station, value: left < back.left ? 'left' : 'right' };
    }
    const width = micrometres(left) + micrometres(right);
    const smaller = left < right ? 'left' : 'right';
    if (width < 0) return { code: 'edges-cross', station, value: smaller };
    if (width === 0 && back && next)
      return { code: of === 'slab' ? 'no-wood-here' : 'edges-cross', station, value: smaller };
  }
  return undefined;
}
