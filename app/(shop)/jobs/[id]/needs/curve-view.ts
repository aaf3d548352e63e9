import type { BookHead } from '@/app/_server/book/read-book';
import type { PromiseCurve } from '@/app/_server/needs/promise-curves';
import { sayAmount } from '@/app/(shop)/jobs/[id]/needs/say-need';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { laterOf } from '@/shared/calendar/later-of';
import { sayDate } from '@/shared/calendar/say-date';
import type { StepReason } from '@/shared/promise/available-to-promise';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

/** A curve ready to be drawn and read out. */
export type CurveView = {
  key: string;
  name: string;
  from: CalendarDate;
  to: CalendarDate;
  steps: { from: CalendarDate; free: number; good: number }[];
  asks: { on: CalendarDate; value: number; amount: string; met: boolean; says: string }[];
  others: string[];
  /** The greatest amount drawn, in words. */
  most: string;
  top: number;
  /** What is free today. */
  now: string;
  says: string;
  table: { from: string; free: string; promised: string; kept: string; good: string; why: string }[];
};

/** Days drawn past the last that something is needed on, and the fewest drawn in all; later steps stand in the table. */
const BEYOND = 28;
const FEWEST = 60;

/** Where an amount is drawn, per cent from the top. */
export const heightOf =
  ({ top }: Pick<CurveView, 'top'>) =>
  (amount: number): number =>
    top === 0 ? 96 : 96 - (amount / top) * 88;

/** A curve of the server, with its words. */
export function curveView({ key, name, unit, steps, asks, others }: PromiseCurve, head: BookHead): CurveView {
  const { units: prefer, dateOrder: order, today } = head;
  const say = (amount: number) => sayAmount(amount, unit, prefer, 'down');
  const date = (day: CalendarDate) => sayDate(day, { order, today });
  const last = [today, ...asks.map((ask) => ask.goodTo), ...others.map((each) => each.on)].sort().at(-1) ?? today;
  const to = [addDays(today, FEWEST), addDays(last, BEYOND)].sort().at(-1) ?? today;
  // What is for one day is drawn as one: the day it has to be good to, by which all of it is used.
  const perDay = new Map<CalendarDate, { amount: number; free: number }>();
  for (const { goodTo, amount, free } of asks) {
    const day = laterOf(goodTo, today);
    const known = perDay.get(day) ?? { amount: 0, free };
    perDay.set(day, { amount: known.amount + amount, free: Math.min(known.free, free) });
  }
  let soFar = 0;
  const wanted = [...perDay]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([on, { amount, free }]) => {
      soFar += amount;
      const met = soFar <= free;
      const says = met
        ? `${sayAmount(amount, unit, prefer)} wanted on ${date(on)}: it is free.`
        : `${sayAmount(amount, unit, prefer)} wanted on ${date(on)}: ${free === 0 ? 'nothing' : `only ${say(free)}`} is free by then${soFar > amount ? ', for all of its days together' : ''}.`;
      return { on, value: soFar, amount: sayAmount(amount, unit, prefer), met, says };
    });
  const top = Math.max(0, ...steps.map((step) => step.good), ...wanted.map((ask) => ask.value));
  const first = steps[0];
  const table = steps.map((step) => ({
    from: date(step.from),
    free: say(step.free),
    promised: say(step.promised),
    kept: say(step.kept),
    good: say(step.good),
    why: step.reasons.map((reason) => sayReason(reason, say, date)).join('. '),
  }));
  const rises = table.slice(1).map((row) => `${row.free} from ${row.from}`);
  return {
    key,
    name,
    from: today,
    to,
    steps: steps.filter((step) => step.from <= to).map(({ from, free, good }) => ({ from, free, good })),
    asks: wanted,
    others: others.map((each) => `${each.job}, ${sayAmount(each.amount, unit, prefer)} on ${date(each.on)}`),
    most: say(top),
    top,
    now: `${say(first?.free ?? 0)} is free today`,
    says: `${name}: ${[`${say(first?.free ?? 0)} can be promised today`, ...rises].join(', ')}. ${wanted.map((ask) => ask.says).join(' ')}`,
    table,
  };
}

function sayReason(reason: StepReason, say: (amount: number) => string, date: (day: CalendarDate) => string): string {
  switch (reason.code) {
    case 'today':
      return 'Today';
    case 'comes':
      return `${say(reason.amount)} comes${reason.words ? ` from ${reason.words}` : ''}`;
    case 'ends':
      return `${printOwnLabel(reason.words as OwnLabelCode)} was good to ${date(reason.lastGoodDay)}, ${say(reason.amount)}`;
  }
}
