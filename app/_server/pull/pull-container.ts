import type { Command } from '@/app/_server/act';
import { refuseClosedJob } from '@/app/_server/jobs/refuse-closed-job';
import { momentOf, refuseDay } from '@/app/_server/ledger/happened-on';
import { type Pen, writeEntry } from '@/app/_server/ledger/write-entry';
import { refusePromised } from '@/app/_server/promises/refuse-promised';
import { spendPromise } from '@/app/_server/promises/spend-promise';
import type { Ask } from '@/app/_server/pull/ask';
import { judgeAsk } from '@/app/_server/pull/judge-ask';
import { overrideFor } from '@/app/_server/pull/override-for';
import { pairedPart } from '@/app/_server/pull/paired-part';
import { weighingOf } from '@/app/_server/pull/weighing-of';
import type { Refusal } from '@/app/_server/refusal';
import { loadContainer } from '@/app/_server/stock/load-container';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { writeOpened } from '@/shared/ledger/opened';
import { err, ok, type Result } from '@/shared/result/result';
import { isWorseWord } from '@/shared/shelf-life/is-worse-word';
import type { Purpose, VerdictWord } from '@/shared/shelf-life/types/verdict';

/** Takes an amount out of a container for a job, on the verdict the asker has seen. */
export type PullContainer = Ask & {
  /** What the screen says is taken; with `weighed`, checked against what the weights say. */
  asked: number;
  /** The container on the scale, where the amount was found by weighing: computed again here, and kept in words. */
  weighed?: { beforeMg?: number; afterMg: number };
  /** The day it was taken, where that is not today: not after today, not before the container arrived. */
  happenedOn?: CalendarDate;
  /** The word on the asker's screen; a worse one now is shown before anything is written. */
  seen: VerdictWord;
  override?: { reason: string; inspectionId: number };
};

export type Pulled = {
  /** The entry it was written as: what undoing it reverses. */
  entryId: number;
  label: string;
  left: number;
  word: VerdictWord;
  overridden: boolean;
  /** It was sealed until now. */
  opened: boolean;
  /** The day it was taken, and opened where it was sealed. */
  takenOn: CalendarDate;
};

/**
 * Writes a pull: the verdict judged again on the book as it stands, the amount, the opening of a sealed container, and
 * an override with the test pour it rests on. It uses up what was promised to the job; what is promised to others stays.
 * All or nothing. The day of use is today or later, also for what was taken on
 * an earlier day: nothing is judged for a day on which its limits were still ahead.
 */
export const pullContainer: Command<PullContainer, Pulled> = async (book, by, input) => {
  const happenedAt = await momentOf(book, by.now, input.happenedOn);
  return writeEntry(book, { ...by, kind: 'pulled', request: input, happenedAt }, async (pen) => {
    const today = dateIn(pen.book.timeZone, pen.now);
    const takenOn = input.happenedOn ?? today;
    if (input.dayOfUse < today) return err({ code: 'day-in-the-past', field: 'dayOfUse' });
    const line = await loadContainer(pen.tx, input.label);
    if (!line) return err({ code: 'not-found', facts: { label: input.label } });
    const impossible = refuseDay(pen, line, input.happenedOn);
    if (impossible) return err(impossible);
    const job = await jobOf(pen, input);
    if (!job.ok) return job;
    if (!Number.isSafeInteger(input.asked) || input.asked <= 0)
      return err({ code: 'not-an-exact-amount', field: 'asked' });
    if (line.left === 0) return err({ code: 'already-empty', facts: { label: line.label } });
    const weighed = await weighingOf(pen, line, input);
    if (!weighed.ok) return weighed;
    if (input.asked > line.left) {
      return err({
        code: 'not-enough-left',
        field: 'asked',
        facts: { label: line.label, left: line.left, asked: input.asked, unit: line.unit },
      });
    }
    const promised = await refusePromised(pen.tx, {
      ...input,
      stockId: line.stockId,
      taken: input.asked,
      left: line.left,
    });
    if (promised) return err({ ...promised, field: 'asked' });
    const paired = await pairedPart(pen.tx, line, input);
    if (!paired.ok) return paired;
    const verdict = judgeAsk(line, { ...input, purpose: job.value.purpose }, { today, pairedWith: paired.value });
    if (isWorseWord(verdict.word, input.seen))
      return err({ code: 'verdict-changed', facts: { label: line.label, word: verdict.word } });
    const overridden = await overrideFor(pen, line, verdict, input, { today, pairedWith: paired.value });
    if (!overridden.ok) return overridden;
    const { opened } = line.candidate.container;
    const answer: Pulled = {
      entryId: pen.entryId,
      label: line.label,
      left: line.left - input.asked,
      word: verdict.word,
      overridden: overridden.value !== undefined,
      opened: opened === undefined,
      takenOn,
    };
    await pen.enter(
      {
        jobId: input.jobId,
        productId: line.productId,
        why: [overridden.value?.reason, weighed.value].filter(Boolean).join('; '),
        verdict: verdict.word,
        verdictJson: JSON.stringify({
          purpose: job.value.purpose,
          asked: input.asked,
          verdict: { ...verdict, instead: undefined },
        }),
        overrideInspectionId: overridden.value?.inspectionId,
      },
      answer,
    );
    const moved = await pen.move(line.stockId, {
      quantityDelta: -input.asked,
      // It was open on the day something was taken out of it, whatever was thought before.
      opened: opened && opened.on <= takenOn ? undefined : writeOpened({ on: takenOn, sureness: 'known' }),
    });
    if (!moved.ok) return moved;
    await spendPromise(pen, { jobId: input.jobId, stockId: line.stockId, taken: input.asked });
    return ok(answer);
  });
};

async function jobOf(pen: Pen, input: PullContainer): Promise<Result<{ purpose: Purpose }, Refusal>> {
  if (input.jobId === undefined) return ok({ purpose: input.purpose });
  const job = await pen.tx.job.findUnique({
    where: { id: input.jobId },
    select: { name: true, purpose: true, state: true },
  });
  if (!job) return err({ code: 'not-found', field: 'jobId' });
  const closed = refuseClosedJob(job);
  return closed ? err(closed) : ok({ purpose: job.purpose as Purpose });
}
