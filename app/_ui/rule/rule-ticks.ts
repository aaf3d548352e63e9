import type { TimeScale } from '@/app/_ui/rule/time-scale';
import { addDays } from '@/shared/calendar/add-days';
import { type CalendarDate, partsOf } from '@/shared/calendar/calendar-date';
import { dayNumber } from '@/shared/calendar/days-between';
import { shortMonth } from '@/shared/calendar/month-names';

interface RuleLabel {
  readonly day: CalendarDate;
  readonly at: number;
  readonly words: string;
}

export interface RuleTicks {
  /** Places of the short and the long ticks, 0 to 1. */
  readonly short: readonly number[];
  readonly long: readonly number[];
  /** Words beside some of the long ticks; they never touch one another and never run off the end. */
  readonly labels: readonly RuleLabel[];
}

type Unit = 'day' | 'week' | 'month' | 'quarter' | 'year';

const CLOSEST_TICKS = 4.5;
const CHARACTER = 8.8;
const BEFORE_WORDS = 5;
const GAP = 9;

const monthsFrom = (day: CalendarDate) => partsOf(day).year * 12 + partsOf(day).month - 1;

/** Weeks start on Monday (ISO 8601); 1970-01-05 was one. */
function starts(unit: Unit, day: CalendarDate): boolean {
  if (unit === 'day') return true;
  if (unit === 'week') return (dayNumber(day) - 4) % 7 === 0;
  if (partsOf(day).day !== 1) return false;
  return unit === 'month' || monthsFrom(day) % (unit === 'quarter' ? 3 : 12) === 0;
}

/** Which ticks carry words, from the finest to the coarsest. `every` counts from a fixed day, so a rule that moves keeps its words. */
const WORDED: readonly { unit: Unit; has: (day: CalendarDate) => boolean }[] = [
  { unit: 'day', has: () => true },
  { unit: 'week', has: () => true },
  { unit: 'week', has: (day) => Math.floor((dayNumber(day) - 4) / 7) % 2 === 0 },
  ...[1, 2, 3, 6, 12].map((every) => ({
    unit: 'month' as const,
    has: (day: CalendarDate) => monthsFrom(day) % every === 0,
  })),
];

function say(unit: Unit, day: CalendarDate, before: CalendarDate | undefined): string {
  const { year, month, day: date } = partsOf(day);
  const name = shortMonth(month);
  if (unit === 'month') return month === 1 ? (before ? `${year}` : `${name} ${year}`) : name;
  return before && monthsFrom(before) === monthsFrom(day) ? String(date) : `${date} ${name}`;
}

function allDays(scale: TimeScale): CalendarDate[] {
  return Array.from({ length: scale.days }, (_, index) => addDays(scale.from, index));
}

/** Room in pixels that the words take at the rule's size, their distance from the tick included. Generous, as letters differ. */
export function roomFor(words: string): number {
  return words.length * CHARACTER + BEFORE_WORDS;
}

function wordsFor(scale: TimeScale, days: readonly CalendarDate[], width: number): RuleLabel[] {
  let last: RuleLabel[] = [];
  for (const { unit, has } of WORDED) {
    if (unit === 'day' && width / scale.days < 2 * CHARACTER) continue;
    const labels: RuleLabel[] = [];
    let touching = false;
    let free = 0;
    let before: CalendarDate | undefined;
    for (const day of days) {
      if (!starts(unit, day) || !has(day)) continue;
      const at = scale.startOf(day);
      const words = say(unit, day, before);
      if (at * width + roomFor(words) > width) break;
      if (at * width < free) touching = true;
      else labels.push({ day, at, words });
      free = at * width + roomFor(words) + GAP;
      before = day;
    }
    if (!touching && labels.length > 0) return withFirstDay(scale, labels, width);
    if (labels.length > 0) last = labels;
  }
  return last;
}

/** Says the first day too where there is room before the first words. */
function withFirstDay(scale: TimeScale, labels: RuleLabel[], width: number): RuleLabel[] {
  const words = say('day', scale.from, undefined);
  const room = (labels[0]?.at ?? 1) * width;
  return room >= roomFor(words) + GAP ? [{ day: scale.from, at: 0, words }, ...labels] : labels;
}

/**
 * The ticks and words of a rule `width` pixels wide: ticks by day while they stand apart, then by week, then by month;
 * longer ones by week, month or quarter. Two weeks to three years read well at 300 px.
 */
export function ruleTicks(scale: TimeScale, width: number): RuleTicks {
  const days = allDays(scale);
  const pixels = width / scale.days;
  const [short, long]: [Unit, Unit] =
    pixels >= CLOSEST_TICKS ? ['day', 'week'] : pixels * 7 >= CLOSEST_TICKS ? ['week', 'month'] : ['month', 'quarter'];
  const at = (unit: Unit) => days.filter((day) => starts(unit, day)).map((day) => scale.startOf(day));
  return { short: at(short), long: at(long), labels: wordsFor(scale, days, width) };
}
