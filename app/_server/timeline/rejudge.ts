import { judgeStock, type StockVerdict } from '@/app/_server/timeline/judge-stock';
import type { Timeline } from '@/app/_server/timeline/read-timeline';
import type { VerdictWord } from '@/shared/shelf-life/types/verdict';
import { judgeTimeline, type StepVerdict } from '@/shared/timeline/judge-timeline';
import { type Move, withMoves } from '@/shared/timeline/shift-steps';
import { type StepChange, stepChange } from '@/shared/timeline/step-change';

/** What of a verdict on stock is otherwise: it was not there, its word, its reason, how much it is about, or its day. */
type StockChange = 'new' | 'word' | 'reason' | 'amount' | 'day';

/** A verdict after the moves, and the word it had before; undefined where it was not there. */
type RejudgedStep = StepChange & { readonly now: StepVerdict; readonly was: VerdictWord | undefined };
export type RejudgedStock = {
  readonly now: StockVerdict;
  readonly was: StockVerdict | undefined;
  /** The weightiest of what is otherwise; null where nothing is. */
  readonly change: StockChange | null;
};

export type Rejudgement = {
  readonly steps: readonly RejudgedStep[];
  readonly stock: readonly RejudgedStock[];
  /** Verdicts that are no more: a tin that is not the best for the new day, what is short no longer. */
  readonly gone: readonly StockVerdict[];
};

/**
 * Judges a time line again as if its steps stood on other days: every verdict as it would be, beside what it is now, and
 * those that go away. Named is whatever is otherwise: the word, the reason for it, the amount, or only the day.
 */
export function rejudge(
  { steps, facts, stock, verdicts, stockVerdicts }: Timeline,
  moves: readonly Pick<Move, 'stepId' | 'to'>[],
): Rejudgement {
  const moved = withMoves(steps, moves);
  const stepWas = new Map(verdicts.map((verdict) => [verdict.stepId, verdict]));
  const stockWas = new Map(stockVerdicts.map((verdict) => [verdict.key, verdict]));
  const stockNow = judgeStock(stock, moved);
  const still = new Set(stockNow.map(({ key }) => key));
  return {
    steps: judgeTimeline(moved, facts).map((now) => {
      const was = stepWas.get(now.stepId);
      return { now, was: was?.word, ...stepChange(now, was) };
    }),
    stock: stockNow.map((now) => {
      const was = stockWas.get(now.key);
      return { now, was, change: changeOf(now, was) };
    }),
    gone: stockVerdicts.filter(({ key }) => !still.has(key)),
  };
}

function changeOf(now: StockVerdict, was: StockVerdict | undefined): StockChange | null {
  if (was === undefined) return 'new';
  if (now.word !== was.word) return 'word';
  if (reasonOf(now) !== reasonOf(was)) return 'reason';
  if (amountOf(now) !== amountOf(was)) return 'amount';
  return now.day === was.day ? null : 'day';
}

/** Why it has its word, without the days that move with the step. */
function reasonOf(verdict: StockVerdict): string {
  if (verdict.of === 'short') return verdict.of;
  if (verdict.of === 'piece') return `${verdict.why} ${verdict.dryOn}`;
  const { reasons, governing } = verdict.verdict;
  return [...reasons.map(({ code }) => code), governing?.basis, governing?.lastGoodDay].join(' ');
}

const amountOf = (verdict: StockVerdict): number => (verdict.of === 'piece' ? 1 : verdict.amount);
