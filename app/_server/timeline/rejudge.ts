import type { StockVerdict } from '@/app/_server/timeline/judge-stock';
import { judgeStock } from '@/app/_server/timeline/judge-stock';
import type { Timeline } from '@/app/_server/timeline/read-timeline';
import type { VerdictWord } from '@/shared/shelf-life/types/verdict';
import { judgeTimeline, type StepVerdict } from '@/shared/timeline/judge-timeline';
import { type Move, withMoves } from '@/shared/timeline/shift-steps';

/** A verdict after the moves, and what it was before; undefined where it was not there. */
type Rejudged<V> = { readonly now: V; readonly was: VerdictWord | undefined; readonly changed: boolean };

export type Rejudgement = {
  readonly steps: readonly Rejudged<StepVerdict>[];
  readonly stock: readonly Rejudged<StockVerdict>[];
};

/**
 * Judges a time line again as if its steps stood on other days: every verdict as it would be, beside what it is now. It
 * changed where its word did, or where it was not there before, as another container that is best for the new day.
 */
export function rejudge(
  { steps, facts, stock, verdicts, stockVerdicts }: Timeline,
  moves: readonly Pick<Move, 'stepId' | 'to'>[],
): Rejudgement {
  const moved = withMoves(steps, moves);
  const stepWas = new Map(verdicts.map(({ stepId, word }) => [stepId, word]));
  const stockWas = new Map(stockVerdicts.map(({ key, word }) => [key, word]));
  const beside = <V extends { word: VerdictWord }>(now: V, was: VerdictWord | undefined): Rejudged<V> => ({
    now,
    was,
    changed: was !== now.word,
  });
  return {
    steps: judgeTimeline(moved, facts).map((now) => beside(now, stepWas.get(now.stepId))),
    stock: judgeStock(stock, moved).map((now) => beside(now, stockWas.get(now.key))),
  };
}
