import { daysBetween } from '@/shared/calendar/days-between';
import { governingLimit } from '@/shared/shelf-life/governing-limit';
import { judgedDay } from '@/shared/shelf-life/judged-day';
import { limitsOf } from '@/shared/shelf-life/limits-of';
import { overrideOf } from '@/shared/shelf-life/override-of';
import { rankReasons } from '@/shared/shelf-life/rank-reasons';
import { reasonsOfCondition } from '@/shared/shelf-life/reasons-of-condition';
import { reasonsOfDates } from '@/shared/shelf-life/reasons-of-dates';
import { reasonsOfHold } from '@/shared/shelf-life/reasons-of-hold';
import { reasonsOfPairing } from '@/shared/shelf-life/reasons-of-pairing';
import { reasonsOfTrials } from '@/shared/shelf-life/reasons-of-trials';
import type { Reason } from '@/shared/shelf-life/types/reason';
import type { JudgeInput, Verdict } from '@/shared/shelf-life/types/verdict';

/**
 * The verdict on one container by itself; `judge` adds what to take instead. The word is the worst weight among the
 * reasons; a note alone leaves it at Use. Limits are compared with the day of use, or with today where that day has passed
 * (`judgedDay`). An empty container is a stop that cannot be overridden, since there is nothing
 * to pour; less left than asked asks for care, since a job that runs short half way is a loss. Throws when an amount is
 * not a whole count of at least 0.
 */
export function assess(input: JudgeInput): Verdict {
  const limits = limitsOf(input);
  const governing = governingLimit(limits);
  const reasons = rankReasons([
    ...reasonsOfHold(input),
    ...reasonsOfCondition(input),
    ...reasonsOfPairing(input.policy.system, input.pairedWith),
    ...reasonsOfTrials(input),
    ...reasonsOfDates(input, limits),
    ...reasonsOfAmount(input.container.left, input.asked),
  ]);
  const worst = reasons[0]?.weight;
  const judgedFor = judgedDay(input);
  return {
    word: worst === 'stop' || worst === 'care' ? worst : 'use',
    dayOfUse: input.dayOfUse,
    judgedFor,
    limits,
    governing,
    daysLeft: governing && daysBetween(judgedFor, governing.lastGoodDay),
    reasons,
    override: overrideOf(reasons),
  };
}

function reasonsOfAmount(left: number, asked: number | undefined): Reason[] {
  for (const amount of [left, asked ?? 0]) {
    if (!Number.isSafeInteger(amount) || amount < 0) {
      throw new RangeError(`An amount must be a whole count of at least 0, got ${amount}`);
    }
  }
  if (left === 0) return [{ code: 'empty', weight: 'stop' }];
  return asked !== undefined && asked > left ? [{ code: 'short', weight: 'care', left, asked }] : [];
}
