import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readAllocation } from '@/app/_server/allocation/read-allocation';
import { addJob } from '@/app/_server/jobs/add-job';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { addNeed } from '@/app/_server/needs/add-need';
import { readNeeds } from '@/app/_server/needs/read-needs';
import { reserveNeeds } from '@/app/_server/needs/reserve-needs';
import { keepPour } from '@/app/_server/pours/keep-pour';
import { pourLift } from '@/app/_server/pours/pour-lift';
import { readPour } from '@/app/_server/pours/read-pour';
import { scanForLift } from '@/app/_server/pours/scan-for-lift';
import { weighOutForLift } from '@/app/_server/pours/weigh-out';
import { releaseAll } from '@/app/_server/promises/release-all';
import { reserve } from '@/app/_server/promises/reserve';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { receiveContainers } from '@/app/_server/stock/receive-containers';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';
import { planned, pourAsk, readyToPour } from '@/tests/support/pour-of-a-test';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, NOW, type TestBook, TODAY } from '@/tests/support/test-book';

const KG = 1_000_000;
const HEAD = { today: TODAY, currency: 'USD' };

describe('one lot for one surface, when some of it is there already', () => {
  let test: TestBook;
  beforeAll(async () => {
    test = await freshBook();
  });
  afterAll(async () => {
    expect((await proveBook(test.book.read)).differences).toEqual([]);
    await test.remove();
  });

  /** Another container of the same product, of a lot that is to be used first: it ends sooner. */
  const sooner = async (label: string, lotCode: string, size: number) => {
    const { productId } = await test.book.read.container.findFirstOrThrow({ where: { stock: { label } } });
    const dates = { bestBefore: { date: day('2027-02-01'), precision: 'day' as const, confirmed: true } };
    const { containers } = must(
      await receiveContainers(test.book, by(), { productId, lotCode, dates, count: 1, size, receivedOn: TODAY }),
    );
    return { label: containers[0]?.label ?? '', stockId: containers[0]?.stockId ?? 0 };
  };
  const takesOf = async (jobId: number, part: 'A' | 'B') => {
    const { ask, allocation, stood } = await readAllocation(test.book, HEAD);
    const ids = stood.needs.filter(({ need }) => need.jobId === jobId && need.system?.part === part);
    const own = new Set(ids.map(({ need }) => String(need.id)));
    expect(allocation.status).toBe('proved');
    const of = allocation.takes.filter(({ needId }) => own.has(needId)).map(({ containerId }) => Number(containerId));
    return { stockIds: [...new Set(of)], measures: allocation.measures, used: ask.used };
  };
  /** A pour of two lifts; the first of them is poured of what was on hand. */
  const halfPoured = async (size: number) => {
    const ready = await readyToPour(test.book, { size });
    const { pourId } = await planned(test.book, ready);
    const batch = (await readPour(test.book.read, pourId))?.lifts[0]?.batches[0];
    const weigh = (part: 'A' | 'B', label: string, mass = 0) =>
      weighOutForLift(test.book, by(), { pourId, nr: 1, batch: 1, part, label, mass, seen: 'care' });
    const { entryId } = must(await weigh('A', ready.a, batch?.a));
    must(await weigh('B', ready.b, batch?.b));
    const poured = must(
      await pourLift(test.book, by(), { pourId, nr: 1, room: tenthsCelsius(210), note: '', reason: '' }),
    );
    return { ...ready, pourId, entryId, poured: poured.entryId };
  };

  it('the next lift goes on with the lot of the first, for the allocation and the press, though another ends sooner', async () => {
    const ready = await halfPoured(10 * KG);
    const other = await sooner(ready.a, 'SOONER', 10 * KG);
    const taken = await takesOf(ready.jobId, 'A');
    expect(taken.stockIds).toEqual([ready.stockA]);
    expect(taken.measures).toMatchObject({ splitSurfaces: 0, lotChanges: 0 });
    const { promised } = must(await reserveNeeds(test.book, by(), { jobId: ready.jobId }));
    expect(promised.map(({ label }) => label).sort()).toEqual([ready.a, ready.b].sort());

    // On the mix card the other asks for care, and names the lot that is there; what is weighed from it keeps that word.
    const slot = { pourId: ready.pourId, nr: 2, batch: 1, part: 'A' as const };
    const scanned = async (label: string) => {
      const answer = await scanForLift(test.book, { ...slot, scan: { text: label } }, NOW);
      if (!answer.ok || answer.value.kind !== 'container') throw new Error('It is a container.');
      return answer.value.verdict;
    };
    const { code } = await test.book.read.lot.findFirstOrThrow({
      where: { containers: { some: { stockId: ready.stockA } } },
    });
    expect(await scanned(other.label)).toMatchObject({ word: 'care', reasons: [{ code: 'other-lot', lots: [code] }] });
    expect((await scanned(ready.a)).reasons.map((reason) => reason.code)).not.toContain('other-lot');
    must(await releaseAll(test.book, by(), { jobId: ready.jobId, why: '' }));
    // The next day, when it may be poured again.
    const later = { ...by(), now: new Date('2026-11-26T09:00:00Z') };
    const weigh = { ...slot, label: other.label, mass: 1000 };
    expect(await weighOutForLift(test.book, later, { ...weigh, seen: 'use' })).toMatchObject({
      error: { code: 'verdict-changed', facts: { word: 'care' } },
    });
  });

  it('where what is left of it is too little the surface is said to be of two lots, once, on both pages', async () => {
    const ready = await halfPoured(1.5 * KG);
    const other = await sooner(ready.a, 'ONLY', 10 * KG);
    const { stockIds, measures } = await takesOf(ready.jobId, 'A');
    expect(stockIds).toContain(other.stockId);
    expect(measures.splitSurfaces).toBeGreaterThanOrEqual(1);
    const { needs } = await readNeeds(test.book, ready.jobId, HEAD);
    const mixed = needs
      .filter(({ standing }) => standing.lotsMixed)
      .map(({ need }) => [need.on > TODAY, need.system?.part]);
    expect(mixed).toContainEqual([true, 'A']);
    expect(mixed.every(([isLater]) => isLater)).toBe(true);
  });

  it('a pour that is planned anew under another name is the same surface, and a weighing that is undone is none', async () => {
    const ready = await halfPoured(10 * KG);
    await sooner(ready.a, 'ANEW', 10 * KG);
    const first = day('2026-11-26');
    must(
      await keepPour(test.book, by(), pourAsk(ready, { pourId: ready.pourId, name: 'Lake', first, reason: 'A test' })),
    );
    expect((await takesOf(ready.jobId, 'A')).stockIds).toEqual([ready.stockA]);
  });

  it('what is promised for one lift is the lot of the other, whichever comes first', async () => {
    const ready = await readyToPour(test.book, { size: 10 * KG });
    await planned(test.book, ready);
    const other = await sooner(ready.a, 'PROMISED', 10 * KG);
    const { needs } = await readNeeds(test.book, ready.jobId, HEAD);
    const last = needs.filter(({ need }) => need.system?.part === 'A').at(-1)?.need;
    expect((await takesOf(ready.jobId, 'A')).stockIds).toEqual([other.stockId]);
    const item = { label: ready.a, amount: last?.amount, needId: last?.id };
    must(await reserve(test.book, by(), { jobId: ready.jobId, items: [item] }));
    expect((await takesOf(ready.jobId, 'A')).stockIds).toEqual([ready.stockA]);
    const standing = await readNeeds(test.book, ready.jobId, HEAD);
    const [now] = standing.needs.filter(({ need }) => need.system?.part === 'A');
    expect(now?.standing).toMatchObject({ have: [{ label: ready.a }], lotsMixed: false });
  });

  it('the next coat goes on with the lot that was pulled for the first, until that is undone', async () => {
    const { productId, labels, containers } = await stocked(test.book, {
      product: { name: 'Hard oil', kind: 'oil', system: undefined, openedLife: undefined },
      dates: { bestBefore: { date: day('2027-06-01'), precision: 'day', confirmed: true } },
      size: KG,
    });
    const other = await sooner(labels[0] ?? '', 'OIL-2', KG);
    const fields = { name: 'Shelf', purpose: 'client' as const, client: '', dayOfUse: day('2026-12-10'), note: '' };
    const { jobId } = must(await addJob(test.book, by(), fields));
    for (const amount of [300_000, 200_000]) {
      const need = { kind: 'product' as const, productId, amount, unit: 'mg' as const, surface: 'Top', note: '' };
      must(await addNeed(test.book, by(), { jobId, ...need }));
    }
    const tins = async () => {
      const { allocation, stood } = await readAllocation(test.book, HEAD);
      const ids = new Set(stood.needs.flatMap(({ need }) => (need.jobId === jobId ? [String(need.id)] : [])));
      return [...new Set(allocation.takes.flatMap((take) => (ids.has(take.needId) ? [Number(take.containerId)] : [])))];
    };
    expect(await tins()).toEqual([other.stockId]);
    const pull = { label: labels[0] ?? '', jobId, asked: 300_000, purpose: 'client' as const, dayOfUse: TODAY };
    const { entryId } = must(await pullContainer(test.book, by(), { ...pull, seen: 'care' }));
    expect(await tins()).toEqual([containers[0]?.stockId]);
    must(await reverseEntry(test.book, by(), { entryId, why: 'Mistaken' }));
    expect(await tins()).toEqual([other.stockId]);
  });
});
