import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { noteFinishSheet } from '@/app/_server/finish/note-finish-sheet';
import { type PlanCoats, planCoats } from '@/app/_server/finish/plan-coats';
import { readFinishSheet } from '@/app/_server/finish/read-finish-sheet';
import { addJob, type JobFields } from '@/app/_server/jobs/add-job';
import { addPart } from '@/app/_server/jobs/add-part';
import { changeJob } from '@/app/_server/jobs/change-job';
import { changePart } from '@/app/_server/jobs/change-part';
import { nextSteps } from '@/app/_server/jobs/next-steps';
import { loadJob } from '@/app/_server/jobs/read-jobs';
import { readParts } from '@/app/_server/jobs/read-parts';
import { removePart } from '@/app/_server/jobs/remove-part';
import { setStage } from '@/app/_server/jobs/set-stage';
import { history } from '@/app/_server/ledger/history';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { givePiece } from '@/app/_server/stock/give-piece';
import { receiveContainers } from '@/app/_server/stock/receive-containers';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { addClosedDays } from '@/app/_server/timeline/add-closed-days';
import { addStep } from '@/app/_server/timeline/add-step';
import { changeStep } from '@/app/_server/timeline/change-step';
import { finishStep } from '@/app/_server/timeline/finish-step';
import { keepDayOfUse } from '@/app/_server/timeline/keep-day-of-use';
import { moveSteps } from '@/app/_server/timeline/move-steps';
import { readClosedDays } from '@/app/_server/timeline/read-closed-days';
import { readSteps } from '@/app/_server/timeline/read-steps';
import { readTimeline } from '@/app/_server/timeline/read-timeline';
import { rejudge } from '@/app/_server/timeline/rejudge';
import { removeClosedDays } from '@/app/_server/timeline/remove-closed-days';
import { removeStep } from '@/app/_server/timeline/remove-step';
import { reopenStep } from '@/app/_server/timeline/reopen-step';
import { type SaidStock, sayStock } from '@/app/_server/timeline/say-stock';
import { setClosedWeekdays } from '@/app/_server/timeline/set-closed-weekdays';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import { sayRejudged } from '@/app/(shop)/jobs/[id]/say-rejudged';
import type { ResinSheet } from '@/shared/pour/resin-sheet';
import type { StepKind } from '@/shared/timeline/step';
import { endJob } from '@/tests/support/end-of-a-job';
import { aSlab, stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

const MM = 1_000_000;
let test: TestBook;
beforeAll(async () => {
  test = await freshBook();
});
afterAll(async () => {
  expect((await proveBook(test.book.read)).differences).toEqual([]);
  await test.remove();
});

let count = 0;
async function aJob(more: Partial<Parameters<typeof addJob>[2]> = {}) {
  count += 1;
  const fields = {
    name: `Table ${count}`,
    purpose: 'client' as const,
    client: 'Marlow',
    dayOfUse: day('2026-12-31'),
    note: '',
  };
  const { jobId } = must(await addJob(test.book, by(), { ...fields, ...more }));
  const job = async () => {
    const found = await loadJob(test.book.read, jobId);
    if (!found) throw new Error('The job is gone.');
    return found;
  };
  const steps = () => readSteps(test.book.read, jobId);
  const step = async (kind: StepKind, on: string, name = '') => {
    const { entryId } = must(await addStep(test.book, by(), { jobId, kind, name, day: day(on), note: '' }));
    const { id } = await test.book.read.step.findFirstOrThrow({ where: { entryId } });
    return { entryId, stepId: id };
  };
  const timeline = async () => readTimeline(test.book, await job(), TODAY);
  return { jobId, fields: { ...fields, ...more }, job, steps, step, timeline };
}

const OIL = {
  name: 'Hardwax oil',
  kind: 'hardwax-oil',
  unit: 'uL' as const,
  packageSize: 750_000,
  tareMg: undefined,
  system: undefined,
  colourShows: false,
};
let tins = 0;
/** A tin of oil of its own kind that is good to the day. */
async function oil(bestBefore: string, more: Parameters<typeof stocked>[1] = {}) {
  tins += 1;
  return stocked(test.book, {
    product: { ...OIL, name: `Hardwax oil ${tins}` },
    size: 750_000,
    lotCode: `H-${bestBefore}`,
    dates: { bestBefore: { date: day(bestBefore), precision: 'day', confirmed: true } },
    ...more,
  });
}
const SHEET = {
  from: 'sheet' as const,
  coverageTenths: 100,
  coats: 2,
  recoatFromHours: 12,
  recoatToHours: 48,
  cureDays: 7,
};

/** A pour of two lifts, as the room of pours writes it: its steps rest on one entry. */
async function aPour(jobId: number, firstLift: string, lastLift: string, sheet: Partial<ResinSheet> = {}) {
  const { productId } = await stocked(test.book, {
    product: { name: `Resin ${count}`, system: { name: `System ${count}`, part: 'A' } },
  });
  const product = await test.book.read.product.findUniqueOrThrow({ where: { id: productId } });
  const systemId = product.systemId ?? 0;
  const { entryId } = must(
    await addStep(test.book, by(), { jobId, kind: 'other', name: 'Form built', day: TODAY, note: '' }),
  );
  return test.book.write(async (tx) => {
    const facts: ResinSheet = { from: 'sheet', depths: [], demouldHours: 72, fullCureDays: 7, ...sheet };
    await tx.sheet.create({ data: { entryId, systemId, facts: JSON.stringify(facts) } });
    const pour = await tx.pour.create({ data: { jobId, entryId, systemId, name: 'River', plan: '{}' } });
    const common = { jobId, entryId, pourId: pour.id };
    const lifts = [];
    for (const [nr, on] of [firstLift, lastLift].entries()) {
      const lift = await tx.step.create({ data: { ...common, kind: 'lift', name: `Lift ${nr + 1}`, day: on } });
      await tx.lift.create({
        data: {
          pourId: pour.id,
          nr: nr + 1,
          stepId: lift.id,
          depthNm: 20_000_000n,
          volumeUl: 1_000_000n,
          batches: '[]',
        },
      });
      await tx.need.create({
        data: {
          jobId,
          entryId,
          stepId: lift.id,
          kind: 'material',
          systemId,
          resinPart: 'A',
          unit: 'mg',
          amount: 900_000n,
        },
      });
      lifts.push(lift.id);
    }
    await keepDayOfUse(tx, jobId);
    return { pourId: pour.id, lifts };
  });
}

describe('the steps of a job', () => {
  it('are planned, named anew, done, opened again and taken off, each an entry of its history', async () => {
    const { jobId, step, steps } = await aJob();
    const { stepId } = await step('flatten', '2026-12-04');
    expect((await steps()).map(({ name, day: on }) => [name, on])).toEqual([['Flatten', '2026-12-04']]);
    must(await changeStep(test.book, by(), { stepId, name: ' Flatten the top ', note: 'Sled' }));
    must(await finishStep(test.book, by(), { stepId, doneOn: TODAY, reason: '' }));
    expect(await steps()).toMatchObject([{ name: 'Flatten the top', note: 'Sled', doneOn: TODAY }]);
    expect(refusedWith(await removeStep(test.book, by(), { stepId }))).toBe('step-done-already');
    must(await reopenStep(test.book, by(), { stepId }));
    expect((await steps())[0]?.doneOn).toBeNull();
    must(await removeStep(test.book, by(), { stepId }));
    expect(await steps()).toEqual([]);
    const { entries } = await history(test.book, { jobId });
    expect(entries.map(({ kind }) => kind)).toEqual([
      'step-removed',
      'step-undone',
      'step-done',
      'step-changed',
      'step-added',
      'job-added',
    ]);
  });

  it('are refused what cannot be', async () => {
    const { jobId, step } = await aJob();
    const { stepId } = await step('assembly', '2026-12-04');
    const add = { jobId, kind: 'other' as const, name: ' ', day: TODAY, note: '' };
    expect(refusedWith(await addStep(test.book, by(), add))).toBe('step-needs-name');
    const later = { stepId, doneOn: day('2026-11-26'), reason: '' };
    expect(refusedWith(await finishStep(test.book, by(), later))).toBe('received-in-the-future');
    expect(refusedWith(await changeStep(test.book, by(), { stepId, name: 'Assembly', note: '' }))).toBe(
      'changes-nothing',
    );
    expect(refusedWith(await reopenStep(test.book, by(), { stepId }))).toBe('changes-nothing');
    expect(refusedWith(await finishStep(test.book, by(), { ...later, stepId: 9999 }))).toBe('not-found');
    must(await setStage(test.book, by(), { jobId, stage: 'dropped', reason: '' }));
    expect(refusedWith(await addStep(test.book, by(), { ...add, name: 'x' }))).toBe('job-not-open');
    expect(refusedWith(await removeStep(test.book, by(), { stepId }))).toBe('job-not-open');
  });

  it('move together or not at all, and not over somebody who moved them meanwhile', async () => {
    const { jobId, step, steps } = await aJob();
    const a = await step('flatten', '2026-12-04');
    const b = await step('assembly', '2026-12-07');
    const [from, to] = [day('2026-12-04'), day('2026-12-08')];
    const moved = must(
      await moveSteps(test.book, by(), {
        jobId,
        moves: [
          { stepId: a.stepId, from, to },
          { stepId: b.stepId, from: day('2026-12-07'), to: day('2026-12-09') },
        ],
      }),
    );
    expect(moved.moves).toHaveLength(2);
    const stale = { stepId: a.stepId, from, to: day('2026-12-20') };
    const other = { stepId: b.stepId, from: day('2026-12-09'), to: day('2026-12-20') };
    const refused = await moveSteps(test.book, by(), { jobId, moves: [other, stale] });
    expect(refused).toMatchObject({ error: { code: 'step-moved-meanwhile', facts: { to: '2026-12-08' } } });
    expect((await steps()).map((each) => each.day)).toEqual(['2026-12-08', '2026-12-09']);
    expect(refusedWith(await moveSteps(test.book, by(), { jobId, moves: [{ ...other, to: other.from }] }))).toBe(
      'changes-nothing',
    );
  });

  it('go back where they were when the move is reversed, but not over a later one', async () => {
    const { jobId, step, steps } = await aJob();
    const { stepId } = await step('flatten', '2026-12-04');
    const move = async (from: string, to: string) => {
      const key = by();
      must(await moveSteps(test.book, key, { jobId, moves: [{ stepId, from: day(from), to: day(to) }] }));
      return (await test.book.read.entry.findFirstOrThrow({ where: { key: key.key } })).id;
    };
    const first = await move('2026-12-04', '2026-12-08');
    const second = await move('2026-12-08', '2026-12-10');
    const undo = (entryId: number) => reverseEntry(test.book, by(), { entryId, why: 'Slip' });
    expect(refusedWith(await undo(first))).toBe('step-moved-meanwhile');
    must(await undo(second));
    must(await undo(first));
    expect((await steps())[0]?.day).toBe('2026-12-04');
  });

  it('stand only while their entry does: reversed they are gone, and what was done is not done', async () => {
    const { step, steps } = await aJob();
    const { stepId, entryId } = await step('flatten', '2026-12-04');
    const done = must(await finishStep(test.book, by(), { stepId, doneOn: TODAY, reason: '' }));
    expect(refusedWith(await reverseEntry(test.book, by(), { entryId, why: 'Slip' }))).toBe('step-done-already');
    must(await reverseEntry(test.book, by(), { entryId: done.entryId, why: 'Not yet' }));
    expect((await steps())[0]?.doneOn).toBeNull();
    must(await finishStep(test.book, by(), { stepId, doneOn: day('2026-11-24'), reason: '' }));
    expect((await steps())[0]?.doneOn).toBe('2026-11-24');
    must(await reopenStep(test.book, by(), { stepId }));
    must(await reverseEntry(test.book, by(), { entryId, why: 'Slip' }));
    expect(await steps()).toEqual([]);
  });

  it('written twice under one key are there once', async () => {
    const { jobId, steps } = await aJob();
    const key = by();
    const input = { jobId, kind: 'flatten' as const, name: '', day: TODAY, note: '' };
    const first = must(await addStep(test.book, key, input));
    const again = await addStep(test.book, key, input);
    expect(again).toMatchObject({ ok: true, value: { replayed: true, answer: first } });
    expect(await steps()).toHaveLength(1);
  });

  it('give the job its day of use: the last lift or coat to be done', async () => {
    const { jobId, fields, job, step } = await aJob();
    await step('delivery', '2027-01-20');
    expect((await job()).dayOfUse).toBe('2026-12-31');
    const coat = await step('coat', '2026-12-10', 'Oil');
    expect((await job()).dayOfUse).toBe('2026-12-10');
    const last = await step('coat', '2026-12-12', 'Oil again');
    expect((await job()).dayOfUse).toBe('2026-12-12');
    must(
      await moveSteps(test.book, by(), {
        jobId,
        moves: [{ stepId: last.stepId, from: day('2026-12-12'), to: day('2026-12-15') }],
      }),
    );
    expect((await job()).dayOfUse).toBe('2026-12-15');
    must(await changeJob(test.book, by(), { ...fields, jobId, note: 'Oak', dayOfUse: day('2027-03-01') }));
    expect((await job()).dayOfUse).toBe('2026-12-15');
    must(await reverseEntry(test.book, by(), { entryId: last.entryId, why: 'One coat is enough' }));
    expect((await job()).dayOfUse).toBe('2026-12-10');
    must(await removeStep(test.book, by(), { stepId: coat.stepId }));
    expect((await job()).dayOfUse).toBe('2026-12-10');
    const next = await nextSteps(test.book, [jobId]);
    expect(next.get(jobId)).toEqual({ name: 'Delivery', day: '2027-01-20' });
  });
});

describe('the cure hold of a job', () => {
  it('keeps a casting until its demould day, and lets it go on with a reason that stays', async () => {
    const { jobId, step, steps } = await aJob();
    // Lifts on 22 and 24 Nov, demould after 72 hours: 27 Nov. Today is the 25th.
    const { lifts } = await aPour(jobId, '2026-11-22', '2026-11-24');
    const { stepId } = await step('flatten', '2026-11-25');
    const finish = (reason: string) => finishStep(test.book, by(), { stepId, doneOn: TODAY, reason });
    const early = await finish('');
    expect(early).toMatchObject({ error: { facts: { because: 'not-poured', until: '2026-11-28', after: 'Lift 1' } } });
    if (!early.ok) {
      expect(sayRefusal(early.error)).toMatchObject({
        what: 'Lift 1 is not poured, so nothing of it cures yet.',
        todo: expect.stringMatching(/^Pour it from its page first\./),
      });
    }
    const { id: doneById } = await test.book.read.entry.findFirstOrThrow({ where: { jobId }, orderBy: { id: 'desc' } });
    for (const [nr, doneOn] of ['2026-11-22', '2026-11-24'].entries()) {
      await test.book.write((tx) => tx.step.update({ where: { id: lifts[nr] ?? 0 }, data: { doneOn, doneById } }));
    }
    const held = await finish('  ');
    expect(held).toMatchObject({
      error: {
        code: 'cure-hold',
        field: 'reason',
        facts: { until: '2026-11-27', after: 'Lift 2', because: 'demould' },
      },
    });
    if (!held.ok) {
      const said = sayRefusal(held.error);
      expect(said.what).toBe('Lift 2 may not leave the form before 27 Nov 2026.');
      expect(said.fields?.reason).toContain('write why');
    }
    const done = must(await finish('The test cup is hard.'));
    expect(done.held).toBe(true);
    const entry = await test.book.read.entry.findUniqueOrThrow({ where: { id: done.entryId } });
    expect(entry.why).toBe('Flatten, 2026-11-25, before 2026-11-27: The test cup is hard.');
    expect((await steps()).find(({ id }) => id === stepId)?.doneOn).toBe(TODAY);
    // A lift is done by being poured, and belongs to its plan.
    const lift = { stepId: lifts[0] ?? 0 };
    expect(refusedWith(await finishStep(test.book, by(), { ...lift, doneOn: TODAY, reason: '' }))).toBe(
      'lift-is-poured',
    );
    expect(refusedWith(await removeStep(test.book, by(), lift))).toBe('step-of-a-pour');
    expect(refusedWith(await reopenStep(test.book, by(), lift))).toBe('lift-is-poured');
  });

  it('holds the stages too: not ready before demould, not delivered before the finish is cured', async () => {
    const { jobId, job, step } = await aJob();
    await aPour(jobId, '2026-11-22', '2026-11-24');
    const go = (stage: Parameters<typeof setStage>[2]['stage'], reason = '') =>
      setStage(test.book, by(), { jobId, stage, reason });
    must(await go('making'));
    expect(refusedWith(await go('ready'))).toBe('cure-hold');
    must(await go('ready', 'Base only; the top follows.'));
    await step('coat', '2026-11-25', 'Oil');
    expect(refusedWith(await go('delivered'))).toBe('cure-hold');
    expect((await job()).stage).toBe('ready');
    must(await go('delivered', 'The client oils it again.'));
    expect(await job()).toMatchObject({ stage: 'delivered', state: 'done' });
    must(await go('ready'));
  });
});

describe('the stages of a job in the book', () => {
  it('are steps of its history, and a jump is refused plainly', async () => {
    const { jobId, job } = await aJob({ stage: 'asked' });
    expect(await job()).toMatchObject({ stage: 'asked', state: 'open' });
    const go = (stage: Parameters<typeof setStage>[2]['stage']) =>
      setStage(test.book, by(), { jobId, stage, reason: '' });
    const jump = await go('delivered');
    expect(refusedWith(jump)).toBe('stage-jump');
    if (!jump.ok) expect(sayRefusal(jump.error).what).toBe('A job does not go from asked to delivered at once.');
    expect(refusedWith(await go('asked'))).toBe('changes-nothing');
    for (const stage of ['quoted', 'agreed', 'making', 'curing', 'ready', 'delivered'] as const) must(await go(stage));
    const { entries } = await history(test.book, { jobId });
    expect(
      entries.filter(({ kind }) => kind === 'job-stage-set').map(({ why, canReverse }) => [why, canReverse]),
    ).toEqual([
      ['ready → delivered', false],
      ['curing → ready', false],
      ['making → curing', false],
      ['agreed → making', false],
      ['quoted → agreed', false],
      ['asked → quoted', false],
    ]);
  });

  it('free what was promised and not used when it is dropped', async () => {
    const { jobId } = await aJob();
    const { label } = must(await receivePieces(test.book, by(), aSlab())).pieces[0] ?? { label: '' };
    must(await givePiece(test.book, by(), { label, act: 'promise', jobId }));
    const dropped = must(await setStage(test.book, by(), { jobId, stage: 'dropped', reason: 'Too dear' }));
    expect(dropped.freed).toEqual([label]);
    expect((await test.book.read.stock.findUniqueOrThrow({ where: { label } })).ownerJobId).toBeNull();
  });

  it('say whether a job is open, and nothing else does: a form left open does not open it again', async () => {
    const { jobId, job, fields } = await aJob({ dueOn: day('2027-01-15'), contact: ' 0123 ' });
    expect(await job()).toMatchObject({ dueOn: '2027-01-15', contact: '0123', stage: 'agreed', state: 'open' });
    const was = { ...fields, dueOn: day('2027-01-15'), contact: '0123' };
    await endJob(test.book, jobId, 'delivered');
    must(await changeJob(test.book, by(), { ...was, jobId, was, note: 'Oak', dueOn: null }));
    expect(await job()).toMatchObject({ stage: 'delivered', state: 'done', dueOn: null, contact: '0123', note: 'Oak' });
    const smuggled = { ...was, jobId, state: 'open', stage: 'agreed', note: 'Ash' };
    must(await changeJob(test.book, by(), smuggled));
    expect(await job()).toMatchObject({ stage: 'delivered', state: 'done', note: 'Ash' });
  });

  it('a form that was opened on the job as it is no more is refused, with what is otherwise and by whom', async () => {
    const { jobId, job, fields, step } = await aJob();
    const was = { ...fields, dueOn: null, contact: '' };
    const change = (more: Partial<JobFields>, seen: JobFields = was) =>
      changeJob(test.book, by(), { ...seen, ...more, jobId, was: seen });
    must(await change({ dueOn: day('2027-01-15'), note: 'Oak' }));
    const refused = await change({ client: 'Hale' });
    expect(refused).toMatchObject({
      error: { code: 'job-changed-meanwhile', facts: { who: 'Ada', dueOn: '2027-01-15', note: 'Oak' } },
    });
    if (!refused.ok) {
      expect(sayRefusal(refused.error, 'day-first').what).toBe(
        `${fields.name} was changed meanwhile by Ada: the due day is now 15 Jan 2027; the note is now “Oak”.`,
      );
    }
    expect(await job()).toMatchObject({ client: 'Marlow', note: 'Oak', dueOn: '2027-01-15' });
    must(await change({ client: 'Hale' }, { ...was, dueOn: day('2027-01-15'), note: 'Oak' }));
    expect(await job()).toMatchObject({ client: 'Hale', note: 'Oak', dueOn: '2027-01-15' });
    // A day of use that follows the time line was not typed, and moves under the form without a quarrel.
    await step('coat', '2026-12-10', 'Oil');
    const now = { ...was, client: 'Hale', dueOn: day('2027-01-15'), note: 'Oak' };
    must(await change({ note: 'Elm' }, now));
    expect(await job()).toMatchObject({ note: 'Elm', dayOfUse: '2026-12-10' });
    expect(refusedWith(await change({}, { ...now, note: 'Elm' }))).toBe('changes-nothing');
  });
});

describe('the parts of a job', () => {
  const TOP = {
    kind: 'top' as const,
    name: 'Top',
    count: 1,
    shape: 'round' as const,
    lengthNm: 1000 * MM,
    widthNm: null,
    thicknessNm: 40 * MM,
    note: '',
  };
  it('are added, changed and taken off, and come back by reversing', async () => {
    const { jobId } = await aJob();
    const parts = () => readParts(test.book.read, jobId);
    const added = must(await addPart(test.book, by(), { ...TOP, jobId }));
    const [top] = await parts();
    // A round has one length: its width is that too.
    expect(top).toMatchObject({ name: 'Top', shape: 'round', length: 1000 * MM, width: 1000 * MM });
    const partId = top?.id ?? 0;
    must(await changePart(test.book, by(), { ...TOP, partId, kind: 'base', name: 'Leg', count: 4, widthNm: 60 * MM }));
    expect(await parts()).toMatchObject([{ kind: 'base', name: 'Leg', count: 4, shape: '', width: 60 * MM }]);
    const key = by();
    must(await removePart(test.book, key, { partId }));
    expect(await parts()).toEqual([]);
    expect(refusedWith(await removePart(test.book, by(), { partId }))).toBe('part-gone');
    const { id } = await test.book.read.entry.findFirstOrThrow({ where: { key: key.key } });
    must(await reverseEntry(test.book, by(), { entryId: id, why: 'Needed' }));
    expect(await parts()).toHaveLength(1);
    must(await reverseEntry(test.book, by(), { entryId: added.entryId, why: 'Slip' }));
    expect(await parts()).toEqual([]);
  });

  it.each([
    [{ name: ' ' }, 'part-needs-name'],
    [{ count: 0 }, 'outside-range'],
    [{ count: 1000 }, 'outside-range'],
    [{ lengthNm: 0 }, 'outside-range'],
    [{ thicknessNm: 15_000_000_001 }, 'outside-range'],
  ])('are refused %o', async (bad, code) => {
    const { jobId } = await aJob();
    expect(refusedWith(await addPart(test.book, by(), { ...TOP, ...bad, jobId }))).toBe(code);
  });

  it('stay while a pour is planned for them', async () => {
    const { jobId } = await aJob();
    must(await addPart(test.book, by(), { ...TOP, jobId }));
    const [top] = await readParts(test.book.read, jobId);
    const { pourId } = await aPour(jobId, '2026-12-01', '2026-12-02');
    await test.book.write((tx) => tx.pour.update({ where: { id: pourId }, data: { partId: top?.id ?? 0 } }));
    expect(await removePart(test.book, by(), { partId: top?.id ?? 0 })).toMatchObject({
      error: { code: 'part-has-a-pour', facts: { part: 'Top', pour: 'River' } },
    });
  });
});

describe('closed days of the workshop', () => {
  it('are set by the week and by stretches, and taken off again', async () => {
    const closed = () => readClosedDays(test.book.read);
    must(await setClosedWeekdays(test.book, by(), { weekdays: [6, 0, 0] }));
    expect((await closed()).weekdays).toEqual([0, 6]);
    expect(refusedWith(await setClosedWeekdays(test.book, by(), { weekdays: [0, 6] }))).toBe('changes-nothing');
    expect(refusedWith(await setClosedWeekdays(test.book, by(), { weekdays: [0, 1, 2, 3, 4, 5, 6] }))).toBe(
      'outside-range',
    );
    const stretch = { from: day('2026-12-24'), to: day('2027-01-02'), name: 'Holiday' };
    expect(refusedWith(await addClosedDays(test.book, by(), { ...stretch, to: day('2026-12-23') }))).toBe(
      'ends-before-it-begins',
    );
    must(await addClosedDays(test.book, by(), stretch));
    const [range] = (await closed()).ranges;
    expect(range).toMatchObject(stretch);
    must(await removeClosedDays(test.book, by(), { id: range?.id ?? 0 }));
    expect((await closed()).ranges).toEqual([]);
    expect(refusedWith(await removeClosedDays(test.book, by(), { id: range?.id ?? 0 }))).toBe('not-found');
    must(await setClosedWeekdays(test.book, by(), { weekdays: [0] }));
  });
});

describe('coats of finish', () => {
  const plan = (jobId: number, productId: number, more: Partial<PlanCoats> = {}) =>
    planCoats(test.book, by(), {
      jobId,
      productId,
      partIds: [],
      faces: 2,
      areaMm2: 2e6,
      coats: 3,
      coverageTenths: null,
      lossPercent: 20,
      firstDay: day('2026-12-04'),
      ...more,
    });

  it('are planned from the sheet over closed days, with what each takes, and undone as a whole', async () => {
    const { jobId, job, steps } = await aJob();
    const { productId } = await oil('2027-06-01');
    must(await noteFinishSheet(test.book, by(), { productId, sheet: SHEET }));
    // Friday, Saturday, then Sunday is closed.
    const planned = must(await plan(jobId, productId));
    expect(planned).toMatchObject({
      days: ['2026-12-04', '2026-12-05', '2026-12-07'],
      curedOn: '2026-12-14',
      each: 250_000,
      unit: 'uL',
    });
    const all = await steps();
    expect(all.map(({ kind, coatNr, day: on }) => [kind, coatNr, on])).toEqual([
      ['coat', 1, '2026-12-04'],
      ['coat', 2, '2026-12-05'],
      ['coat', 3, '2026-12-07'],
      ['cure', null, '2026-12-14'],
    ]);
    expect((await job()).dayOfUse).toBe('2026-12-07');
    const needs = await test.book.read.need.findMany({ where: { jobId } });
    expect(needs.map(({ amount, unit, productId: of }) => [Number(amount), unit, of])).toEqual(
      Array(3).fill([250_000, 'uL', productId]),
    );
    const more = must(await plan(jobId, productId, { coats: 1, firstDay: day('2026-12-09') }));
    expect((await steps()).filter(({ kind }) => kind === 'coat').at(-1)?.coatNr).toBe(4);
    must(await reverseEntry(test.book, by(), { entryId: more.entryId, why: 'Three are enough' }));
    must(await reverseEntry(test.book, by(), { entryId: planned.entryId, why: 'Another finish' }));
    expect(await steps()).toEqual([]);
  });

  it('take the area from the parts, and the mass by the density where the finish is weighed', async () => {
    const { jobId } = await aJob();
    const { productId } = await stocked(test.book, {
      product: { ...OIL, name: `Weighed oil ${count}`, unit: 'mg', packageSize: 750_000, densityGramsPerLitre: 900 },
      size: 750_000,
    });
    must(
      await addPart(test.book, by(), {
        jobId,
        kind: 'top',
        name: 'Top',
        count: 1,
        shape: 'rectangle',
        lengthNm: 2000 * MM,
        widthNm: 1000 * MM,
        thicknessNm: null,
        note: '',
      }),
    );
    const [top] = await readParts(test.book.read, jobId);
    const planned = must(
      await plan(jobId, productId, {
        areaMm2: null,
        partIds: [top?.id ?? 0],
        coverageTenths: 100,
        lossPercent: 0,
        coats: 1,
      }),
    );
    // 4 m² over 10 m² a litre is 0.4 L, at 900 g/L 360 g.
    expect(planned).toMatchObject({ each: 360_000, unit: 'mg', curedOn: null });
  });

  it('are refused where coverage, area or density is not known', async () => {
    const { jobId } = await aJob();
    const { productId } = await oil('2027-06-02');
    expect(refusedWith(await plan(jobId, productId))).toBe('no-coverage');
    expect(refusedWith(await plan(jobId, productId, { areaMm2: null, coverageTenths: 100 }))).toBe('area-unknown');
    expect(refusedWith(await plan(jobId, 9999))).toBe('not-found');
    expect(refusedWith(await plan(jobId, productId, { coverageTenths: 100, coats: 31 }))).toBe('outside-range');
    const heavy = await stocked(test.book, {
      product: { ...OIL, name: `No density ${count}`, unit: 'mg', densityGramsPerLitre: undefined },
    });
    expect(refusedWith(await plan(jobId, heavy.productId, { coverageTenths: 100 }))).toBe('no-density');
  });

  it('go by the newest sheet, and by the one before when it is reversed', async () => {
    const { productId } = await oil('2027-06-03');
    must(await noteFinishSheet(test.book, by(), { productId, sheet: SHEET }));
    expect(refusedWith(await noteFinishSheet(test.book, by(), { productId, sheet: SHEET }))).toBe('changes-nothing');
    const key = by();
    must(await noteFinishSheet(test.book, key, { productId, sheet: { ...SHEET, cureDays: 14 } }));
    expect((await readFinishSheet(test.book.read, productId))?.cureDays).toBe(14);
    const { id } = await test.book.read.entry.findFirstOrThrow({ where: { key: key.key } });
    must(await reverseEntry(test.book, by(), { entryId: id, why: 'Other product' }));
    expect((await readFinishSheet(test.book.read, productId))?.cureDays).toBe(7);
    expect(
      refusedWith(await noteFinishSheet(test.book, by(), { productId, sheet: { from: 'sheet', coverageTenths: 1 } })),
    ).toBe('outside-range');
  });
});

describe('a time line with what hangs on it', () => {
  const said = (all: Awaited<ReturnType<typeof readTimeline>>['stockVerdicts']): SaidStock[] =>
    all.map((one) => sayStock(one, { today: TODAY, order: 'day-first', prefer: 'metric' }));

  it('judges the best tin for the last coat, and says at once what a later day does to it', async () => {
    const { jobId, timeline } = await aJob();
    const { productId, labels } = await oil('2026-12-20', { product: { ...OIL, name: `Short oil ${count}` } });
    must(await noteFinishSheet(test.book, by(), { productId, sheet: SHEET }));
    must(
      await planCoats(test.book, by(), {
        jobId,
        productId,
        partIds: [],
        faces: 2,
        areaMm2: 2e6,
        coats: 2,
        coverageTenths: null,
        lossPercent: 20,
        firstDay: day('2026-12-01'),
      }),
    );
    const now = await timeline();
    expect(now.verdicts.map(({ word }) => word)).toEqual(['use', 'use', 'use']);
    // 750 mL: both coats of 250 mL come from the one tin, each judged for the last coat.
    expect(now.stockVerdicts.map(({ word, label, day: on }) => [word, label, on])).toEqual([
      ['use', labels[0], '2026-12-02'],
      ['use', labels[0], '2026-12-02'],
    ]);
    const last = now.steps.find(({ coatNr }) => coatNr === 2);
    const after = rejudge(now, [{ stepId: last?.id ?? 0, to: day('2026-12-21') }]);
    const tins = after.stock.filter(({ now: one }) => one.label === labels[0]);
    expect(tins.length).toBeGreaterThan(0);
    for (const tin of tins) {
      expect(tin).toMatchObject({ change: 'word', now: { word: 'stop', day: '2026-12-21' }, was: { word: 'use' } });
    }
    expect(after.stock.filter(({ now: one }) => one.of === 'short')).toHaveLength(2);
    expect(after.steps.find(({ now: one }) => one.stepId === last?.id)).toMatchObject({
      was: 'use',
      changed: true,
      now: { word: 'care', cautions: [{ code: 'window-missed' }] },
    });
    expect(said(after.stock.map((each) => each.now)).map(({ says }) => says)).toContain(
      'Good to 20 Dec. Needed on 21 Dec.',
    );
    expect(after.steps.find(({ now: one }) => one.stepId !== last?.id && one.word === 'use')).toMatchObject({
      changed: false,
      came: [],
      went: [],
    });
    // Nothing was written by asking.
    expect((await timeline()).steps.find(({ coatNr }) => coatNr === 2)?.day).toBe('2026-12-02');
  });

  it('names what changes in its day or its reason alone, and what goes away', async () => {
    const { jobId, timeline } = await aJob();
    const short = await oil('2026-12-20');
    // A second lot of the same oil that lasts longer: the one that ends first is taken while it is good.
    const { containers } = must(
      await receiveContainers(test.book, by(), {
        productId: short.productId,
        lotCode: 'H-longer',
        dates: { bestBefore: { date: day('2027-06-01'), precision: 'day', confirmed: true } },
        count: 1,
        size: 750_000,
        receivedOn: TODAY,
      }),
    );
    const [ending, lasting] = [short.labels[0], containers[0]?.label];
    must(await noteFinishSheet(test.book, by(), { productId: short.productId, sheet: SHEET }));
    const coat = {
      jobId,
      productId: short.productId,
      partIds: [],
      faces: 2 as const,
      areaMm2: 2e6,
      coats: 1,
      coverageTenths: null,
      lossPercent: 20,
      firstDay: day('2026-12-01'),
    };
    must(await planCoats(test.book, by(), coat));
    const now = await timeline();
    const stepId = now.steps.find(({ kind }) => kind === 'coat')?.id ?? 0;
    expect(now.stockVerdicts.map(({ label, word }) => [label, word])).toEqual([[ending, 'use']]);

    const nextDay = rejudge(now, [{ stepId, to: day('2026-12-02') }]);
    expect(nextDay.stock.map(({ change, was }) => [change, was?.day])).toEqual([['day', '2026-12-01']]);
    expect(nextDay.gone).toEqual([]);
    const context = { today: TODAY, order: 'day-first' as const, prefer: 'metric' as const };
    expect(sayRejudged(nextDay, context).map(({ changed }) => changed)).toEqual([
      'Changed: still Use, now for 2 Dec, was for 1 Dec',
    ]);

    const later = rejudge(now, [{ stepId, to: day('2026-12-28') }]);
    expect(later.stock.map(({ now: one, change }) => [one.label, change])).toEqual([[lasting, 'new']]);
    expect(later.gone.map(({ label }) => label)).toEqual([ending]);
    expect(sayRejudged(later, context).map(({ label, changed, gone }) => [label, changed, gone])).toEqual([
      [lasting, 'New: it was not taken for this', false],
      [ending, 'No longer taken for this', true],
    ]);
    expect(rejudge(now, []).stock.map(({ change }) => change)).toEqual([null]);

    // 1 L of the two tins, one of which ends before the later day; back again it is short no longer.
    await test.book.write((tx) => tx.need.updateMany({ where: { jobId }, data: { amount: 1_000_000n } }));
    const lean = rejudge(await timeline(), [{ stepId, to: day('2026-12-28') }]);
    expect(lean.stock.map(({ now: one, change }) => [one.of, one.label, change])).toEqual([
      ['container', lasting, 'amount'],
      ['container', ending, 'word'],
      ['short', null, 'new'],
    ]);
    must(
      await moveSteps(test.book, by(), { jobId, moves: [{ stepId, from: day('2026-12-01'), to: day('2026-12-28') }] }),
    );
    const back = rejudge(await timeline(), [{ stepId, to: day('2026-12-01') }]);
    expect(sayRejudged(back, context).filter(({ gone }) => gone)).toMatchObject([
      { how: '250 mL short', changed: 'No longer short' },
    ]);
  });

  it('judges what is promised to the job first, and what others are promised is not free', async () => {
    const { jobId, timeline } = await aJob();
    const other = await aJob();
    const { productId, containers } = await oil('2027-05-01', { count: 2 });
    must(await noteFinishSheet(test.book, by(), { productId, sheet: SHEET }));
    const planned = must(
      await planCoats(test.book, by(), {
        jobId,
        productId,
        partIds: [],
        faces: 2,
        areaMm2: 8e6,
        coats: 1,
        coverageTenths: null,
        lossPercent: 0,
        firstDay: day('2026-12-01'),
      }),
    );
    expect(planned.each).toBe(800_000);
    const need = await test.book.read.need.findFirstOrThrow({ where: { jobId } });
    const [first, second] = containers.map(({ stockId }) => stockId);
    await test.book.write(async (tx) => {
      const line = (id: number, stockId: number, delta: number, needId: number | null) =>
        tx.promiseLine.create({
          data: { entryId: planned.entryId, jobId: id, stockId, needId, delta: BigInt(delta) },
        });
      await line(jobId, second ?? 0, 600_000, need.id);
      await line(other.jobId, first ?? 0, 650_000, null);
      await tx.promised.create({ data: { jobId, stockId: second ?? 0, amount: 600_000n } });
      await tx.promised.create({ data: { jobId: other.jobId, stockId: first ?? 0, amount: 650_000n } });
    });
    const lines = said((await timeline()).stockVerdicts).map(({ key, how }) => [key.replace(/^need \d+ /, ''), how]);
    // What is promised, the rest of the same tin, and of the other what nobody else was promised: nothing is short.
    expect(lines).toEqual([
      [`container ${second}`, '600 mL promised'],
      [`free ${second}`, '150 mL free, the best for the day'],
      [`free ${first}`, '50 mL free, the best for the day'],
    ]);
  });

  it('says what is short, in the unit it is bought in', async () => {
    const { jobId, timeline } = await aJob();
    await aPour(jobId, '2026-12-01', '2026-12-03');
    // 2.5 kg of part A are there; two lifts of 0.9 kg take 1.8 of them.
    expect((await timeline()).stockVerdicts.map(({ of, day: on }) => [of, on])).toEqual([
      ['container', '2026-12-03'],
      ['container', '2026-12-03'],
    ]);
    await test.book.write((tx) => tx.need.updateMany({ where: { jobId }, data: { amount: 2_000_000n } }));
    const lines = said((await timeline()).stockVerdicts);
    expect(lines.map(({ how, word }) => [how, word])).toContainEqual(['1.5 kg short', 'stop']);
  });

  it('judges promised wood for the day it is first worked', async () => {
    const { jobId, step, timeline } = await aJob();
    const { pieces } = must(await receivePieces(test.book, by(), aSlab({ count: 2 })));
    const dry = pieces[0]?.label ?? '';
    must(await givePiece(test.book, by(), { label: dry, act: 'promise', jobId }));
    const wet = must(
      await receivePieces(test.book, by(), aSlab({ reading: { mcTenths: 180, meter: 'pins', spot: 'middle' } })),
    ).pieces[0];
    must(await givePiece(test.book, by(), { label: wet?.label ?? '', act: 'promise', jobId }));
    const { stepId } = await step('flatten', '2026-12-08');
    const all = (await timeline()).stockVerdicts;
    expect(all).toMatchObject([
      { of: 'piece', label: dry, word: 'use', why: 'dry', day: '2026-12-08', stepId },
      { of: 'piece', label: wet?.label, word: 'care', why: 'dry-unknown', day: '2026-12-08' },
    ]);
    expect(said(all)[1]?.says).toBe('When it is dry is not known: read it, and log the air of its room.');
  });
});

describe('what proves of jobs', () => {
  it('is named where a state does not follow its stage, or a day of use its time line', async () => {
    const { jobId, step } = await aJob();
    await step('coat', '2026-12-10', 'Oil');
    const rules = async () => (await proveBook(test.book.read)).differences.map(({ rule }) => rule);
    const put = (data: { stage?: string; dayOfUse?: string }) =>
      test.book.write((tx) => tx.job.update({ where: { id: jobId }, data }));
    await put({ stage: 'delivered' });
    expect(await rules()).toEqual(['state-follows-stage']);
    await put({ stage: 'agreed', dayOfUse: '2026-12-11' });
    expect(await rules()).toEqual(['day-of-use-follows']);
    await put({ dayOfUse: '2026-12-10' });
    expect(await rules()).toEqual([]);
  });
});
