import { type PlannedUse, plannedUses } from '@/app/_server/watch/planned-uses';
import { type UnmetNeed, unmetNeeds } from '@/app/_server/watch/unmet-needs';
import type { NoteContext, WatchNote } from '@/app/_server/watch/watch-note';
import type { OpenBook } from '@/prisma/open-book';
import { daysBetween } from '@/shared/calendar/days-between';
import { sayDate } from '@/shared/calendar/say-date';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { assess } from '@/shared/shelf-life/assess';
import type { CurrencyCode } from '@/shared/units/currency';
import { minorUnits } from '@/shared/units/minor-units';
import { printMoney } from '@/shared/units/print-money';
import { printQuantity } from '@/shared/units/print-quantity';
import { shareOfCost } from '@/shared/units/share-of-cost';
import { amountOf } from '@/shared/units/stock-unit';

/** What is past its limit before the job it is kept for gets to it: promised containers, and needs nothing is kept for. */
export async function plannedNotes(book: OpenBook, context: NoteContext): Promise<WatchNote[]> {
  const [uses, needs] = await Promise.all([plannedUses(book), unmetNeeds(book, context)]);
  return [...uses.flatMap((use) => useNote(use, context)), ...needs.map((need) => needNote(need, context))];
}

function useNote(use: PlannedUse, { today, dateOrder: order, units: prefer, currency }: NoteContext): WatchNote[] {
  const { line, day, purpose, amount, job, jobId } = use;
  const { governing, word } = assess({ ...line.candidate, purpose, dayOfUse: day, today });
  if (!governing || governing.lastGoodDay >= day) return [];
  const risked =
    use.costMinor !== null && use.currency === currency
      ? shareOfCost(use.costMinor, { left: BigInt(Math.min(amount, line.left)), size: BigInt(line.size) })
      : null;
  const money = risked ? `, ${printMoney(minorUnits(risked), currency as CurrencyCode)} at risk` : '';
  const say = (date: typeof day) => sayDate(date, { order, today });
  const days = daysBetween(governing.lastGoodDay, day);
  return [
    {
      id: `planned-${line.stockId}-${jobId}-${governing.lastGoodDay}-${day}`,
      href: `/containers/${line.label}`,
      name: line.product,
      label: printOwnLabel(line.label),
      place: line.place,
      word: word === 'stop' ? 'stop' : 'care',
      says: `${days} ${days === 1 ? 'day' : 'days'} short`,
      why: `Good to ${say(governing.lastGoodDay)}. ${printQuantity(amountOf(line.unit, amount), line.unit, { prefer })} of it is promised to ${job} for ${say(day)}${money}.`,
      toDo: 'Promise a younger one on the job’s page, use this one sooner, or test it.',
    },
  ];
}

function needNote(need: UnmetNeed, { today, dateOrder: order, units: prefer }: NoteContext): WatchNote {
  const { needId, jobId, job, name, day, unit, needed, then } = need;
  const say = (amount: number, rounding: 'down' | 'up' = 'down') =>
    printQuantity(amountOf(unit, amount), unit, { prefer, rounding });
  const on = sayDate(day, { order, today });
  return {
    id: `need-${needId}-${day}-${then}`,
    href: `/jobs/${jobId}`,
    name,
    label: job,
    place: null,
    word: 'stop',
    says: 'not good on the day',
    why: `Still needed on ${on}: ${say(needed, 'up')}. It is on hand and free, but by then ${then === 0 ? 'none' : `only ${say(then)}`} of it is within its limit.`,
    toDo: 'Buy some that lives past that day, or do that step sooner.',
  };
}
