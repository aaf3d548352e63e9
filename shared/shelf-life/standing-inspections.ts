import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { heardInspections } from '@/shared/shelf-life/heard-inspections';
import type { Candidate } from '@/shared/shelf-life/types/candidate';
import type { Inspection } from '@/shared/shelf-life/types/inspection';
import type { PairedPart } from '@/shared/shelf-life/types/reason';

/** What the inspections of a container and its lot say, once the later words have cancelled the earlier. */
export type StandingInspections = {
  /** The latest failure that nothing has cleared. While there is one, nothing is extended. */
  readonly failed?: Inspection;
  /** The latest failed test pour of this very pair that no pass of the pair has cleared. Nothing is extended then either. */
  readonly failedTogether?: Inspection;
  /** The passed inspection that reaches furthest, for the limits of the lot. */
  readonly forLot?: Inspection;
  /** The passed inspection of this very container, opened, that reaches furthest: the only kind to extend an opened life. */
  readonly forOpened?: Inspection;
};

/**
 * Which inspections stand today, for the container by itself or as it is mixed with `pairedWith`. Those of another
 * container say nothing of this one; those dated after today have not happened.
 *
 * - Later is by the day it was made; within a day, by the order in which they were written. A failure cancels every pass
 *   before it, and a pass clears only failures before it.
 * - A failure of the lot is cleared by a pass of the lot or of this container; a failure of this container only by a pass
 *   of this container, and so no sister's.
 * - Two lots that were tried together and passed say nothing of either with a third: such a pass extends only where
 *   `pairedWith` is the other half, and only while neither half was found bad since.
 * - Two lots that failed together are not to be mixed until they passed together, whatever either passed with a third.
 *   Since nobody knows which it was, the failure also speaks against each by itself, until that one passed with anything.
 * - A pass without a day until which it is valid clears a failure but extends nothing.
 *
 * Example: passed 1 Mar until 1 Sep, failed 1 Jun: `{ failed: the one of 1 Jun }`.
 */
export function standingInspections(
  candidate: Pick<Candidate, 'container' | 'inspections'>,
  today: CalendarDate,
  pairedWith?: Pick<PairedPart, 'trials'>,
): StandingInspections {
  const heard = heardInspections(candidate, today);
  const trials = new Map(pairedWith?.trials?.map((each) => [each.id, each]));
  const trialOf = (one: Inspection) => one.together && trials.get(one.together.trial);
  const isLater = (one: Inspection, than: Inspection) => heard.indexOf(one) > heard.indexOf(than);
  const isOfOne = (one: Inspection) => one.scope === 'container' || trialOf(one)?.scope === 'container';
  const clears = (pass: Inspection, failure: Inspection) =>
    isLater(pass, failure) && (isOfOne(pass) || !isOfOne(failure));
  const passes = heard.filter((one) => one.passed);
  const failures = heard.filter((one) => !one.passed);

  const together = failures.filter((one) => trialOf(one));
  const failedTogether = together
    .filter((failure) => !passes.some((pass) => trialOf(pass) && clears(pass, failure)))
    .at(-1);
  const failed = failures
    .filter((failure) => !trialOf(failure))
    .filter((failure) => !passes.some((pass) => (failure.together || !pass.together) && clears(pass, failure)))
    .at(-1);
  if (failed || failedTogether) return { failed, failedTogether };

  const ownFailures = failures.filter((one) => !one.together);
  const good = passes.filter((pass) => {
    if (pass.together && !trialOf(pass)?.stands) return false;
    const against = pass.together ? [...ownFailures, ...together] : ownFailures;
    return !against.some((failure) => isLater(failure, pass));
  });
  const opened = candidate.container.opened;
  return {
    forLot: good.reduce<Inspection | undefined>(furtherOf, undefined),
    forOpened: opened
      ? good
          .filter((one) => one.scope === 'container' && one.on >= opened.on)
          .reduce<Inspection | undefined>(furtherOf, undefined)
      : undefined,
  };
}

function furtherOf(best: Inspection | undefined, one: Inspection): Inspection | undefined {
  if (!one.validUntil) return best;
  return best?.validUntil && best.validUntil >= one.validUntil ? best : one;
}
