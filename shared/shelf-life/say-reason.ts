import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { nameOfLimit } from '@/shared/shelf-life/say-limit';
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
    case 'pair-failed':
      return `Its lot and that of ${reason.other} failed their test pour together on ${sayDate(reason.on, { order, today })}.`;
    case 'empty':
      return 'The book says this container is empty.';
    case 'past-limit':
      // Counted to today, the day may be one that is judged in place of a day of use that has passed.
      return addDays(reason.limit.lastGoodDay, reason.daysPast) === today
        ? `${nameOfLimit(reason.limit)} ended ${days(reason.daysPast)} ago.`
        : `${nameOfLimit(reason.limit)} ends ${days(reason.daysPast)} before the day of use.`;
    case 'date-unknown':
      return 'No date is known, and no inspection covers the day of use.';
    case 'inspection-failed':
      if (reason.together) {
        return `A test pour of its lot together with another failed on ${sayDate(reason.on, { order, today })}.`;
      }
      return `It failed its ${reason.kind === 'test-pour' ? 'test pour' : 'inspection'} on ${sayDate(reason.on, { order, today })}.`;
    case 'facts-contradict':
      return CONTRADICTIONS[reason.which];
    case 'day-of-use-past':
      return `The day of use, ${sayDate(reason.dayOfUse, { order, today })}, is already past, so it is judged for today.`;
    case 'short':
      return `${sayAmount(reason.left)} left, ${sayAmount(reason.asked)} asked.`;
    case 'other-lot': {
      const codes = reason.lots.filter(Boolean).map((code) => `lot ${code}`);
      return `The surface is of another lot already${codes.length > 0 ? `: ${codes.join(', ')}` : ''}.`;
    }
    case 'extended-by-inspection': {
      const { instead, limit, other } = reason;
      const was = instead
        ? `${nameOfLimit(instead)} ended ${sayDate(instead.lastGoodDay, { order, today })}`
        : 'No date is printed';
      const by = other ? `a test pour with the lot of ${other} that passed` : 'a passed inspection';
      return `${was}; ${by} carries it to ${sayDate(limit.lastGoodDay, { order, today })}${other ? ', for these two together' : ''}.`;
    }
    case 'limit-near':
      if (addDays(reason.limit.lastGoodDay, -reason.daysLeft) === today) {
        return `${nameOfLimit(reason.limit)} ends ${reason.daysLeft === 0 ? 'today' : `in ${days(reason.daysLeft)}`}.`;
      }
      return reason.daysLeft === 0
        ? `${nameOfLimit(reason.limit)} ends on the day of use.`
        : `${nameOfLimit(reason.limit)} ends ${days(reason.daysLeft)} after the day of use.`;
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
      return `A ${reason.other ? `test pour with the lot of ${reason.other} that passed` : 'passed inspection'} does not extend this: ${nameOfLimit(reason.limit).toLowerCase()} stands.`;
    case 'house-default':
      return `${nameOfLimit(reason.limit)} is a house default, not the maker’s word.`;
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
