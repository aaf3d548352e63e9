import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { hoursOf } from '@/app/_server/timeline/hours-of';
import { keepDayOfUse } from '@/app/_server/timeline/keep-day-of-use';
import { stepOf } from '@/app/_server/timeline/step-of';
import { timelineFactsOf } from '@/app/_server/timeline/timeline-facts-of';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { err, ok } from '@/shared/result/result';
import { cureHold } from '@/shared/timeline/cure-hold';

/** `reason`: why it was done although something still cures; kept where it was needed. */
export type FinishStep = { stepId: number; doneOn: CalendarDate; reason: string };

/**
 * Writes that a step is done, on a day that is not to come. What would be done before the pour's demould day, or delivered
 * before the finish is cured, is held until a reason is given; the reason stays in the book. A lift is done by being poured.
 */
export const finishStep: Command<FinishStep, { name: string; held: boolean; entryId: number }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'step-done', request: input }, async (pen) => {
    const found = await stepOf(pen.tx, input.stepId);
    if (!found.ok) return found;
    const { step, steps, jobId, dueOn } = found.value;
    const today = dateIn(pen.book.timeZone, pen.now);
    const { doneOn } = input;
    if (step.ofPour) return err({ code: 'lift-is-poured', facts: { step: step.name } });
    if (step.doneOn !== null) return err({ code: 'step-done-already', facts: { step: step.name, on: step.doneOn } });
    if (doneOn > today) return err({ code: 'received-in-the-future', field: 'doneOn' });
    const hold = cureHold(step, doneOn, steps, {
      ...(await timelineFactsOf(pen.tx, steps, { today, dueOn })),
      hours: await hoursOf(pen.tx, jobId, { now: pen.now, timeZone: pen.book.timeZone }),
    });
    const reason = input.reason.trim();
    if (hold && reason === '') {
      const { until, untilMinute, after, because } = hold;
      const facts = { step: step.name, until, untilMinute: untilMinute ?? null, after, because };
      return err({ code: 'cure-hold', field: 'reason', facts });
    }
    const answer = { name: step.name, held: hold !== undefined, entryId: pen.entryId };
    const why = hold ? `${step.name}, ${doneOn}, before ${hold.until}: ${reason}` : `${step.name}, ${doneOn}`;
    await pen.enter({ jobId, why }, answer);
    await pen.tx.step.update({
      where: { id: step.id },
      data: { doneOn, doneById: pen.entryId },
      select: { id: true },
    });
    await keepDayOfUse(pen.tx, jobId);
    return ok(answer);
  });
