import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addArriving } from '@/app/_server/arriving/add-arriving';
import { closeArriving } from '@/app/_server/arriving/close-arriving';
import { listArriving } from '@/app/_server/arriving/list-arriving';
import { addJob } from '@/app/_server/jobs/add-job';
import { history } from '@/app/_server/ledger/history';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { addNeed } from '@/app/_server/needs/add-need';
import { buyList } from '@/app/_server/needs/buy-list';
import { changeNeed } from '@/app/_server/needs/change-need';
import { joinNeeds } from '@/app/_server/needs/join-needs';
import type { NeedFields } from '@/app/_server/needs/need-fields';
import { readNeeds } from '@/app/_server/needs/read-needs';
import { removeNeed } from '@/app/_server/needs/remove-need';
import { reserveNeeds } from '@/app/_server/needs/reserve-needs';
import { standingNeeds } from '@/app/_server/needs/standing-needs';
import { notMoving } from '@/app/_server/promises/not-moving';
import { promisedOf } from '@/app/_server/promises/promised-of';
import { reserve } from '@/app/_server/promises/reserve';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { givePiece } from '@/app/_server/stock/give-piece';
import { receiveContainers } from '@/app/_server/stock/receive-containers';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { addStep } from '@/app/_server/timeline/add-step';
import { finishStep } from '@/app/_server/timeline/finish-step';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { aSlab, RESIN, stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

const KG = 1_000_000;
const MM = 1_000_000;
const printed = (date: string) => ({ date: day(date), precision: 'day' as const, confirmed: true });

describe('what a job needs', () => {
  let test: TestBook;
  let made = 0;
  const name = (word: string) => {
    made += 1;
    return `${word} ${made}`;
  };
  const head = { today: TODAY, currency: 'USD', timeZone: 'America/New_York' };
  const job = async (dayOfUse = day('2026-12-12'), stage: 'asked' | 'agreed' = 'agreed') =>
    must(
      await addJob(test.book, by(), {
        name: name('Job'),
        purpose: 'client',
        client: '',
        dayOfUse,
        note: '',
        stage,
      }),
    ).jobId;
  /** A product of its own with full containers, 49.50 each. */
  const material = (more: Parameters<typeof stocked>[1] = {}) =>
    stocked(test.book, {
      costMinor: 4950,
      ...more,
      product: { name: name('Oil'), system: undefined, ...more.product },
    });
  const productNeed = (productId: number, amount: number, more: Partial<NeedFields> = {}) =>
    ({ kind: 'product', productId, amount, unit: 'mg', surface: '', note: '', ...more }) as NeedFields;
  const need = async (jobId: number, fields: NeedFields) => {
    must(await addNeed(test.book, by(), { ...fields, jobId }));
    return (await standingNeeds(test.book.read, { jobId })).map((each) => each.id).sort((a, b) => b - a)[0] ?? 0;
  };
  const read = (jobId: number) => readNeeds(test.book, jobId, head);
  const first = async (jobId: number) => {
    const [each] = (await read(jobId)).needs;
    if (!each) throw new Error('The job needs nothing.');
    return each;
  };
  const sum = (parts: readonly { amount: number }[]) => parts.reduce((total, part) => total + part.amount, 0);
  const stockId = async (label: string) => (await test.book.read.stock.findUniqueOrThrow({ where: { label } })).id;
  const held = async (label: string) =>
    (await promisedOf(test.book.read, await stockId(label), 'UTC')).map((each) => [each.jobId, each.amount]);
  const undo = (entryId: number) => reverseEntry(test.book, by(), { entryId, why: 'Mistaken' });

  beforeAll(async () => {
    test = await freshBook();
  });
  afterAll(async () => {
    expect((await proveBook(test.book.read)).differences).toEqual([]);
    await test.remove();
  });

  it('stands as have, reserved for it and for another, arriving, short and buy, with what it costs', async () => {
    const { productId, labels } = await material({ count: 2 });
    const [desk, table] = [await job(), await job()];
    must(await reserve(test.book, by(), { jobId: table, items: [{ label: labels[0] ?? '', amount: 2 * KG }] }));
    must(
      await addArriving(test.book, by(), {
        productId,
        words: '',
        amount: 1 * KG,
        dueOn: day('2026-12-01'),
        supplier: 'Tarn',
        costMinor: 2500,
      }),
    );
    await need(desk, productNeed(productId, 6 * KG));
    const { standing, buy, cost } = await first(desk);
    expect([sum(standing.reserved), sum(standing.have), sum(standing.elsewhere)]).toEqual([0, 3 * KG, 2 * KG]);
    expect([sum(standing.arriving), standing.short]).toEqual([1 * KG, 2 * KG]);
    expect(buy).toMatchObject({
      short: 2 * KG,
      packages: { packs: [{ size: 2.5 * KG, count: 1 }], price: 4950 },
      by: '2026-12-12',
      goodTo: '2026-12-12',
      careDays: 14,
    });
    // 3 of 5 kg at 49.50 a 2.5 kg jug; 25.00 for the order, 2 kg at what was last paid; what is short is at risk.
    expect(cost).toEqual({
      inHand: { minor: 5940, known: true },
      toCome: { minor: 2500 + 3960, known: true },
      atRisk: { minor: 3960, known: true },
    });
  });

  it('is promised by one press as far as it is there, first to expire first, and what is missing is named', async () => {
    const { productId, labels } = await material({ count: 1, dates: { bestBefore: printed('2027-06-01') } });
    const later = must(
      await receiveContainers(test.book, by(), {
        productId,
        lotCode: 'SOONER',
        dates: { bestBefore: printed('2027-02-01') },
        count: 1,
        size: 2_500_000,
        receivedOn: TODAY,
      }),
    ).containers[0];
    const desk = await job();
    const id = await need(desk, productNeed(productId, 6 * KG));
    const answer = must(await reserveNeeds(test.book, by(), { jobId: desk }));
    expect(answer.promised.map((each) => each.label)).toEqual([later?.label, labels[0]]);
    expect(answer.stillShort).toMatchObject([{ amount: 1 * KG }]);
    expect(await held(labels[0] ?? '')).toEqual([[desk, 2.5 * KG]]);
    expect(refusedWith(await reserveNeeds(test.book, by(), { jobId: desk }))).toBe('nothing-to-reserve');
    expect(refusedWith(await reserveNeeds(test.book, by(), { jobId: desk, needIds: [id + 4000] }))).toBe('need-gone');
    expect((await read(desk)).canRelease).toBe(true);
  });

  it('promises two jobs that press at once nothing twice', async () => {
    const { productId, labels } = await material();
    const jobs = await Promise.all([1, 2, 3, 4].map(() => job()));
    for (const jobId of jobs) await need(jobId, productNeed(productId, 2 * KG));
    const outcomes = await Promise.all(jobs.map((jobId) => reserveNeeds(test.book, by(), { jobId })));
    const got = outcomes.flatMap((each) => (each.ok ? each.value.answer.promised.map((part) => part.amount) : []));
    expect(got.reduce((total, each) => total + each, 0)).toBe(2.5 * KG);
    const refused = outcomes.flatMap((each) => (each.ok ? [] : [each.error]));
    expect(refused).toHaveLength(2);
    for (const each of refused)
      expect(each).toMatchObject({ code: 'promised-elsewhere', facts: { who: 'Ada', free: 0 } });
    expect(sum((await held(labels[0] ?? '')).map(([, amount = 0]) => ({ amount })))).toBe(2.5 * KG);
  });

  it('goes down by what was pulled for the job, and is met when its step is done', async () => {
    const { productId, labels } = await material();
    const desk = await job();
    must(
      await addStep(test.book, by(), { jobId: desk, kind: 'other', name: 'Oil it', day: day('2026-12-10'), note: '' }),
    );
    const { id: stepId } = await test.book.read.step.findFirstOrThrow({ where: { jobId: desk } });
    await need(desk, productNeed(productId, 1 * KG, { stepId }));
    expect((await first(desk)).need).toMatchObject({ on: '2026-12-10', step: 'Oil it' });
    must(await reserveNeeds(test.book, by(), { jobId: desk }));
    must(
      await pullContainer(test.book, by(), {
        label: labels[0] ?? '',
        jobId: desk,
        asked: 300_000,
        purpose: 'client',
        dayOfUse: day('2026-12-10'),
        seen: 'care',
      }),
    );
    const now = await first(desk);
    expect([now.used, sum(now.standing.reserved), sum(now.standing.have)]).toEqual([300_000, 700_000, 0]);
    must(await finishStep(test.book, by(), { stepId, doneOn: TODAY, reason: 'Early' }));
    expect((await first(desk)).used).toBe(1 * KG);
    // What was pulled went into that step: the next one wants all of its own.
    const last = await need(desk, productNeed(productId, 0.5 * KG));
    expect((await read(desk)).needs.find((each) => each.need.id === last)?.used).toBe(0);
  });

  it('of any product that is the part of a system, by mass, though one is counted by volume', async () => {
    const system = { name: name('System'), part: 'A' as const };
    const heavy = await material({ product: { ...RESIN, name: name('Part A'), system } });
    const wet = await material({
      product: { name: name('Part A, wet'), unit: 'uL', packageSize: 1_000_000, system },
      size: 1_000_000,
    });
    const systemId = (await test.book.read.resinSystem.findFirstOrThrow({ where: { name: system.name } })).id;
    const desk = await job();
    await need(desk, { kind: 'part', systemId, part: 'A', milligrams: 3.6 * KG, surface: '', note: '' });
    const { standing } = await first(desk);
    expect(sum(standing.have)).toBe(3.6 * KG);
    expect(standing.have.map((part) => part.label).sort()).toEqual([...heavy.labels, ...wet.labels].sort());
    must(await reserveNeeds(test.book, by(), { jobId: desk }));
    const after = await first(desk);
    expect([sum(after.standing.reserved), after.standing.short]).toEqual([3.6 * KG, 0]);
  });

  it('is changed with its promises, and taken off with them; undoing brings both back', async () => {
    const { productId, labels } = await material();
    const desk = await job();
    const id = await need(desk, productNeed(productId, 2 * KG));
    must(await reserveNeeds(test.book, by(), { jobId: desk }));
    must(await changeNeed(test.book, by(), { ...productNeed(productId, 1 * KG), needId: id }));
    const changed = await first(desk);
    expect([changed.need.amount, sum(changed.standing.reserved)]).toEqual([1 * KG, 1 * KG]);
    expect(await held(labels[0] ?? '')).toEqual([[desk, 1 * KG]]);
    expect(refusedWith(await changeNeed(test.book, by(), { ...productNeed(productId, 1), needId: id }))).toBe(
      'need-gone',
    );
    const removed = must(await removeNeed(test.book, by(), { needId: changed.need.id }));
    expect((await read(desk)).needs).toEqual([]);
    expect(await held(labels[0] ?? '')).toEqual([]);
    must(await undo(removed.entryId));
    expect(sum((await first(desk)).standing.reserved)).toBe(1 * KG);
    const { entries } = await history(test.book, { jobId: desk });
    expect(entries.filter((each) => each.kind.startsWith('need-')).map((each) => each.canReverse)).toEqual([
      false,
      true,
      true,
    ]);
  });

  it('whose entry is reversed is none, and what it was promised stands on no list until it is freed', async () => {
    const { productId, labels } = await material();
    const desk = await job();
    const added = must(await addNeed(test.book, by(), { ...productNeed(productId, 1 * KG), jobId: desk }));
    must(await reserveNeeds(test.book, by(), { jobId: desk }));
    must(await undo(added.entryId));
    const now = await read(desk);
    expect(now.needs).toEqual([]);
    expect(now.loose).toMatchObject([{ label: labels[0], amount: 1 * KG }]);
  });

  it('is refused where it is nothing, of nothing, or cannot be compared', async () => {
    const { productId } = await material({ product: { densityGramsPerLitre: undefined } });
    const desk = await job();
    const add = async (fields: NeedFields) => refusedWith(await addNeed(test.book, by(), { ...fields, jobId: desk }));
    expect(await add(productNeed(productId, 0))).toBe('not-an-exact-amount');
    expect(await add(productNeed(9999, 5))).toBe('not-found');
    expect(await add(productNeed(productId, 5, { unit: 'uL' } as Partial<NeedFields>))).toBe('no-density');
    expect(await add(productNeed(productId, 5, { unit: 'piece' } as Partial<NeedFields>))).toBe('unit-does-not-fit');
    expect(await add({ kind: 'part', systemId: 9999, part: 'A', milligrams: 5, surface: '', note: '' })).toBe(
      'system-unknown',
    );
    expect(await add(productNeed(productId, 5, { stepId: 9999 }))).toBe('not-found');
    expect(await add({ kind: 'wood', species: '', form: '', count: 0, note: '' })).toBe('not-an-exact-amount');
  });

  it('of wood is the smallest that will do; a piece promised to another is not counted, but named', async () => {
    const receive = async (lengthNm: number) =>
      must(await receivePieces(test.book, by(), aSlab({ species: 'Pear', lengthNm, costMinor: 30_000 }))).pieces[0]
        ?.label ?? '';
    const [long, fits, other] = [await receive(3000 * MM), await receive(2000 * MM), await receive(2100 * MM)];
    await receive(900 * MM);
    const [desk, table] = [await job(), await job()];
    must(await givePiece(test.book, by(), { label: other, act: 'promise', jobId: table }));
    const wood: NeedFields = { kind: 'wood', species: 'pear', form: 'slab', lengthNm: 1800 * MM, count: 3, note: '' };
    await need(desk, wood);
    const { standing, cost, buy } = await first(desk);
    expect(standing.have.map((part) => part.label)).toEqual([fits, long]);
    expect(standing).toMatchObject({ short: 1, elsewhere: [{ jobId: table, amount: 1 }] });
    expect(cost).toMatchObject({ inHand: { minor: 60_000 }, atRisk: { minor: 30_000, known: true } });
    expect(buy).toMatchObject({ productId: null, packages: { amount: 1 }, price: 30_000 });
    const answer = must(await reserveNeeds(test.book, by(), { jobId: desk }));
    expect(answer.promised.map((each) => each.kind)).toEqual(['piece', 'piece']);
    must(await givePiece(test.book, by(), { label: fits, act: 'take', jobId: desk }));
    const now = await first(desk);
    expect([now.used, now.standing.reserved.map((part) => part.label)]).toEqual([1, [long]]);
  });

  it('counts an order until it came or is given up, and not when it is overdue', async () => {
    const { productId } = await material({ size: 1000, left: 1000, product: { packageSize: 1000 } });
    const desk = await job();
    await need(desk, productNeed(productId, 5000));
    const order = { productId, words: '', amount: 4000, supplier: '' };
    must(await addArriving(test.book, by(), { ...order, dueOn: day('2026-11-20') }));
    expect((await first(desk)).standing.short).toBe(4000);
    must(await addArriving(test.book, by(), { ...order, dueOn: day('2026-12-12') }));
    expect((await first(desk)).standing).toMatchObject({ short: 0, arriving: [{ amount: 4000 }] });
    const id = (await listArriving(test.book.read, { productId })).at(-1)?.id ?? 0;
    expect(refusedWith(await closeArriving(test.book, by(), { arrivingId: id, how: 'never', why: ' ' }))).toBe(
      'reason-needed',
    );
    const closed = must(await closeArriving(test.book, by(), { arrivingId: id, how: 'never', why: 'Sold out' }));
    expect((await first(desk)).standing.short).toBe(4000);
    expect(refusedWith(await closeArriving(test.book, by(), { arrivingId: id, how: 'came', why: '' }))).toBe(
      'arrival-closed',
    );
    must(await undo(closed.entryId));
    expect((await first(desk)).standing.short).toBe(0);
    const input = { ...order, dueOn: TODAY };
    expect(refusedWith(await addArriving(test.book, by(), { ...input, amount: 0 }))).toBe('not-an-exact-amount');
    expect(refusedWith(await addArriving(test.book, by(), { ...input, productId: 9999 }))).toBe('not-found');
    expect(refusedWith(await addArriving(test.book, by(), { ...input, productId: undefined }))).toBe('not-found');
    expect(refusedWith(await addArriving(test.book, by(), { ...input, costMinor: -1 }))).toBe('outside-range');
  });

  it('draws what can be promised: what ends, what comes, and what other agreed jobs need', async () => {
    const { productId } = await material({ dates: { bestBefore: printed('2026-12-20') } });
    must(
      await addArriving(test.book, by(), {
        productId,
        words: '',
        amount: 2 * KG,
        dueOn: day('2026-12-15'),
        supplier: 'Tarn',
      }),
    );
    const [desk, table] = [await job(), await job(day('2026-12-18'))];
    await need(table, productNeed(productId, 3 * KG));
    await need(desk, productNeed(productId, 1 * KG));
    const [curve] = (await read(desk)).curves;
    // 2.5 kg to 20 Dec and 2 kg from 15 Dec; 3 kg is wanted on 18 Dec, of which 2 kg can be of what comes.
    expect(curve?.steps.map((step) => [step.from, step.free])).toEqual([
      [TODAY, 1.5 * KG],
      ['2026-12-15', 1.5 * KG],
      ['2026-12-21', 1.5 * KG],
    ]);
    expect(curve?.steps.map((step) => step.reasons.map((reason) => reason.code))).toEqual([
      ['today'],
      ['comes'],
      ['ends'],
    ]);
    expect(curve?.others).toMatchObject([{ on: '2026-12-18', amount: 3 * KG }]);
    expect(curve?.asks).toEqual([{ on: '2026-12-12', goodTo: '2026-12-12', amount: 1 * KG, free: 1.5 * KG }]);
  });

  it('of one finish on several days is one line, with packages for the sum', async () => {
    const { productId } = await material({ size: 1000, left: 1000, product: { packageSize: 1000 } });
    const desk = await job();
    await need(desk, productNeed(productId, 900));
    await need(desk, productNeed(productId, 900));
    const joined = joinNeeds((await read(desk)).needs);
    expect(joined).toHaveLength(1);
    expect(joined[0]?.together).toMatchObject({
      need: { amount: 1800 },
      buy: { short: 800, packages: { amount: 1000 } },
    });
    expect(sum(joined[0]?.together.standing.have ?? [])).toBe(1000);
  });

  it('is bought for all jobs together, the free stock counted once, by the first day and good to the last', async () => {
    const { productId } = await material({ product: { packageSize: 2_500_000 } });
    const [desk, table, maybe] = [await job(), await job(day('2026-12-30')), await job(day('2027-01-20'), 'asked')];
    for (const jobId of [desk, table, maybe]) await need(jobId, productNeed(productId, 2 * KG));
    const line = async (unsure: boolean) =>
      (await buyList(test.book, head, { unsure })).lines.find((each) => each.productId === productId);
    expect(await line(false)).toMatchObject({
      short: 1.5 * KG,
      packages: { packs: [{ count: 1 }] },
      by: '2026-12-30',
      goodTo: '2026-12-30',
      wanted: [{ jobId: table, short: 1.5 * KG }],
    });
    expect(await line(true)).toMatchObject({
      short: 3.5 * KG,
      packages: { packs: [{ count: 2 }] },
      goodTo: '2027-01-20',
    });
    expect((await buyList(test.book, head, { unsure: false })).unsureJobs).toBe(1);
  });

  it('that was promised and is not touched is found: after its day, or after a month', async () => {
    const { labels } = await material({ dates: { bestBefore: printed('2028-06-01') } });
    const [late, far] = [await job(day('2026-12-01')), await job(day('2027-06-01'))];
    const items = [{ label: labels[0] ?? '', amount: 1 * KG }];
    must(await reserve(test.book, by(), { jobId: late, items }));
    must(await reserve(test.book, by(), { jobId: far, items }));
    const resting = async (today: CalendarDate) =>
      (await notMoving(test.book, { today, timeZone: 'America/New_York' }))
        .filter((each) => each.label === labels[0])
        .map((each) => [each.jobId, each.days, each.late]);
    expect(await resting(TODAY)).toEqual([]);
    expect(await resting(day('2026-12-02'))).toEqual([[late, 7, true]]);
    // The far one has rested for as long as its day is away.
    expect(await resting(addDays(TODAY, 93))).toEqual([[late, 93, true]]);
    expect(await resting(addDays(TODAY, 94))).toEqual([
      [late, 94, true],
      [far, 94, false],
    ]);
  });
});
