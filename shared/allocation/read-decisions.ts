import type { Decisions } from '@/shared/allocation/exact-flow';
import type { Problem } from '@/shared/allocation/problem';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** A solver's values this far from 0 are a yes. They are whole within a millionth. */
const YES = 0.5;

/** Reads out of a solver's values what they decide, each rounded to the whole number that it stands for. */
export function readDecisions(
  { slots, groups, batches, surfaces }: Problem,
  values: ReadonlyMap<string, number>,
  short: ReadonlyMap<CalendarDate, number>,
): Decisions {
  const value = (name: string) => values.get(name) ?? 0;
  return {
    opened: slots.map(({ group }, at) => (groups[group]?.sealed ? Math.round(value(`k${at}`)) : 1)),
    choices: batches.map(({ choices }, nr) =>
      choices.length < 2 ? choices[0] : (choices.find((_, c) => value(`b${nr}_${c}`) > YES) ?? ''),
    ),
    lots: surfaces.map(
      ({ lots }, nr) => new Set(lots.length < 2 ? lots : lots.filter((_, l) => value(`u${nr}_${l}`) > YES)),
    ),
    short,
  };
}
