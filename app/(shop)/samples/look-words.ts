import type { LookResult } from '@/app/_server/samples/look-at-sample';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import type { FaultKind } from '@/shared/faults/fault-kinds';

/** What a kept sample was found to be. */
export const LOOKS: Readonly<Record<LookResult, string>> = {
  sound: 'Sound',
  soft: 'Soft',
  yellowed: 'Yellowed',
  cracked: 'Cracked',
  other: 'Something else',
};

/** What was found, as the book has it. */
export const sayLookResult = (result: string): string => LOOKS[result as LookResult] ?? LOOKS.other;

/** When it is to be looked at: `look 3 Dec`, `look today`. */
export function sayLookDay(lookOn: CalendarDate | null, { order, today }: { order: DateOrder; today: CalendarDate }) {
  if (lookOn === null) return 'not to be looked at again';
  const on = sayDate(lookOn, { order, today });
  return lookOn < today ? `was to be looked at ${on}` : lookOn === today ? 'look today' : `look ${on}`;
}

/** The fault a bad look speaks of; none where it was found sound. */
export const FAULT_OF: Readonly<Record<LookResult, FaultKind | null>> = {
  sound: null,
  soft: 'soft-spot',
  yellowed: 'discoloured',
  cracked: 'crack',
  other: 'other',
};
