import { sayDate } from '@/shared/calendar/say-date';
import { type SayContext, sayReason } from '@/shared/shelf-life/say-reason';
import type { ReasonCode } from '@/shared/shelf-life/types/reason';
import type { Verdict } from '@/shared/shelf-life/types/verdict';

/** When the worst reason is one of these, the two dates say more than the reason does. */
const TOLD_BY_DATES: readonly ReasonCode[] = ['past-limit', 'limit-near', 'house-default'];

/**
 * The line under the word. `Good to 12 Dec. Needed on 19 Dec.` when dates decide or nothing is in the way, `Judged for
 * today, 25 Nov.` in place of a day that has passed; otherwise the
 * worst reason; `Keeps. No limit is stated.` for a material without one.
 */
export function sayVerdict({ reasons, governing, dayOfUse, judgedFor }: Verdict, context: SayContext = {}): string {
  const worst = reasons[0];
  if (worst && !(governing && TOLD_BY_DATES.includes(worst.code))) return sayReason(worst, context);
  if (!governing) return 'Keeps. No limit is stated.';
  const { today, order = 'day-first' } = context;
  const day = sayDate(judgedFor, { order, today });
  const needed = dayOfUse < judgedFor ? `Judged for today, ${day}.` : `Needed on ${day}.`;
  return `Good to ${sayDate(governing.lastGoodDay, { order, today })}. ${needed}`;
}
