import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import type { StepCaution } from '@/shared/timeline/judge-timeline';
import type { LinkBecause } from '@/shared/timeline/links-of';
import type { StepKind } from '@/shared/timeline/step';

/** What a step is called where it was given no name. */
export const STEP_WORDS: Readonly<Record<StepKind, string>> = {
  'wood-dry': 'Wood dry',
  seal: 'Seal coat',
  lift: 'Lift',
  demould: 'Demould',
  flatten: 'Flatten',
  assembly: 'Assembly',
  coat: 'Coat',
  cure: 'Cured',
  delivery: 'Delivery',
  other: 'Other',
};

const WAITS: Readonly<Record<LinkBecause, (after: string) => string>> = {
  'wood-dry': () => 'the wood is dry',
  sealed: (after) => `${after} is on`,
  again: (after) => `${after} may be poured on`,
  demould: (after) => `${after} may leave the form`,
  demoulded: () => 'it is out of the form',
  'full-cure': (after) => `${after} is fully cured`,
  flattened: () => 'it is flattened',
  recoat: (after) => `${after} may be coated`,
  'finish-cure': (after) => `${after} is cured`,
  last: (after) => `${after}, which comes first`,
};

/**
 * A caution in one or two short sentences: `Not before 4 Dec: only then Lift 2 may leave the form.` Dates in the order of
 * the book.
 */
export function sayStepCaution(
  caution: StepCaution,
  { today, order }: { readonly today: CalendarDate; readonly order: DateOrder },
): string {
  const say = (day: CalendarDate) => sayDate(day, { order, today });
  switch (caution.code) {
    case 'before-ready':
      return caution.because === 'last'
        ? `${caution.after} comes first, on ${say(caution.earliest)}.`
        : `Not before ${say(caution.earliest)}: only then ${WAITS[caution.because](caution.after)}.`;
    case 'window-missed':
      return `The window after ${caution.after} ends on ${say(caution.latest)}. Sand it first.`;
    case 'closed-day':
      return caution.name
        ? `The workshop is closed: ${caution.name}.`
        : 'The workshop is closed on that day of the week.';
    case 'past-not-done':
      return 'Its day has passed and it is not done.';
    case 'after-due':
      return `That is after the due day, ${say(caution.dueOn)}.`;
    case 'due-before-cured':
      return `The due day, ${say(caution.dueOn)}, is before everything is cured, ${say(caution.curedOn)}.`;
  }
}
