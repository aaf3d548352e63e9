'use client';

import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { rejudgeAction } from '@/app/(shop)/jobs/[id]/actions';
import type { StockRejudged } from '@/app/(shop)/jobs/[id]/say-rejudged';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { type Move, shiftSteps, withMoves } from '@/shared/timeline/shift-steps';
import type { Step } from '@/shared/timeline/step';
import type { TimelineFacts } from '@/shared/timeline/timeline-facts';

/** Dragging sends many days; the book is asked once it rests. */
const REST_MS = 180;

/** What the book answered for a set of moves. */
type Answered = { readonly of: string; readonly stock?: readonly StockRejudged[]; readonly says?: string };

/**
 * The days of a time line as they would be: moved steps, not yet in the book. Steps are judged here at once, by the same
 * rules; what hangs on stock the book judges, and until it has answered `asking` is true.
 */
export function useDraft<S extends Step>(jobId: number, steps: readonly S[], facts: TimelineFacts, push: boolean) {
  const [to, setTo] = useState<Readonly<Record<number, CalendarDate>>>({});
  const [answered, setAnswered] = useState<Answered>();
  const moves = useMemo<Move[]>(
    () =>
      steps.flatMap(({ id, day, doneOn }) => {
        const next = to[id];
        return next === undefined || next === day || doneOn !== null ? [] : [{ stepId: id, from: day, to: next }];
      }),
    [steps, to],
  );
  const drafted = useMemo(() => withMoves(steps, moves) as S[], [steps, moves]);
  const wanted = moves.length === 0 ? '' : JSON.stringify(moves);
  const latest = useRef(wanted);
  latest.current = wanted;

  useEffect(() => {
    if (wanted === '') return;
    const timer = setTimeout(async () => {
      let next: Answered;
      try {
        const answer = await rejudgeAction({ jobId, moves: JSON.parse(wanted) });
        next = answer.ok ? { of: wanted, stock: answer.stock } : { of: wanted, says: answer.says };
      } catch {
        next = {
          of: wanted,
          says: 'The book cannot be reached, so what hangs on stock is not judged for these days yet. Move it again to ask again.',
        };
      }
      // An answer to days that were moved on from is no answer.
      if (latest.current === wanted) setAnswered(next);
    }, REST_MS);
    return () => clearTimeout(timer);
  }, [jobId, wanted]);

  /** Puts a step on a day, from the days as they stood at `base` where it is dragged, else from the draft. */
  const move = useCallback(
    (stepId: number, day: CalendarDate, landing: 'exact' | 'open', base: readonly S[] = drafted) => {
      const shifted = shiftSteps(base, { stepId, to: day, landing, push }, facts);
      if (!shifted.ok) return;
      const days = new Map(shifted.value.map((one) => [one.stepId, one.to]));
      setTo(Object.fromEntries(base.map(({ id, day: was }) => [id, days.get(id) ?? was])));
    },
    [drafted, facts, push],
  );
  const clear = useCallback(() => setTo({}), []);
  const answer = answered?.of === wanted && wanted !== '' ? answered : undefined;
  return { drafted, moves, move, clear, stock: answer?.stock, trouble: answer?.says, asking: wanted !== '' && !answer };
}
