import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { LIMIT_NAMES } from '@/shared/shelf-life/say-limit';
import type { Contradiction, Reason } from '@/shared/shelf-life/types/reason';
import { printTemperatureRange } from '@/shared/units/print-temperature-range';
import type { UnitSystem } from '@/shared/units/unit-system';

/**
 * What the sentences need to know: today, to leave its year out, the order dates are said in (day first unless told), how an amount of this stock is said, and the units
 * temperatures are read in (metric unless told).
 */
export type SayContext = {
  readonly today?: CalendarDate;
  readonly order?: DateOrder;
  readonly sayAmount?: (amount: number) => string;
  readonly prefer?: UnitSystem;
};

const HOLDS = { recalled: 'recalled', quarantine: 'in quarantine', 'on-hold': 'on hold' } as const;

const CONTRADICTIONS: Record<Contradiction, string> = {
  'opened-in-future': 'The opened day is still to come.',
  'made-in-future': 'The day it was made is still to come.',
  'opened-before-made': 'It was opened before it was made.',
  'limit-before-made': 'Its printed limit is before the day it was made.',
  'inspected-in-future': 'An inspection is dated after today.',
};

/** A reason in one short plain sentence: `Opened life ends 7 days before the day of use.` What to do is `whatToDo`. */
export function sayReason(
  reason: Reason,
  { today, order = 'day-first', sayAmount = String, prefer = 'metric' }: SayContext = {},
): string {
  switch (reason.code) {
    case 'recalled':
    case 'quarantine':
    case 'on-hold':
      return `${reason.scope === 'lot' ? 'Its lot' : 'This container'} is ${HOLDS[reason.code]}.`;
    case 'gelled':
      return 'It has gelled.';
    case 'skinned-through':
      return 'It has skinned through.';
    case 'frozen-ruined':
      return 'It has been frozen, and freezing ruins it.';
    case 'wrong-system':
      return sayPairing(reason);
    case 'empty':
      return 'The book says this container is empty.';
    case 'past-limit':
      // Counted to today, the day may be one that is judged in place of a day of use that has passed.
      return addDays(reason.limit.lastGoodDay, reason.daysPast) === today
        ? `${LIMIT_NAMES[reason.limit.basis]} ended ${days(reason.daysPast)} ago.`
        : `${LIMIT_NAMES[reason.limit.basis]} ends ${days(reason.daysPast)} before the day of use.`;
    case 'date-unknown':
      return 'No date is known, and no inspection covers the day of use.';
    case 'inspection-failed':
      return `It failed its ${reason.kind === 'test-pour' ? 'test pour' : 'inspection'} on ${sayDate(reason.on, { order, today })}.`;
    case 'facts-contradict':
      return CONTRADICTIONS[reason.which];
    case 'day-of-use-past':
      return `The day of use, ${sayDate(reason.dayOfUse, { order, today })}, is already past, so it is judged for today.`;
    case 'short':
      return `${sayAmount(reason.left)} left, ${sayAmount(reason.asked)} asked.`;
    case 'extended-by-inspection':
      return reason.instead
        ? `${LIMIT_NAMES[reason.instead.basis]} ended ${sayDate(reason.instead.lastGoodDay, { order, today })}; a passed inspection carries it to ${sayDate(reason.limit.lastGoodDay, { order, today })}.`
        : `No date is printed; a passed inspection carries it to ${sayDate(reason.limit.lastGoodDay, { order, today })}.`;
    case 'limit-near':
      if (addDays(reason.limit.lastGoodDay, -reason.daysLeft) === today) {
        return `${LIMIT_NAMES[reason.limit.basis]} ends ${reason.daysLeft === 0 ? 'today' : `in ${days(reason.daysLeft)}`}.`;
      }
      return reason.daysLeft === 0
        ? `${LIMIT_NAMES[reason.limit.basis]} ends on the day of use.`
        : `${LIMIT_NAMES[reason.limit.basis]} ends ${days(reason.daysLeft)} after the day of use.`;
    case 'opened-life-unknown':
      return `It was opened on ${sayDate(reason.on, { order, today })}, and nothing says how long it keeps opened.`;
    case 'opened-day-guessed':
      return `The opened day, ${sayDate(reason.on, { order, today })}, is a guess.`;
    case 'date-unconfirmed':
      return `The ${UNCONFIRMED[reason.which]}, ${sayDate(reason.date, { order, today, precision: reason.precision })}, was read but not confirmed.`;
    case 'crystals':
      return 'Crystals were seen in it.';
    case 'haze':
      return 'It was seen to be hazy.';
    case 'settled':
      return 'It has settled.';
    case 'darkened':
      return 'It has darkened.';
    case 'frozen-thaw':
      return 'It has been frozen.';
    case 'stored-out-of-range':
      return reason.storage
        ? `It stood outside its stated ${printTemperatureRange(reason.storage.leastC, reason.storage.mostC, { prefer })}.`
        : 'It stood outside its stated temperatures.';
    case 'inspection-does-not-extend':
      return `A passed inspection does not extend this: ${LIMIT_NAMES[reason.limit.basis].toLowerCase()} stands.`;
    case 'house-default':
      return `${LIMIT_NAMES[reason.limit.basis]} is a house default, not the maker’s word.`;
  }
}

const UNCONFIRMED = {
  'use-by': 'printed use by',
  'best-before': 'printed best before',
  'made-on': 'day made',
} as const;

function sayPairing({ because, own, pairedWith }: Extract<Reason, { code: 'wrong-system' }>): string {
  const other = `${pairedWith.label} is part ${pairedWith.part} of ${pairedWith.systemName}`;
  if (!own || because === 'no-system') return `${other}; this belongs to no system.`;
  if (because === 'same-part') return `Both are part ${own.part} of ${own.name}.`;
  return `${other}; this is part ${own.part} of ${own.name}.`;
}

function days(n: number): string {
  return `${n} day${n === 1 ? '' : 's'}`;
}
