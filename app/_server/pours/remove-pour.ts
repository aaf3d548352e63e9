import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { isBegun } from '@/app/_server/pours/lift-rows';
import { readPour } from '@/app/_server/pours/read-pour';
import { takePlanOff } from '@/app/_server/pours/take-plan-off';
import { keepDayOfUse } from '@/app/_server/timeline/keep-day-of-use';
import { err, ok } from '@/shared/result/result';

/** Takes a pour off a job before anything of it was weighed, with its steps and needs. */
export const removePour: Command<{ pourId: number; why: string }, { jobId: number; name: string }> = (
  book,
  by,
  input,
) =>
  writeEntry(book, { ...by, kind: 'pour-removed', request: input }, async (pen) => {
    const pour = await readPour(pen.tx, input.pourId);
    if (!pour) return err({ code: 'pour-gone' });
    if (pour.lifts.some(isBegun)) {
      return err({ code: 'pour-begun', facts: { name: pour.name, system: pour.system.name } });
    }
    const why = input.why.trim();
    if (why === '') return err({ code: 'reason-needed', field: 'why' });
    const answer = { jobId: pour.job.id, name: pour.name };
    await pen.enter({ jobId: pour.job.id, why: `${pour.name}: ${why}` }, answer);
    await takePlanOff(pen, pour);
    await keepDayOfUse(pen.tx, pour.job.id);
    return ok(answer);
  });
