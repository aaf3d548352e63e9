import type { StepCaution, StepVerdict } from '@/shared/timeline/judge-timeline';

/** What of a step's verdict is otherwise than it was: its cautions that are new, and those that are no more. */
export type StepChange = {
  readonly changed: boolean;
  readonly came: readonly StepCaution[];
  readonly went: readonly StepCaution[];
};

/**
 * Compares a step's verdict with what it was, undefined where it was not judged: it changed where its word did, or any of
 * its cautions, also where one reason took the place of another or only its day is another. `went` leaves out what is
 * still said of the same thing with another day.
 *
 * Example: Stop for the demould and Care for a closed day, then Stop for the demould alone → changed, went: the closed day.
 */
export function stepChange(now: StepVerdict, was: StepVerdict | undefined): StepChange {
  const before = was?.cautions ?? [];
  const said = (cautions: readonly StepCaution[], one: StepCaution) =>
    cautions.some((each) => JSON.stringify(each) === JSON.stringify(one));
  const came = now.cautions.filter((one) => !said(before, one));
  const away = before.filter((one) => !said(now.cautions, one));
  return {
    changed: was?.word !== now.word || came.length > 0 || away.length > 0,
    came,
    went: away.filter((one) => !came.some((other) => subject(other) === subject(one))),
  };
}

const subject = (caution: StepCaution) => `${caution.code} ${'because' in caution ? caution.because : ''}`;
