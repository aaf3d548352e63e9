import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { freeJob, heldByJob } from '@/app/_server/promises/free-job';
import { hoursOf } from '@/app/_server/timeline/hours-of';
import { readSteps } from '@/app/_server/timeline/read-steps';
import { timelineFactsOf } from '@/app/_server/timeline/timeline-facts-of';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { err, ok } from '@/shared/result/result';
import { cureHold } from '@/shared/timeline/cure-hold';
import { checkStage, type JobStage, stateOfStage } from '@/shared/timeline/job-stage';

/** `reason`: why it goes on although something still cures; kept beside the entry wherever it was given. */
export type SetStage = { jobId: number; stage: JobStage; reason: string };

/** `freed`: what was promised and not used. */
export type StageSet = { jobId: number; stage: JobStage; freed: string[] };

/** What a stage asks of the cure: what is ready may be put together, what is delivered leaves the shop. */
const ASKS_OF_CURE: Partial<Record<JobStage, 'assembly' | 'delivery'>> = { ready: 'assembly', delivered: 'delivery' };

/**
 * Moves a job to another stage, as a step of its history. A jump over what has to happen between is refused; so is one
 * past a cure that is not over, until a reason is given. Delivering or dropping it frees what was promised and not used.
 */
export const setStage: Command<SetStage, StageSet> = (book, by, input) =>
  writeEntry<StageSet>(book, { ...by, kind: 'job-stage-set', request: input }, async (pen) => {
    const { jobId, stage } = input;
    const job = await pen.tx.job.findUnique({ where: { id: jobId }, select: { name: true, stage: true, dueOn: true } });
    if (!job) return err({ code: 'not-found' });
    const from = job.stage as JobStage;
    const checked = checkStage(from, stage);
    if (!checked.ok) {
      if (checked.error.code === 'no-change') return err({ code: 'changes-nothing' });
      return err({ code: 'stage-jump', field: 'stage', facts: { job: job.name, from, to: stage } });
    }
    const asks = ASKS_OF_CURE[stage];
    // Back from the end to put something right asks nothing of the cure.
    const hold =
      asks && from !== 'delivered'
        ? await holdOn(pen.tx, jobId, asks, {
            today: dateIn(pen.book.timeZone, pen.now),
            dueOn: job.dueOn as CalendarDate | null,
            now: pen.now,
            timeZone: pen.book.timeZone,
          })
        : undefined;
    const reason = input.reason.trim();
    if (hold && reason === '') {
      const { until, untilMinute, after, because } = hold;
      const facts = { step: job.name, until, untilMinute: untilMinute ?? null, after, because };
      return err({ code: 'cure-hold', field: 'reason', facts });
    }
    const state = stateOfStage(stage);
    const held = state === 'open' ? undefined : await heldByJob(pen.tx, jobId);
    const answer = { jobId, stage, freed: held?.labels ?? [] };
    await pen.tx.job.update({ where: { id: jobId }, data: { stage, state }, select: { id: true } });
    const why = `${from} → ${stage}${hold ? `, before ${hold.until}` : ''}${reason ? `: ${reason}` : ''}`;
    await pen.enter({ jobId, why }, answer);
    const refused = held && (await freeJob(pen, held));
    return refused ? err(refused) : ok(answer);
  });

async function holdOn(
  tx: Parameters<typeof timelineFactsOf>[0] & Parameters<typeof readSteps>[0] & Parameters<typeof hoursOf>[0],
  jobId: number,
  kind: 'assembly' | 'delivery',
  at: { today: CalendarDate; dueOn: CalendarDate | null; now: Date; timeZone: string },
) {
  const steps = await readSteps(tx, jobId);
  return cureHold({ kind, partId: null, pourId: null }, at.today, steps, {
    ...(await timelineFactsOf(tx, steps, at)),
    hours: await hoursOf(tx, jobId, at),
  });
}
