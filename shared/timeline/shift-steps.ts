import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { err, ok, type Result } from '@/shared/result/result';
import { openDay } from '@/shared/timeline/closed-days';
import { linksOf } from '@/shared/timeline/links-of';
import { isAttended, type Step } from '@/shared/timeline/step';
import type { TimelineFacts } from '@/shared/timeline/timeline-facts';

export type Shift = {
  readonly stepId: number;
  readonly to: CalendarDate;
  /** `open`: on a closed day it goes on to the next open one, or back to the last where it is moved earlier. */
  readonly landing: 'exact' | 'open';
  /** Whether what waits for it is pushed along; never pulled. */
  readonly push: boolean;
};

export type Move = { readonly stepId: number; readonly from: CalendarDate; readonly to: CalendarDate };

export type ShiftError = { readonly code: 'no-such-step' | 'done-already' };

/**
 * What moves when a step is put on another day: the step itself and, pushed along, whatever waits for it and would come too
 * soon, each onto the first open day that keeps its rule; what nobody attends may fall on a closed day. Steps that are done
 * stay. Nothing is pulled forward, and what was too early before for another reason is left, to be judged. An empty list
 * where nothing changes. Example: a lift moved from Thursday to Friday, coated again after 24 hours, weekend closed: the
 * next lift goes from Friday to Monday.
 */
export function shiftSteps(
  steps: readonly Step[],
  { stepId, to, landing, push }: Shift,
  facts: Pick<TimelineFacts, 'pours' | 'finishes' | 'closed'>,
): Result<readonly Move[], ShiftError> {
  const step = steps.find(({ id }) => id === stepId);
  if (!step) return err({ code: 'no-such-step' });
  if (step.doneOn !== null) return err({ code: 'done-already' });
  const direction = to < step.day ? 'back' : 'on';
  const lands = landing === 'open' && isAttended(step) ? openDay(to, facts.closed, direction) : to;
  const days = new Map<number, CalendarDate>([[stepId, lands]]);
  if (push) {
    const links = linksOf(steps, facts);
    const queue = [stepId];
    // Each pass only moves days on, along rules that lead one way, so it ends; the count is a stop for a broken plan.
    for (let left = 1000; queue.length > 0 && left > 0; left -= 1) {
      const from = queue.shift();
      for (const { before, after, leastDays } of links) {
        if (before.id !== from || after.doneOn !== null || after.id === stepId) continue;
        const earliest = addDays(days.get(before.id) ?? before.day, leastDays);
        if ((days.get(after.id) ?? after.day) >= earliest) continue;
        days.set(after.id, isAttended(after) ? openDay(earliest, facts.closed) : earliest);
        queue.push(after.id);
      }
    }
  }
  return ok(
    steps.flatMap(({ id, day }) => {
      const next = days.get(id);
      return next === undefined || next === day ? [] : [{ stepId: id, from: day, to: next }];
    }),
  );
}

/** The steps with the moves made. */
export function withMoves(steps: readonly Step[], moves: readonly Pick<Move, 'stepId' | 'to'>[]): Step[] {
  const to = new Map(moves.map((move) => [move.stepId, move.to]));
  return steps.map((step) => ({ ...step, day: to.get(step.id) ?? step.day }));
}
