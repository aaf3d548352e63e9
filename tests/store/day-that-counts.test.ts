import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readAllocation } from '@/app/_server/allocation/read-allocation';
import { addJob } from '@/app/_server/jobs/add-job';
import { loadJob } from '@/app/_server/jobs/read-jobs';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { addNeed } from '@/app/_server/needs/add-need';
import { buyList } from '@/app/_server/needs/buy-list';
import { readNeeds } from '@/app/_server/needs/read-needs';
import { reserveNeeds } from '@/app/_server/needs/reserve-needs';
import { scanForLift } from '@/app/_server/pours/scan-for-lift';
import { weighOutForLift } from '@/app/_server/pours/weigh-out';
import { reserve } from '@/app/_server/promises/reserve';
import { addStep } from '@/app/_server/timeline/add-step';
import { finishStep } from '@/app/_server/timeline/finish-step';
import { readTimeline } from '@/app/_server/timeline/read-timeline';
import { plannedNotes } from '@/app/_server/watch/planned-notes';
import { planned, readyToPour } from '@/tests/support/pour-of-a-test';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, NOW, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

const KG = 1_000_000;
const HEAD = { today: TODAY, currency: 'USD' };
const CONTEXT = { ...HEAD, timeZone: 'America/New_York', dateOrder: 'day-first', units: 'metric' } as const;
const printed = (date: string) => ({ date: day(date), precision: 'day' as const, confirmed: true });

// Two lifts, today and tomorrow; the only part A is good to today. It is used on the first day, and judged for the last.
describe('the day that counts for what is needed', () => {
  let test: TestBook;
  let ready: Awaited<ReturnType<typeof readyToPour>>;
  let pourId = 0;
  let first = 0;
  const lastLift = day('2026-11-26');
  beforeAll(async () => {
    test = await freshBook();
    ready = await readyToPour(test.book, { size: 5 * KG, bestBeforeA: '2026-11-25' });
    ({ pourId } = await planned(test.book, ready));
    const { needs } = await readNeeds(test.book, ready.jobId, HEAD);
    first = needs.find(({ need }) => need.on === TODAY && need.system?.part === 'A')?.need.id ?? 0;
  });
  afterAll(async () => {
    expect((await proveBook(test.book.read)).differences).toEqual([]);
    await test.remove();
  });

  it('is the last lift of the pour for each of them: nothing of the tin is on hand, and it is bought for both', async () => {
    const { needs, curves } = await readNeeds(test.book, ready.jobId, HEAD);
    const ofA = needs.filter(({ need }) => need.system?.part === 'A');
    expect(ofA.map(({ need, standing, buy }) => [need.on, need.goodTo, standing.have, buy?.by, buy?.goodTo])).toEqual([
      [TODAY, lastLift, [], TODAY, lastLift],
      [lastLift, lastLift, [], lastLift, lastLift],
    ]);
    expect(ofA.every(({ need, standing }) => standing.short === need.amount)).toBe(true);
    const curve = curves.find(({ name }) => name.endsWith('part A'));
    expect(curve?.steps.map(({ from, free }) => [from, free])).toEqual([
      [TODAY, 5 * KG],
      [lastLift, 0],
    ]);
    expect(curve?.asks.map(({ on, goodTo, free }) => [on, goodTo, free])).toEqual([
      [TODAY, lastLift, 0],
      [lastLift, lastLift, 0],
    ]);
    const { lines } = await buyList(test.book, HEAD, { unsure: true });
    expect(lines.map(({ by: here, goodTo, wanted }) => [here, goodTo, wanted.map(({ on }) => on)])).toEqual([
      [TODAY, lastLift, [TODAY, lastLift]],
    ]);
  });

  it('is the same on the time line, for the allocation, in Watch, to promise and on the mix card', async () => {
    const job = await loadJob(test.book.read, ready.jobId);
    if (!job) throw new Error('The job is there.');
    const line = await readTimeline(test.book, job, TODAY);
    const ofA = line.stockVerdicts.filter(({ of, label }) => of === 'container' && label === ready.a);
    expect(new Set(ofA.map(({ day: judged, word }) => `${judged} ${word}`))).toEqual(new Set([`${lastLift} stop`]));
    const shortA = line.stockVerdicts.filter(({ of, name }) => of === 'short' && name.endsWith('part A'));
    expect(shortA).toHaveLength(2);

    const { ask, allocation } = await readAllocation(test.book, HEAD);
    expect(allocation.status).toBe('proved');
    expect(allocation.takes.map(({ containerId }) => containerId)).not.toContain(String(ready.stockA));
    const wanted = ask.needs.filter(({ part }) => part === 'A');
    expect(allocation.short).toEqual(wanted.map(({ id, amount }) => ({ needId: id, amount })));

    const { promised } = must(await reserveNeeds(test.book, by(), { jobId: ready.jobId }));
    expect(new Set(promised.map(({ label }) => label))).toEqual(new Set([ready.b]));
    const item = { label: ready.a, amount: 1000, needId: first };
    const refused = await reserve(test.book, by(), { jobId: ready.jobId, items: [item] });
    expect(refused).toMatchObject({ error: { code: 'not-good-on-the-day', facts: { day: lastLift } } });

    // Promised for no need and for its first day by name, it is what Watch warns of.
    const loose = { label: ready.a, amount: 1000 };
    must(await reserve(test.book, by(), { jobId: ready.jobId, items: [loose], day: TODAY }));
    const warned = (await plannedNotes(test.book, CONTEXT)).filter(({ id }) =>
      id.startsWith(`planned-${ready.stockA}-`),
    );
    expect(warned.map(({ id, word }) => [id.endsWith(lastLift), word])).toEqual([[true, 'stop']]);

    const slot = { pourId, nr: 1, batch: 1, part: 'A' as const };
    const scanned = await scanForLift(test.book, { ...slot, scan: { text: ready.a } }, NOW);
    expect(scanned).toMatchObject({ value: { kind: 'container', verdict: { word: 'stop', judgedFor: lastLift } } });
    const weighed = await weighOutForLift(test.book, by(), { ...slot, label: ready.a, mass: 1000, seen: 'care' });
    expect(weighed).toMatchObject({ error: { code: 'verdict-changed', facts: { word: 'stop' } } });
  });

  it('is its own day where no other lift is to come, and the last coat of the same finish for a coat', async () => {
    const { productId, labels } = await stocked(test.book, {
      product: { name: 'Hard oil', kind: 'oil', system: undefined, openedLife: undefined, careWindowDays: 0 },
      dates: { bestBefore: printed('2026-12-02') },
    });
    const fields = { name: 'Shelf', purpose: 'client' as const, client: '', dayOfUse: TODAY, note: '' };
    const { jobId } = must(await addJob(test.book, by(), fields));
    const coats = [];
    for (const on of ['2026-12-01', '2026-12-04']) {
      must(await addStep(test.book, by(), { jobId, kind: 'coat', name: `Coat ${on}`, day: day(on), note: '' }));
      const step = await test.book.read.step.findFirstOrThrow({ where: { jobId }, orderBy: { id: 'desc' } });
      const need = { kind: 'product' as const, productId, amount: 1000, unit: 'mg' as const, surface: '', note: '' };
      must(await addNeed(test.book, by(), { jobId, stepId: step.id, ...need }));
      coats.push(step.id);
    }
    const standing = async () =>
      (await readNeeds(test.book, jobId, HEAD)).needs.map(({ need, standing: { have } }) => [
        need.on,
        need.goodTo,
        have.map(({ label }) => label),
      ]);
    expect(await standing()).toEqual([
      ['2026-12-01', '2026-12-04', []],
      ['2026-12-04', '2026-12-04', []],
    ]);
    // The last coat is put on before the first: the other is then the last that is to come.
    must(await finishStep(test.book, by(), { stepId: coats[1] ?? 0, doneOn: TODAY, reason: 'Early' }));
    expect((await standing())[0]).toEqual(['2026-12-01', '2026-12-01', labels]);
  });
});

describe('a promise for a need', () => {
  let test: TestBook;
  let made = 0;
  beforeAll(async () => {
    test = await freshBook();
  });
  afterAll(() => test.remove());

  const job = async () => {
    made += 1;
    const fields = { name: `Job ${made}`, purpose: 'client' as const, client: '', dayOfUse: TODAY, note: '' };
    return must(await addJob(test.book, by(), fields)).jobId;
  };
  const oil = async () => {
    made += 1;
    return stocked(test.book, { product: { name: `Oil ${made}`, system: undefined, openedLife: undefined } });
  };
  const need = async (jobId: number, productId: number) => {
    const fields = { kind: 'product' as const, productId, amount: 1000, unit: 'mg' as const, surface: '', note: '' };
    const { entryId } = must(await addNeed(test.book, by(), { jobId, ...fields }));
    return (await test.book.read.need.findFirstOrThrow({ where: { entryId } })).id;
  };

  it('must be of the job, stand, and fit what is promised', async () => {
    const [desk, shelf] = [await job(), await job()];
    const [right, wrong] = [await oil(), await oil()];
    const [ofDesk, ofShelf] = [await need(desk, right.productId), await need(shelf, right.productId)];
    const promise = (label: string | undefined, needId: number) =>
      reserve(test.book, by(), { jobId: desk, items: [{ label: label ?? '', amount: 500, needId }] });
    const another = await promise(right.labels[0], ofShelf);
    expect(refusedWith(another)).toBe('need-of-another-job');
    expect(refusedWith(await promise(wrong.labels[0], ofDesk))).toBe('not-for-that-need');
    expect(refusedWith(await promise(right.labels[0], ofDesk + 4000))).toBe('need-gone');
    const { lotId } = await test.book.read.container.findFirstOrThrow({ where: { productId: wrong.productId } });
    const ofLot = { jobId: desk, items: [{ lotId, amount: 500, needId: ofDesk }] };
    expect(refusedWith(await reserve(test.book, by(), ofLot))).toBe('not-for-that-need');
    expect(await test.book.read.promiseLine.count()).toBe(0);
    must(await promise(right.labels[0], ofDesk));
    expect(await test.book.read.promiseLine.findMany({ select: { needId: true } })).toEqual([{ needId: ofDesk }]);
  });
});
