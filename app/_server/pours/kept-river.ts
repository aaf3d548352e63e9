import type { FoundRiver } from '@/app/_server/fits/river-of-pieces';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { coarseRing } from '@/shared/outline/coarse-ring';
import type { Outline, Ring } from '@/shared/outline/outline';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';

/** A river as it stays with the pour that fills it: where it is from, its measures, and its picture. */
export type KeptRiver = {
  /** The slab above it and the one below, or the one that is sawn down its length. */
  labels: string[];
  /** The question it answers, as its address has it. */
  asked: string;
  searchedOn: CalendarDate;
  /** Square millimetres, by the outlines. */
  area: number;
  /** Millimetres of edge that meet resin: of the bank above and the one below. */
  banks: [number, number];
  narrowest: Nanometres;
  widest: Nanometres;
  /** How thick the top is to be, and the thickest of its slabs as it was then. */
  finished: Nanometres;
  thickest: Nanometres;
  /** To be drawn, in micrometres about the middle of the top. */
  top: Ring;
  woods: Outline[];
};

/** A screen shows no finer: a quarter of a millimetre. The area is of the outlines themselves. */
const DRAWN_TO = 250;

/** What is kept of a river that was found. */
export function keptRiver(
  { lines, space, narrowest, widest, finished }: FoundRiver,
  { asked, searchedOn }: Pick<KeptRiver, 'asked' | 'searchedOn'>,
): KeptRiver {
  const drawn = (ring: Ring) => coarseRing(ring, DRAWN_TO);
  return {
    labels: lines.map(({ label }) => label),
    asked,
    searchedOn,
    area: Math.round(space.area),
    banks: [Math.round(space.banks[0]), Math.round(space.banks[1])],
    narrowest,
    widest,
    finished,
    thickest: nanometres(Math.max(...lines.map(({ thicknessNm }) => thicknessNm))),
    top: drawn(space.top),
    woods: space.woods.map(({ ring, holes }) => ({ ring: drawn(ring), holes: holes.map(drawn) })),
  };
}
