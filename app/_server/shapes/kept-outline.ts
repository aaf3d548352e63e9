import type { Outline, Ring } from '@/shared/outline/outline';
import type { ChalkLine, Station } from '@/shared/outline/station';
import { nanometres } from '@/shared/units/nanometres';

type KeptRing = readonly (readonly [number, number])[];
type KeptStation = readonly [at: number, left: number, right: number];

/** An outline as the book keeps it: whole micrometres, two numbers a point. */
export function writeOutline({ ring, holes }: Outline): string {
  return JSON.stringify({ ring: ringText(ring), holes: holes.map(ringText) });
}

/** The outline that `writeOutline` wrote. Throws on anything else: only a damaged book has it. */
export function readOutline(text: string): Outline {
  const { ring, holes } = JSON.parse(text) as { ring: KeptRing; holes: KeptRing[] };
  return { ring: ringOf(ring), holes: holes.map(ringOf) };
}

export function writeChalkLine({ stations, gaps = [] }: ChalkLine): string {
  return JSON.stringify({
    stations: stations.map(stationText),
    gaps: gaps.map((gap) => gap.stations.map(stationText)),
  });
}

/** The stations that `writeChalkLine` wrote. */
export function readChalkLine(text: string): ChalkLine {
  const { stations, gaps } = JSON.parse(text) as { stations: KeptStation[]; gaps: KeptStation[][] };
  return { stations: stations.map(stationOf), gaps: gaps.map((gap) => ({ stations: gap.map(stationOf) })) };
}

export const ringText = (ring: Ring): KeptRing => ring.map(({ x, y }) => [x, y] as const);
export const ringOf = (ring: KeptRing): Ring => ring.map(([x, y]) => ({ x, y }));

const stationText = ({ at, left, right }: Station): KeptStation => [at, left, right];
const stationOf = ([at, left, right]: KeptStation): Station => ({
  at: nanometres(at),
  left: nanometres(left),
  right: nanometres(right),
});
