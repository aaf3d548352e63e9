import type { Command } from '@/app/_server/act';
import { partOfJob } from '@/app/_server/jobs/part-of-job';
import { type Pen, type Written, writeEntry } from '@/app/_server/ledger/write-entry';
import type { KeptPlan, PourFigures } from '@/app/_server/pours/kept-plan';
import type { KeptRiver } from '@/app/_server/pours/kept-river';
import { isBegun, type LiftLine } from '@/app/_server/pours/lift-rows';
import { pouredOf } from '@/app/_server/pours/poured-of';
import { type PourLine, readPour } from '@/app/_server/pours/read-pour';
import { refusePlan } from '@/app/_server/pours/refuse-plan';
import { type RiverForPour, riverForPour, type SearchedRiver, searchRiver } from '@/app/_server/pours/river-for-pour';
import { newestSheet } from '@/app/_server/pours/sheet-of';
import { takePlanOff } from '@/app/_server/pours/take-plan-off';
import type { Refusal } from '@/app/_server/refusal';
import { keepDayOfUse } from '@/app/_server/timeline/keep-day-of-use';
import { openJob } from '@/app/_server/timeline/open-job';
import { readClosedDays } from '@/app/_server/timeline/read-closed-days';
import { STANDS } from '@/app/_server/timeline/standing';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { beyondTheSheet } from '@/shared/pour/beyond-the-sheet';
import { type PlannedLift, type PourPlan, planPour } from '@/shared/pour/plan-pour';
import { err, ok, type Result } from '@/shared/result/result';
import { closedOn } from '@/shared/timeline/closed-days';

export type KeepPour = {
  jobId: number;
  /** The pour that is planned anew: what was weighed or poured of it stays. */
  pourId?: number;
  /** The part it is for, null for the whole job; left out, as it was. */
  partId?: number | null;
  systemId: number;
  name: string;
  figures: PourFigures;
  /** Where it is a river that was searched for: the first of its fills. */
  river?: RiverForPour;
  first: CalendarDate;
  /** Why it goes beyond the sheet. */
  reason: string;
  /** The form as it was typed, to be opened again. */
  typed: Record<string, string>;
};

export type PourKept = { entryId: number; jobId: number; pourId: number; name: string };

/**
 * Keeps a pour as it is planned here, on the sheet and the closed days of the book: the pour, its lifts, their steps and
 * their needs, in one entry. Planned anew, it takes the place of the pour before, and only what was not begun is replaced.
 */
export const keepPour: Command<KeepPour, PourKept> = async (book, by, input) => {
  const kind = input.pourId === undefined ? 'pour-planned' : 'pour-changed';
  const searched = await searchRiver(book, input.river);
  const written = await writeEntry(book, { ...by, kind, request: input }, (pen) => keep(pen, input, searched));
  // The number of a pour is known only once it is written: the first answer of a replay is looked up.
  if (!written.ok || written.value.answer.pourId > 0) return written;
  const { answer } = written.value;
  const pour = await book.read.pour.findFirst({ where: { entryId: answer.entryId }, select: { id: true } });
  return ok<Written<PourKept>>({ ...written.value, answer: { ...answer, pourId: pour?.id ?? 0 } });
};

async function keep(pen: Pen, input: KeepPour, searched: SearchedRiver): Promise<Result<PourKept, Refusal>> {
  const job = await openJob(pen.tx, input.jobId);
  if (!job.ok) return job;
  const name = input.name.trim();
  if (name === '') return err({ code: 'pour-needs-name', field: 'name' });
  const twin = await pen.tx.pour.findFirst({
    where: { jobId: input.jobId, name, NOT: { id: input.pourId ?? 0 }, ...STANDS },
    select: { id: true },
  });
  if (twin) return err({ code: 'name-taken', field: 'name', facts: { name } });
  const system = await pen.tx.resinSystem.findUnique({ where: { id: input.systemId }, select: { name: true } });
  if (!system) return err({ code: 'not-found', field: 'systemId' });
  const sheet = (await newestSheet(pen.tx, input.systemId))?.facts;
  if (!sheet) return err({ code: 'no-sheet-yet', field: 'systemId', facts: { system: system.name } });
  const today = dateIn(pen.book.timeZone, pen.now);
  if (input.first < today) return err({ code: 'day-in-the-past', field: 'first' });

  const before = input.pourId === undefined ? undefined : await readPour(pen.tx, input.pourId);
  if (input.pourId !== undefined && before?.job.id !== input.jobId) return err({ code: 'pour-gone' });
  const part = await partOfJob(
    pen.tx,
    input.jobId,
    input.partId === undefined ? (before?.partId ?? null) : input.partId,
  );
  if (!part.ok) return part;
  const partId = part.value?.id ?? null;
  const stays = (before?.lifts ?? []).filter(isBegun);
  if (before && stays.length > 0 && before.system.id !== input.systemId) {
    return err({ code: 'pour-begun', field: 'systemId', facts: { name: before.name, system: before.system.name } });
  }
  const river = await riverForPour(pen, input.river, searched, { jobId: input.jobId, before, today });
  if (!river.ok) return river;
  const figures = withRiver(input.figures, river.value);
  const closed = await readClosedDays(pen.tx);
  const planned = planPour(
    {
      ...figures,
      sheet,
      first: input.first,
      poured: before && pouredOf(before, { today, sheet, timeZone: pen.book.timeZone }),
    },
    (day) => closedOn(day, closed) !== undefined,
  );
  if (!planned.ok) return err(refusePlan(planned.error));
  const plan = planned.value;
  const beyond = beyondTheSheet(plan);
  const reason = input.reason.trim();
  if (beyond && reason === '') {
    return err({ code: 'beyond-the-sheet', field: 'reason', facts: { lift: beyond.nr, why: beyond.why } });
  }
  const kept: KeptPlan = {
    typed: input.typed,
    figures,
    sheet,
    depth: plan.depth,
    plan,
    reason: beyond ? reason : '',
    ...(river.value && { river: river.value }),
  };
  const answer: PourKept = { entryId: pen.entryId, jobId: input.jobId, pourId: 0, name };
  const lifts = stays.filter(({ nr }) => nr > 0).length + plan.lifts.filter(({ nr }) => nr > 0).length;
  await pen.enter(
    { jobId: input.jobId, why: `${name}: ${sayLifts(lifts)} of ${system.name}${beyond ? `. ${reason}` : ''}` },
    answer,
  );
  if (before) await takePlanOff(pen, before);
  const { id: pourId } = await pen.tx.pour.create({
    data: {
      jobId: input.jobId,
      entryId: pen.entryId,
      partId,
      systemId: input.systemId,
      name,
      plan: JSON.stringify(kept),
    },
    select: { id: true },
  });
  if (before) await takeOver(pen, before, { pourId, partId }, stays);
  await writeLifts(pen, { ...input, name, partId }, pourId, plan, lifts);
  await keepDayOfUse(pen.tx, input.jobId);
  return ok({ ...answer, pourId });
}

/** The figures with the area of the river that was found here, whatever was sent. */
function withRiver(figures: PourFigures, river: KeptRiver | undefined): PourFigures {
  const { space } = figures;
  if (!river || space.from !== 'fills') return figures;
  const fills = space.fills.map((fill, nr) => (nr === 0 ? { ...fill, area: river.area } : fill));
  return { ...figures, space: { from: 'fills', fills } };
}

const sayLifts = (count: number) => `${count} ${count === 1 ? 'lift' : 'lifts'}`;

/** What was begun goes with the pour that takes its place. */
async function takeOver(
  pen: Pen,
  before: PourLine,
  { pourId, partId }: { pourId: number; partId: number | null },
  stays: readonly LiftLine[],
): Promise<void> {
  const stepIds = stays.flatMap(({ stepId }) => stepId ?? []);
  const liftIds = stays.map(({ id }) => id);
  await pen.tx.lift.updateMany({ where: { id: { in: liftIds } }, data: { pourId } });
  await pen.tx.step.updateMany({ where: { id: { in: stepIds } }, data: { pourId, partId } });
  await pen.tx.need.updateMany({ where: { liftId: { in: liftIds } }, data: { partId } });
  await pen.tx.fault.updateMany({ where: { pourId: before.id }, data: { pourId } });
}

async function writeLifts(
  pen: Pen,
  { jobId, systemId, name, partId }: Pick<KeepPour, 'jobId' | 'systemId' | 'name'> & { partId: number | null },
  pourId: number,
  plan: PourPlan,
  lifts: number,
): Promise<void> {
  const step = async (kind: string, words: string, day: CalendarDate, sort: number) => {
    const made = await pen.tx.step.create({
      data: { jobId, entryId: pen.entryId, kind, name: `${name}: ${words}`, day, sort, partId, pourId },
      select: { id: true },
    });
    return made.id;
  };
  for (const lift of plan.lifts) {
    const words = lift.nr === 0 ? 'seal coat' : `lift ${lift.nr} of ${lifts}`;
    const stepId = await step(lift.nr === 0 ? 'seal' : 'lift', words, lift.on, lift.nr);
    const { id: liftId } = await pen.tx.lift.create({
      data: {
        pourId,
        nr: lift.nr,
        stepId,
        depthNm: BigInt(lift.depth),
        volumeUl: BigInt(lift.fills + lift.leaks + lift.cups),
        batches: JSON.stringify(lift.batches),
      },
      select: { id: true },
    });
    await pen.tx.need.createMany({
      data: needsOf(lift).map((need) => ({
        ...need,
        jobId,
        entryId: pen.entryId,
        partId,
        stepId,
        liftId,
        kind: 'material',
        systemId,
        unit: 'mg',
        surface: name,
        note: words,
      })),
    });
  }
  const { demould, fullCure } = plan.days;
  if (demould) await step('demould', 'demould', demould, 0);
  if (fullCure) await step('cure', 'cured through', fullCure, 0);
}

function needsOf({ batches }: PlannedLift) {
  return (['a', 'b'] as const).map((part) => ({
    resinPart: part === 'a' ? 'A' : 'B',
    amount: BigInt(batches.reduce((sum, batch) => sum + batch[part], 0)),
  }));
}
