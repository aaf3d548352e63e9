import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Candidate } from '@/shared/shelf-life/types/candidate';
import type { Inspection } from '@/shared/shelf-life/types/inspection';

/** What the inspections of a container and its lot say, once the later words have cancelled the earlier. */
export type StandingInspections = {
  /** The latest failure that nothing has cleared. While there is one, nothing is extended. */
  readonly failed?: Inspection;
  /** The passed inspection that reaches furthest, for the limits of the lot. */
  readonly forLot?: Inspection;
  /** The passed inspection of this very container, opened, that reaches furthest: the only kind to extend an opened life. */
  readonly forOpened?: Inspection;
};

/**
 * Which inspections stand today. Those of another container say nothing of this one; those dated after today have not
 * happened. A failure cancels every pass up to and including its own day (the cautious order within a day). A failure of
 * the lot is cleared by a later pass of the lot or of this container; a failure of this container only by a later pass of
 * this container. A pass without a day until which it is valid clears a failure but extends nothing.
 *
 * Example: passed 1 Mar until 1 Sep, failed 1 Jun: `{ failed: the one of 1 Jun }`.
 */
export function standingInspections({ container, inspections }: Candidate, today: CalendarDate): StandingInspections {
  const heard = inspections.filter(
    (one) => one.on <= today && (one.scope === 'lot' || one.containerId === container.id),
  );
  const passes = heard.filter((one) => one.passed);
  const failures = heard.filter((one) => !one.passed);
  const cleared = (failure: Inspection) =>
    passes.some((pass) => pass.on > failure.on && (failure.scope === 'lot' || pass.scope === 'container'));

  const failed = failures.filter((one) => !cleared(one)).reduce<Inspection | undefined>(laterOf, undefined);
  if (failed) return { failed };

  const good = passes.filter((pass) => !failures.some((failure) => failure.on >= pass.on));
  const opened = container.opened;
  return {
    forLot: good.reduce<Inspection | undefined>(furtherOf, undefined),
    forOpened: opened
      ? good
          .filter((one) => one.scope === 'container' && one.on >= opened.on)
          .reduce<Inspection | undefined>(furtherOf, undefined)
      : undefined,
  };
}

function laterOf(best: Inspection | undefined, one: Inspection): Inspection {
  return best && best.on >= one.on ? best : one;
}

function furtherOf(best: Inspection | undefined, one: Inspection): Inspection | undefined {
  if (!one.validUntil) return best;
  return best?.validUntil && best.validUntil >= one.validUntil ? best : one;
}
