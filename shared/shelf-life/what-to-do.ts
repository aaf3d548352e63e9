import { type AdviceContext, adviceOnCondition } from '@/shared/shelf-life/advice-on-condition';
import type { Reason } from '@/shared/shelf-life/types/reason';

/**
 * What to do about a reason, in one or two short sentences; undefined where there is nothing to do but know it. Advice on
 * material in the tin (crystals, haze, settling, darkening, thawing) is that of its kind, `adviceOnCondition`; the data
 * sheet of the material outranks it.
 */
export function whatToDo(reason: Reason, context: AdviceContext): string | undefined {
  switch (reason.code) {
    case 'recalled':
      return 'Do not use it. Set it apart and follow the recall.';
    case 'quarantine':
      return 'Leave it where it is until it is inspected and released.';
    case 'on-hold':
      return `Release ${reason.scope === 'lot' ? 'the lot' : 'it'} by a recorded decision before it is used.`;
    case 'gelled':
    case 'skinned-through':
    case 'frozen-ruined':
      return 'Do not use it. Write it off and dispose of it as its safety data sheet says.';
    case 'wrong-system':
      return 'Take parts A and B of the same system.';
    case 'pair-failed':
      return 'Do not mix these two lots. Take another lot of either part; a later test pour of the two that passes clears this.';
    case 'empty':
      return 'If there is some left, count it first.';
    case 'past-limit':
      return reason.weight === 'stop'
        ? 'Take a fresher container, or pass a test pour and write down why.'
        : 'Pour a test first, and keep it out of a client’s piece.';
    case 'date-unknown':
      return 'Look for a date on the container, or inspect it and record the outcome.';
    case 'inspection-failed':
      if (reason.together)
        return 'Which of the two was bad is not known. A test pour of it with a third lot that passes clears it.';
      return 'Do not rely on it. A later passed inspection clears this.';
    case 'facts-contradict':
      return 'Check the dates against the container and correct the wrong one.';
    case 'day-of-use-past':
      return 'Give the day it is really used on.';
    case 'short':
      return 'Have the rest at hand before you start.';
    case 'other-lot':
      return 'Its colour may differ. Take a container of that lot if there is one, else try both side by side first.';
    case 'extended-by-inspection':
      return 'Look at it again on the day and stir a small test first.';
    case 'limit-near':
      return 'If the day slips, check again.';
    case 'opened-life-unknown':
      return 'Find the opened life on the label or data sheet, or inspect this container.';
    case 'opened-day-guessed':
      return 'Write the opened day on the container next time; pour a small test if it matters.';
    case 'date-unconfirmed':
      return 'Read the date on the container and confirm it.';
    case 'crystals':
    case 'haze':
    case 'settled':
    case 'darkened':
    case 'frozen-thaw':
      return adviceOnCondition(reason.code, context);
    case 'stored-out-of-range':
      return 'Its dates assume stated storage. Look for crystals, lumps or thickening, and try a little of it first.';
    case 'inspection-does-not-extend':
      return undefined;
    case 'house-default':
      return 'If the label or data sheet says otherwise, enter that.';
  }
}
