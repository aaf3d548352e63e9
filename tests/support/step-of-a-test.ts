import { NEVER_CLOSED } from '@/shared/timeline/closed-days';
import type { Step } from '@/shared/timeline/step';
import type { TimelineFacts } from '@/shared/timeline/timeline-facts';
import { day } from '@/tests/support/day';

/** Steps of a time line, numbered as they are given. */
export function steps(...some: (Partial<Omit<Step, 'day'>> & { kind: Step['kind']; day: string })[]): Step[] {
  return some.map((each, nr) => ({
    id: nr + 1,
    name: each.kind,
    sort: 0,
    partId: null,
    pourId: null,
    productId: null,
    coatNr: null,
    doneOn: null,
    ...each,
    day: day(each.day),
  }));
}

/** A Wednesday, every day open, nothing known of any sheet. */
export const FACTS: TimelineFacts = {
  today: day('2026-11-25'),
  dueOn: null,
  closed: NEVER_CLOSED,
  pours: {},
  finishes: {},
};
