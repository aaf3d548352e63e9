import type { AllocationAsk } from '@/shared/allocation/allocation-ask';
import { err, ok, type Result } from '@/shared/result/result';

export type AskError =
  | { readonly code: 'same-id-twice'; readonly of: 'need' | 'container'; readonly id: string }
  /** A need below 1, a content, promise or price below 0, or anything that is not whole. */
  | { readonly code: 'amount-out-of-range'; readonly of: 'need' | 'container'; readonly id: string }
  /** A day to be good to that comes before the day of use. */
  | { readonly code: 'good-to-before-use'; readonly id: string }
  | { readonly code: 'pair-unknown'; readonly id: string; readonly pairsWith: string };

/**
 * Whether an ask can be worked on: ids told apart, whole amounts, days in order, pairs that are there. Promises may be more than is left:
 * then nothing of that container is free. Fails with the first thing that is wrong, needs before containers.
 */
export function checkAsk(ask: AllocationAsk): Result<AllocationAsk, AskError> {
  const needIds = new Set<string>();
  for (const { id, amount, on, goodTo = on } of ask.needs) {
    if (needIds.has(id)) return err({ code: 'same-id-twice', of: 'need', id });
    if (goodTo < on) return err({ code: 'good-to-before-use', id });
    if (!isCount(amount, 1)) return err({ code: 'amount-out-of-range', of: 'need', id });
    needIds.add(id);
  }
  for (const { id, pairsWith } of ask.needs) {
    if (pairsWith !== undefined && !needIds.has(pairsWith)) return err({ code: 'pair-unknown', id, pairsWith });
  }
  const containerIds = new Set<string>();
  for (const { id, left, promisedTo = [], price = 0 } of ask.containers) {
    if (containerIds.has(id)) return err({ code: 'same-id-twice', of: 'container', id });
    const amounts = [left, price, ...promisedTo.map(({ amount }) => amount)];
    if (!amounts.every((one) => isCount(one, 0))) return err({ code: 'amount-out-of-range', of: 'container', id });
    containerIds.add(id);
  }
  return ok(ask);
}

const isCount = (amount: number, least: number) => Number.isSafeInteger(amount) && amount >= least;
