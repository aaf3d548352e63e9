import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { firstDayOf, lastDayOf } from '@/shared/calendar/precision';
import type { Candidate } from '@/shared/shelf-life/types/candidate';
import type { LimitBasis } from '@/shared/shelf-life/types/limit';
import type { Contradiction, Reason } from '@/shared/shelf-life/types/reason';

/**
 * Facts that cannot all be true, each asking for care: opened, made or inspected after today, opened before it was made, a
 * printed limit before it was made. A date known by its month is given the benefit of the whole month.
 */
export function reasonsOfContradiction({ lot, container, inspections }: Candidate, today: CalendarDate): Reason[] {
  const made = lot.madeOn && firstDayOf(lot.madeOn.date, lot.madeOn.precision);
  const opened = container.opened?.on;
  const ends = [lot.useBy, lot.bestBefore].flatMap((one) => (one ? [lastDayOf(one.date, one.precision)] : []));
  const found: [Contradiction, boolean][] = [
    ['opened-in-future', opened !== undefined && opened > today],
    ['made-in-future', made !== undefined && made > today],
    ['opened-before-made', opened !== undefined && made !== undefined && opened < made],
    ['limit-before-made', made !== undefined && ends.some((end) => end < made)],
    [
      'inspected-in-future',
      inspections.some((one) => one.on > today && (one.scope === 'lot' || one.containerId === container.id)),
    ],
  ];
  return found.flatMap(([which, holds]): Reason[] =>
    holds ? [{ code: 'facts-contradict', weight: 'care', which }] : [],
  );
}

/** A care for each label date that a limit in force rests on and that no person has confirmed yet. */
export function reasonsOfUnconfirmed({ lot }: Candidate, inForce: ReadonlySet<LimitBasis>): Reason[] {
  const dates = [
    { which: 'use-by', label: lot.useBy, basis: 'use-by' },
    { which: 'best-before', label: lot.bestBefore, basis: 'best-before' },
    { which: 'made-on', label: lot.madeOn, basis: 'stated-life' },
  ] as const;
  return dates.flatMap(({ which, label, basis }): Reason[] =>
    label && !label.confirmed && inForce.has(basis)
      ? [{ code: 'date-unconfirmed', weight: 'care', which, date: label.date, precision: label.precision }]
      : [],
  );
}
