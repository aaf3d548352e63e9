import type { FoundRiver } from '@/app/_server/fits/river-of-pieces';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { drawnRiver } from '@/shared/fit/drawn-river';
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

/** Areas are told apart to a square millimetre: what a screen shows was rounded to it. */
const SAME = 1;

/** Whether two rivers are one by their areas, square millimetres. */
export const isSameRiver = (one: Pick<KeptRiver, 'area'>, other: Pick<KeptRiver, 'area'>): boolean =>
  Math.abs(one.area - other.area) <= SAME;

/** What is kept of a river that was found. */
export function keptRiver(
  { lines, space, narrowest, widest, finished }: FoundRiver,
  { asked, searchedOn }: Pick<KeptRiver, 'asked' | 'searchedOn'>,
): KeptRiver {
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
    ...drawnRiver(space),
  };
}
