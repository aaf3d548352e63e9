import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { noteFinishSheet } from '@/app/_server/finish/note-finish-sheet';
import { planCoats } from '@/app/_server/finish/plan-coats';
import { addJob } from '@/app/_server/jobs/add-job';
import { addPart } from '@/app/_server/jobs/add-part';
import { loadJob } from '@/app/_server/jobs/read-jobs';
import { readParts } from '@/app/_server/jobs/read-parts';
import { removePart } from '@/app/_server/jobs/remove-part';
import { setStage } from '@/app/_server/jobs/set-stage';
import { usualPart } from '@/app/_server/jobs/usual-part';
import { history } from '@/app/_server/ledger/history';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { addNeed } from '@/app/_server/needs/add-need';
import { changeNeed } from '@/app/_server/needs/change-need';
import { keepPour } from '@/app/_server/pours/keep-pour';
import { pourLift } from '@/app/_server/pours/pour-lift';
import { readPour } from '@/app/_server/pours/read-pour';
import { removePour } from '@/app/_server/pours/remove-pour';
import { weighOutForLift } from '@/app/_server/pours/weigh-out';
import { addStep } from '@/app/_server/timeline/add-step';
import { finishStep } from '@/app/_server/timeline/finish-step';
import { readSteps } from '@/app/_server/timeline/read-steps';
import { readTimeline } from '@/app/_server/timeline/read-timeline';
import { removeStep } from '@/app/_server/timeline/remove-step';
import { setStepPart } from '@/app/_server/timeline/set-step-part';
import { STANDS } from '@/app/_server/timeline/standing';
import { sayStep } from '@/app/_server/watch/say-step';
import { undoneSteps } from '@/app/_server/watch/undone-steps';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import type { StepKind } from '@/shared/timeline/step';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';
import { planned, pourAsk, readyToPour } from '@/tests/support/pour-of-a-test';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

const MM = 1_000_000;
const MISSING = 9_999_999;
let test: TestBook;
beforeAll(async () => {
  test = await freshBook();
});
afterAll(async () => {
  expect((await proveBook(test.book.read)).differences).toEqual([]);
  await test.remove();
});

const undo = (entryId: number) => reverseEntry(test.book, by(), { entryId, why: 'A mistake' });
const entryOf = async ({ key }: { key: string }) =>
  (await test.book.read.entry.findUniqueOrThrow({ where: { key }, select: { id: true } })).id;

async function part(jobId: number, name: string, kind: 'top' | 'base' = 'base') {
  const sizes = { lengthNm: 800 * MM, widthNm: 400 * MM, thicknessNm: 40 * MM };
  const shape = kind === 'top' ? ('rectangle' as const) : ('' as const);
  const added = must(await addPart(test.book, by(), { jobId, kind, name, count: 1, shape, ...sizes, note: '' }));
  const row = await test.book.read.jobPart.findFirstOrThrow({ where: { entryId: added.entryId } });
  return { id: row.id, entryId: added.entryId };
}

/** A table with a river top that is poured from today in two lifts, and a wooden base. */
async function table() {
  const ready = await readyToPour(test.book);
  const { jobId } = ready;
  const [top, base] = [await part(jobId, 'Top', 'top'), await part(jobId, 'Base')];
  const pour = await planned(test.book, ready, { partId: top.id });
  const steps = () => readSteps(test.book.read, jobId);
  const step = async (kind: StepKind, on: string, partId: number | null, name = '') => {
    const added = must(await addStep(test.book, by(), { jobId, kind, name, day: day(on), note: '', partId }));
    const { id } = await test.book.read.step.findFirstOrThrow({ where: { entryId: added.entryId } });
    return { stepId: id, entryId: added.entryId };
  };
  const partsOf = async (pourId: number) =>
    (await steps()).filter((one) => one.pourId === pourId).map(({ partId }) => partId);
  const needsOf = async () =>
    (await test.book.read.need.findMany({ where: { jobId, liftId: { not: null }, ...STANDS } })).map(
      ({ partId }) => partId,
    );
  return { ready, jobId, top, base, pour, steps, step, partsOf, needsOf };
}

async function oil(name: string) {
  const { productId } = await stocked(test.book, {
    product: { name, kind: 'hardwax-oil', unit: 'uL', packageSize: 750_000, system: undefined, colourShows: false },
    size: 750_000,
  });
  const hours = { recoatFromHours: 12, recoatToHours: 48, cureDays: 7 };
  const sheet = { from: 'sheet' as const, coverageTenths: 240, coats: 2, ...hours };
  must(await noteFinishSheet(test.book, by(), { productId, sheet }));
  return productId;
}
const coats = (jobId: number, productId: number, partIds: number[], firstDay: string, count = 2) =>
  planCoats(test.book, by(), {
    ...{ jobId, productId, partIds, faces: 2, areaMm2: 500_000, coats: count },
    ...{ coverageTenths: null, lossPercent: 10, firstDay: day(firstDay) },
  });

describe('a table whose base is oiled while its top cures', () => {
  it('judges the coats of each part by what is done to that part', async () => {
    const { jobId, top, base, steps } = await table();
    const productId = await oil('Oil of two parts');
    must(await coats(jobId, productId, [base.id], '2026-11-26'));
    must(await coats(jobId, productId, [top.id], '2026-11-26', 1));
    must(await coats(jobId, productId, [], '2026-11-26', 1));
    const oiled = (await steps()).filter(({ kind }) => kind === 'coat');
    // Each part counts its own coats; the whole job goes on from all of them.
    expect(oiled.map(({ partId, coatNr }) => [partId, coatNr]).sort()).toEqual(
      [
        [base.id, 1],
        [base.id, 2],
        [top.id, 1],
        [null, 3],
      ].sort(),
    );
    const job = await loadJob(test.book.read, jobId);
    if (!job) throw new Error('The job is gone.');
    const { verdicts } = await readTimeline(test.book, job, TODAY);
    const wordOf = new Map(verdicts.map(({ stepId, word }) => [stepId, word]));
    const words = oiled.map(({ id, partId, coatNr }) => [partId, coatNr, wordOf.get(id)]);
    expect(words).toContainEqual([base.id, 1, 'use']);
    expect(words).toContainEqual([base.id, 2, 'use']);
    expect(words).toContainEqual([top.id, 1, 'stop']);
    expect(words).toContainEqual([null, 3, 'stop']);
    const cured = (await steps()).filter(({ kind, productId: of }) => kind === 'cure' && of === productId);
    expect(cured.map(({ partId }) => partId).sort()).toEqual([top.id, base.id, null].sort());
  });

  it('holds the top and the whole job until the demould day, and nothing of the base', async () => {
    const { jobId, top, base, step } = await table();
    const done = (stepId: number, reason = '') => finishStep(test.book, by(), { stepId, doneOn: TODAY, reason });
    const ofBase = await step('flatten', TODAY, base.id);
    expect(must(await done(ofBase.stepId)).held).toBe(false);
    const ofTop = await step('flatten', TODAY, top.id);
    expect(await done(ofTop.stepId)).toMatchObject({ error: { code: 'cure-hold', facts: { until: '2026-11-29' } } });
    const together = await step('assembly', TODAY, null);
    expect(refusedWith(await done(together.stepId))).toBe('cure-hold');
    expect(must(await done(together.stepId, 'Dry fit only')).held).toBe(true);
    must(await setStage(test.book, by(), { jobId, stage: 'making', reason: '' }));
    expect(refusedWith(await setStage(test.book, by(), { jobId, stage: 'ready', reason: '' }))).toBe('cure-hold');
  });

  it('refuses parts that the job has not, wherever one is named', async () => {
    const { jobId, ready, step, base } = await table();
    const other = await table();
    const productId = await oil('Oil of no part');
    for (const partId of [other.top.id, MISSING]) {
      const named = { jobId, kind: 'flatten' as const, name: '', day: TODAY, note: '', partId };
      expect(refusedWith(await addStep(test.book, by(), named))).toBe('part-gone');
      expect(refusedWith(await keepPour(test.book, by(), pourAsk(ready, { name: 'Two', partId })))).toBe('part-gone');
      expect(refusedWith(await coats(jobId, productId, [base.id, partId], '2026-11-26'))).toBe('part-gone');
      const { stepId } = await step('flatten', TODAY, null, `For ${partId}`);
      expect(refusedWith(await setStepPart(test.book, by(), { stepId, partId }))).toBe('part-gone');
    }
  });

  it('names its parts beside the steps under Watch, where there is more than one', async () => {
    const { top, base, step } = await table();
    const { stepId } = await step('coat', TODAY, base.id, 'First coat');
    const said = async (id: number) => (await undoneSteps(test.book)).filter((one) => one.id === id).map(sayStep);
    expect(await said(stepId)).toEqual(['First coat, Base']);
    const { jobId: single } = must(
      await addJob(test.book, by(), { name: 'Box', purpose: 'own', client: '', dayOfUse: TODAY, note: '' }),
    );
    const lid = await part(single, 'Lid');
    const alone = { jobId: single, kind: 'flatten' as const, name: 'Plane it', day: TODAY, note: '', partId: lid.id };
    const { entryId } = must(await addStep(test.book, by(), alone));
    const { id } = await test.book.read.step.findFirstOrThrow({ where: { entryId } });
    expect(await said(id)).toEqual(['Plane it']);
    // A form put down by hand waits for the lifts put down by hand, of its own part; the whole job's for any.
    const [ofBase, whole] = [await step('demould', TODAY, base.id), await step('demould', TODAY, null)];
    await step('lift', TODAY, top.id, 'Lift by hand');
    const waits = new Map((await undoneSteps(test.book)).map((one) => [one.id, one.liftsLeft]));
    expect([waits.get(ofBase.stepId), waits.get(whole.stepId)]).toEqual([false, true]);
  });
});

describe('the part a step is for', () => {
  it('is changed by an entry that says so, the needs of the step with it, and put back by reversing', async () => {
    const { jobId, base, steps, step } = await table();
    const { stepId } = await step('flatten', '2026-12-10', null, 'Plane');
    const { productId } = await stocked(test.book, { product: { name: `Discs ${jobId}`, system: undefined } });
    const ask = {
      jobId,
      kind: 'product' as const,
      productId,
      amount: 1000,
      unit: 'mg' as const,
      surface: '',
      note: '',
    };
    must(await addNeed(test.book, by(), { ...ask, stepId }));
    const need = async () =>
      (await test.book.read.need.findFirstOrThrow({ where: { stepId, removedById: null } })).partId;
    expect(refusedWith(await setStepPart(test.book, by(), { stepId, partId: null }))).toBe('changes-nothing');
    const key = by();
    expect(must(await setStepPart(test.book, key, { stepId, partId: base.id }))).toMatchObject({ part: 'Base' });
    const now = async () => (await steps()).find(({ id }) => id === stepId)?.partId;
    expect([await now(), await need()]).toEqual([base.id, base.id]);
    const entry = (await history(test.book, { jobId })).entries.find(({ kind }) => kind === 'step-part-set');
    expect(entry).toMatchObject({ why: 'Plane: whole job → Base', canReverse: true });
    must(await undo(await entryOf(key)));
    expect([await now(), await need()]).toEqual([null, null]);
    // What is needed for a step of a part is needed for the part, also where the need is moved to it.
    must(await setStepPart(test.book, by(), { stepId, partId: base.id }));
    must(await addNeed(test.book, by(), { ...ask, surface: 'loose' }));
    const loose = await test.book.read.need.findFirstOrThrow({ where: { jobId, surface: 'loose' } });
    expect(loose.partId).toBeNull();
    must(await changeNeed(test.book, by(), { ...ask, surface: 'bound', needId: loose.id, stepId }));
    expect(await test.book.read.need.findFirst({ where: { jobId, surface: 'bound' } })).toMatchObject({
      partId: base.id,
    });
  });

  it('is not put back over what came after', async () => {
    const { top, base, steps, step } = await table();
    const { stepId } = await step('flatten', '2026-12-10', null);
    const [first, second] = [by(), by()];
    must(await setStepPart(test.book, first, { stepId, partId: base.id }));
    must(await setStepPart(test.book, second, { stepId, partId: top.id }));
    const refused = await undo(await entryOf(first));
    expect(refused).toMatchObject({ error: { code: 'step-part-changed', facts: { step: 'Flatten' } } });
    if (!refused.ok) expect(sayRefusal(refused.error).what).toBe('Flatten was given to another part since.');
    must(await undo(await entryOf(second)));
    const gone = by();
    must(await removeStep(test.book, gone, { stepId }));
    expect(refusedWith(await undo(await entryOf(first)))).toBe('step-gone');
    must(await undo(await entryOf(gone)));
    must(await undo(await entryOf(first)));
    expect((await steps()).find(({ id }) => id === stepId)?.partId).toBeNull();
    // Back to a part that was taken off meanwhile it does not go.
    must(await setStepPart(test.book, by(), { stepId, partId: base.id }));
    const away = by();
    must(await setStepPart(test.book, away, { stepId, partId: null }));
    must(await removePart(test.book, by(), { partId: base.id }));
    expect(refusedWith(await undo(await entryOf(away)))).toBe('part-gone');
    expect((await steps()).find(({ id }) => id === stepId)?.partId).toBeNull();
  });

  it('takes the whole pour along, what is poured and what is not', async () => {
    const { ready, top, base, pour, steps, partsOf, needsOf } = await table();
    const lift = (await readPour(test.book.read, pour.pourId))?.lifts.find(({ nr }) => nr === 1);
    for (const [letter, label] of [
      ['A', ready.a],
      ['B', ready.b],
    ] as const) {
      const mass = letter === 'A' ? lift?.batches[0]?.a : lift?.batches[0]?.b;
      if (mass === undefined) throw new Error('There is no first lift.');
      const out = { pourId: pour.pourId, nr: 1, batch: 1, part: letter, label, mass, seen: 'care' as const };
      must(await weighOutForLift(test.book, by(), out));
    }
    const { pourId } = pour;
    must(await pourLift(test.book, by(), { pourId, nr: 1, room: tenthsCelsius(210), note: '', reason: '' }));
    const all = (await partsOf(pourId)).length;
    expect(await partsOf(pourId)).toEqual(Array(all).fill(top.id));
    expect(await needsOf()).toEqual(Array(4).fill(top.id));
    const demould = (await steps()).find(({ kind }) => kind === 'demould');
    const key = by();
    const set = must(await setStepPart(test.book, key, { stepId: demould?.id ?? 0, partId: base.id }));
    expect(set).toMatchObject({ name: 'River', part: 'Base' });
    expect(await partsOf(pourId)).toEqual(Array(all).fill(base.id));
    expect(await needsOf()).toEqual(Array(4).fill(base.id));
    expect((await readPour(test.book.read, pourId))?.part).toBe('Base');
    must(await undo(await entryOf(key)));
    expect(await partsOf(pourId)).toEqual(Array(all).fill(top.id));

    // Planned anew for the base, what was begun goes along; reversed, all of it goes back.
    const anew = await planned(test.book, ready, { pourId, partId: base.id, figures: { lifts: 2 } });
    expect(new Set(await partsOf(anew.pourId))).toEqual(new Set([base.id]));
    must(await undo(anew.entryId));
    expect(await partsOf(pourId)).toEqual(Array(all).fill(top.id));
    expect(await needsOf()).toEqual(Array(4).fill(top.id));
    // Planned anew without a word about it, it stays with its part; said to be the whole job's, it is.
    const same = await planned(test.book, ready, { pourId, figures: { lifts: 2 } });
    expect(new Set(await partsOf(same.pourId))).toEqual(new Set([top.id]));
    const whole = await planned(test.book, ready, { pourId: same.pourId, partId: null, figures: { lifts: 2 } });
    expect(new Set(await partsOf(whole.pourId))).toEqual(new Set([null]));
  });

  it('is likeliest the only one, then the one that carries resin, then a top', async () => {
    const { jobId } = await readyToPour(test.book);
    const usual = async () => usualPart(test.book.read, jobId, await readParts(test.book.read, jobId));
    expect(await usual()).toBeNull();
    const base = await part(jobId, 'Base');
    expect(await usual()).toBe(base.id);
    await part(jobId, 'Rail');
    expect(await usual()).toBeNull();
    const [left, right] = [await part(jobId, 'Left door', 'top'), await part(jobId, 'Right door', 'top')];
    expect(await usual()).toBe(left.id);
    const { systemId } = await readyToPour(test.book);
    await planned(test.book, { jobId, systemId }, { partId: right.id });
    expect(await usual()).toBe(right.id);
  });
});

describe('a part that has steps', () => {
  it('stays until they are for another part, or off', async () => {
    const { jobId, top, base, step, pour } = await table();
    const productId = await oil('Oil of a part that goes');
    const oiled = must(await coats(jobId, productId, [base.id], '2026-11-26'));
    const refused = await removePart(test.book, by(), { partId: base.id });
    expect(refused).toMatchObject({ error: { code: 'part-has-steps', facts: { count: 3 } } });
    if (!refused.ok) {
      expect(sayRefusal(refused.error).what).toBe(
        '3 steps on the time line belong to Base, the first of them Oil of a part that goes, coat 1.',
      );
    }
    must(await undo(oiled.entryId));
    const { stepId } = await step('flatten', '2026-12-10', base.id);
    const one = await removePart(test.book, by(), { partId: base.id });
    expect(one).toMatchObject({ error: { code: 'part-has-steps', facts: { count: 1, step: 'Flatten' } } });
    if (!one.ok) expect(sayRefusal(one.error).what).toBe('Flatten on the time line belongs to Base.');
    // Neither does it go by undoing that it was added, and with a pour the pour is named.
    expect(refusedWith(await undo(base.entryId))).toBe('part-has-steps');
    expect(refusedWith(await undo(top.entryId))).toBe('part-has-a-pour');
    const off = by();
    must(await removeStep(test.book, off, { stepId }));
    must(await undo(base.entryId));
    // What was taken off before the part went does not come back without it.
    expect(refusedWith(await undo(await entryOf(off)))).toBe('part-gone');
    const away = by();
    must(await removePour(test.book, away, { pourId: pour.pourId, why: 'No river' }));
    must(await removePart(test.book, by(), { partId: top.id }));
    expect(refusedWith(await undo(await entryOf(away)))).toBe('part-gone');
    expect(await readParts(test.book.read, jobId)).toEqual([]);
  });
});

describe('the proof of a book', () => {
  it('finds a step of a part its job has not, and a step that left its pour’s part', async () => {
    const { steps, base } = await table();
    const other = await table();
    const [lift, demould] = (await steps()).filter(({ kind }) => kind === 'lift' || kind === 'demould');
    const bend = (id: number, partId: number | null) =>
      test.book.write((tx) => tx.step.update({ where: { id }, data: { partId }, select: { id: true } }));
    const rules = async () => (await proveBook(test.book.read)).differences.map(({ rule, where }) => [rule, where]);
    expect(await rules()).toEqual([]);
    await bend(lift?.id ?? 0, other.base.id);
    expect(await rules()).toEqual([
      ['parts-of-their-own-job', `step ${lift?.id}`],
      ['one-part-a-pour', `step ${lift?.id}`],
    ]);
    await bend(lift?.id ?? 0, lift?.partId ?? null);
    await bend(demould?.id ?? 0, base.id);
    expect(await rules()).toEqual([['one-part-a-pour', `step ${demould?.id}`]]);
    await bend(demould?.id ?? 0, demould?.partId ?? null);
  });
});
