import type { LiftLine } from '@/app/_server/pours/lift-rows';
import type { PourLine } from '@/app/_server/pours/read-pour';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { daysBetween } from '@/shared/calendar/days-between';
import { sayDate } from '@/shared/calendar/say-date';
import { sayWeekday } from '@/shared/calendar/say-weekday';
import type { LiftCaution } from '@/shared/pour/cautions-of-lift';
import { type JoinNow, joinAt, type LiftBelow } from '@/shared/pour/join-at';
import type { PlannedLift } from '@/shared/pour/plan-pour';
import { decimalText } from '@/shared/units/decimal-text';

/** `Lift 2`, or `Seal coat` for the first of all. */
export const sayLift = (nr: number): string => (nr === 0 ? 'Seal coat' : `Lift ${nr}`);

/** A mass as the scale shows it: grams, never kilograms. `1,104 g` */
export const sayGrams = (mass: number): string => `${decimalText(BigInt(mass), 3, 'grouped')} g`;

/** `Thu 26 Nov` */
export const sayDay = (day: CalendarDate, order: DateOrder, today?: CalendarDate): string =>
  `${sayWeekday(day)} ${sayDate(day, { order, today })}`;

export type LiftState = 'poured' | 'begun' | 'planned';

export const stateOf = ({ poured, weighed }: Pick<LiftLine, 'poured' | 'weighed'>): LiftState =>
  poured ? 'poured' : weighed.length > 0 ? 'begun' : 'planned';

export const STATE_WORDS: Record<LiftState, string> = { poured: 'poured', begun: 'half weighed', planned: 'planned' };

/** Where a pour stands, in a few words. */
export function sayStanding({ lifts }: Pick<PourLine, 'lifts'>): string {
  const poured = lifts.filter((lift) => lift.poured).length;
  const begun = lifts.find((lift) => stateOf(lift) === 'begun');
  if (begun) return `${sayLift(begun.nr)} is half weighed`;
  if (poured === 0) return 'not begun';
  return poured === lifts.length ? 'poured' : `${poured} of ${lifts.length} poured`;
}

export const JOINS_WORDS: Record<PlannedLift['joins'], string> = {
  seal: 'brushed on the bare wood',
  first: 'on the bottom',
  'while-tacky': 'while the one below is tacky',
  'sand-first': 'sand the one below first',
};

/** How the next lift would join the one below on its day, by when that was really poured; nothing where there is none. */
export function sayJoin(below: LiftBelow | undefined, day: CalendarDate, today: CalendarDate, now: number): string {
  if (!below) return '';
  const instant = day > today ? below.at + daysBetween(below.on, day) * DAY_MS : now;
  return `: ${JOIN_NOW[joinAt(below, instant).joins]}`;
}

const DAY_MS = 24 * 3_600_000;

const JOIN_NOW: Record<JoinNow, string> = {
  'too-early': 'the one below is too fresh yet',
  'while-tacky': JOINS_WORDS['while-tacky'],
  'sand-first': JOINS_WORDS['sand-first'],
};

/** What to mind before a lift is mixed. The sheet goes before it. */
export const CAUTION_WORDS: Record<LiftCaution['code'], string> = {
  'deeper-than-the-sheet':
    'Deeper than the sheet allows: it can run so hot that it cracks, smokes or burns. The fumes are not to be breathed.',
  'thinner-than-the-sheet': 'Thinner than the sheet asks for: it may stay soft.',
  'more-than-the-sheet':
    'More resin at once than the sheet allows: it can run so hot that it cracks, smokes or burns. The fumes are not to be breathed.',
  'batch-not-measured':
    'A batch is larger than any the pot life was measured with: it thickens sooner and runs hotter, by how much no rule says. A smaller bucket, or another row on the sheet, makes it known. Pour it out at once: in a wide form it stays cooler.',
  'room-too-warm': 'The room is warmer than the sheet allows: it cures faster and hotter than it says.',
  'room-too-cold': 'The room is colder than the sheet allows: it may stay soft.',
  'no-sheet': 'These numbers were typed, with no sheet behind them.',
  'no-depth-limit': 'The sheet says no depth for one lift.',
};
