import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readAllocation } from '@/app/_server/allocation/read-allocation';
import { addJob } from '@/app/_server/jobs/add-job';
import { history } from '@/app/_server/ledger/history';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { rebuildBalances } from '@/app/_server/ledger/rebuild-balances';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { addNeed } from '@/app/_server/needs/add-need';
import { reserveNeeds } from '@/app/_server/needs/reserve-needs';
import { weighOutForLift } from '@/app/_server/pours/weigh-out';
import { arrivalProduct } from '@/app/_server/products/arrival-product';
import { reserve } from '@/app/_server/promises/reserve';
import { answerPull } from '@/app/_server/pull/answer-pull';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { changeHold } from '@/app/_server/stock/change-hold';
import { discard } from '@/app/_server/stock/discard';
import { loadContainer } from '@/app/_server/stock/load-container';
import { lotPage } from '@/app/_server/stock/lot-page';
import { holdAll } from '@/app/_server/trace/hold-all';
import { leftOf } from '@/app/_server/trace/holdable';
import { releaseAll } from '@/app/_server/trace/release-all';
import { stillHeld } from '@/app/_server/trace/still-held';
import { traceFrom } from '@/app/_server/trace/trace-from';
import { readWatch } from '@/app/_server/watch/read-watch';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import { unwrap } from '@/shared/result/result';
import { judge } from '@/shared/shelf-life/judge';
import { sayReason } from '@/shared/shelf-life/say-reason';
import { anotherOf } from '@/tests/support/lot-of-a-test';
import { g } from '@/tests/support/pour-figures';
import { planned } from '@/tests/support/pour-of-a-test';
import { by, day, freshBook, must, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';
import { pouredTable } from '@/tests/support/trace-of-a-test';

type Table = Awaited<ReturnType<typeof pouredTable>>;

describe('a hold from a trace stands on the lot', () => {
  let test: TestBook;
  let table: Table;
  let pressed: number;
  beforeAll(async () => {
    test = await freshBook();
  });
  afterAll(async () => {
    expect((await proveBook(test.book.read)).differences).toEqual([]);
    expect((await rebuildBalances(test.book)).mended).toEqual([]);
    await test.remove();
  });

  const undo = async (entryId: number) => must(await reverseEntry(test.book, by(), { entryId, why: 'A mistake' }));
  const holdOf = async (id: number) => (await test.book.read.stock.findUniqueOrThrow({ where: { id } })).hold;
  const holdsOf = (...ids: number[]) => Promise.all(ids.map(holdOf));
  const verdictOf = async (label: string) => {
    const line = await loadContainer(test.book.read, label);
    if (!line) throw new Error(`${label} is gone.`);
    return judge({ ...line.candidate, purpose: 'client', dayOfUse: TODAY, today: TODAY });
  };
  const reasons = async (label: string) =>
    (await verdictOf(label)).reasons.filter(({ weight }) => weight === 'stop').map((reason) => sayReason(reason));
  const newestOf = async (stockId: number) => (await history(test.book, { stockId })).entries[0]?.id ?? 0;
  const hold = async (id: number, why = 'Stays soft') =>
    must(await holdAll(test.book, by(), { kind: 'lot', id, wide: false, why }));
  const ofJug = (label: string) => ({ label, purpose: 'client' as const, dayOfUse: TODAY, asked: g(100) });

  describe('and holds what comes in later', () => {
    beforeAll(async () => {
      table = await pouredTable(test.book);
      const { entryId, lots, held } = await hold(table.lotA);
      pressed = entryId;
      expect(lots.map(({ stockId }) => stockId)).toEqual([table.lotA]);
      expect(held.map(({ stockId }) => stockId)).toEqual([table.aId, table.slabId]);
    });

    it('says so at arrival, on the card before and in the answer after', async () => {
      const lot = await test.book.read.lot.findUniqueOrThrow({ where: { stockId: table.lotA } });
      const known = (await arrivalProduct(test.book, lot.productId))?.lots.find(({ lotId }) => lotId === table.lotA);
      expect(known).toMatchObject({ facts: { hold: 'on-hold' }, heldBecause: 'Stays soft' });
      expect(await anotherOf(test.book, table.lotA)).toMatchObject({ lotHold: 'on-hold', heldBecause: 'Stays soft' });
      expect(await anotherOf(test.book, table.lotB)).toMatchObject({ lotHold: 'free', heldBecause: '' });
    });

    it('is a Stop that names the hold of the lot, and cannot be used around', async () => {
      const later = await anotherOf(test.book, table.lotA);
      // It was set apart by nobody itself.
      expect(await holdOf(later.stockId)).toBe('free');
      expect(await reasons(later.label)).toEqual(['Its lot is on hold.']);
      expect((await verdictOf(later.label)).override).toEqual({ allowed: false, because: ['on-hold'] });
      const answer = unwrap(await answerPull(test.book, ofJug(later.label), by().now));
      expect(answer.heldBecause).toEqual({ container: '', lot: 'Stays soft' });
      expect(refusedWith(await pullContainer(test.book, by(), { ...ofJug(later.label), seen: 'use' }))).toBe(
        'verdict-changed',
      );
      const asStop = { ...ofJug(later.label), seen: 'stop' as const };
      expect(refusedWith(await pullContainer(test.book, by(), asStop))).toBe('stop-not-overridable');
    });

    it('is not weighed out for a lift', async () => {
      const later = await anotherOf(test.book, table.lotA);
      const { pourId } = await planned(test.book, table, { name: 'Second river' });
      const slot = { pourId, nr: 1, batch: 1, part: 'A' as const, mass: 1000, label: later.label };
      expect(refusedWith(await weighOutForLift(test.book, by(), { ...slot, seen: 'stop' }))).toBe(
        'stop-not-overridable',
      );
    });

    it('is not promised, by its label, by its lot or for a need, and not allotted', async () => {
      const later = await anotherOf(test.book, table.lotA);
      const { productId } = await test.book.read.lot.findUniqueOrThrow({ where: { stockId: table.lotA } });
      const fields = { name: 'Waiting table', purpose: 'client' as const, client: '', dayOfUse: TODAY, note: '' };
      const { jobId } = must(await addJob(test.book, by(), fields));
      const one = await reserve(test.book, by(), { jobId, items: [{ label: later.label, amount: g(100) }] });
      expect(refusedWith(one)).toBe('stop-not-overridable');
      if (!one.ok) expect(sayRefusal(one.error).what).toMatch(/may not be used: its lot is on hold\.$/);
      const lot = await reserve(test.book, by(), { jobId, items: [{ lotId: table.lotA, amount: g(100) }] });
      expect(refusedWith(lot)).toBe('stop-not-overridable');
      must(
        await addNeed(test.book, by(), {
          jobId,
          kind: 'product',
          productId,
          amount: g(100),
          unit: 'mg',
          surface: '',
          note: '',
        } as never),
      );
      const allotted = async () =>
        (await readAllocation(test.book, { today: TODAY, currency: 'USD' })).allocation.takes.map(({ containerId }) =>
          Number(containerId),
        );
      const ofLot = (await lotPage(test.book, table.lotA))?.containers.map(({ stockId }) => stockId) ?? [];
      expect((await allotted()).filter((id) => ofLot.includes(id))).toEqual([]);
      expect(refusedWith(await reserveNeeds(test.book, by(), { jobId }))).toBeTruthy();
      expect(await test.book.read.promised.count({ where: { jobId, amount: { gt: 0 } } })).toBe(0);
      // Released, the very same asks are met.
      const { entryId } = must(await releaseAll(test.book, by(), { entryId: pressed, why: 'The test pour is hard' }));
      expect((await allotted()).filter((id) => ofLot.includes(id)).length).toBeGreaterThan(0);
      must(await reserveNeeds(test.book, by(), { jobId }));
      await undo(await newestEntry('reserved'));
      await undo(entryId);
    });

    it('stands on Watch as one line of its lot', async () => {
      const watch = await readWatch(test.book, { today: TODAY, timeZone: 'America/New_York' });
      const ofLot = watch.lists['on-hold'].groups.filter(({ line }) => line.lotId === table.lotA);
      expect(ofLot).toHaveLength(1);
      expect(ofLot[0]?.count).toBe(
        (await lotPage(test.book, table.lotA))?.containers.filter(({ left }) => left > 0).length,
      );
    });

    it('is not counted as free by another trace, nor held a second time', async () => {
      const traced = await traceFrom(test.book.read, { kind: 'lot', id: table.lotA });
      if (!traced) throw new Error('There is no trace.');
      const { left, free, freeLots } = leftOf(traced);
      expect(left.length).toBeGreaterThan(3);
      expect([free, freeLots]).toEqual([[], []]);
      const again = await holdAll(test.book, by(), { kind: 'lot', id: table.lotA, wide: false, why: 'Again' });
      expect(refusedWith(again)).toBe('nothing-to-hold');
    });

    const newestEntry = async (kind: string) =>
      (await test.book.read.entry.findFirstOrThrow({ where: { kind }, orderBy: { id: 'desc' } })).id;
  });

  it('is held where nothing of the lot is left, for what is still to come', async () => {
    const { lotA, a, aId, slab, slabId } = await pouredTable(test.book);
    must(await discard(test.book, by(), { label: a, why: 'Spilt' }));
    must(await discard(test.book, by(), { label: slab, why: 'Burnt' }));
    const { held, lots } = await hold(lotA);
    expect([held, lots.map(({ stockId }) => stockId)]).toEqual([[], [lotA]]);
    expect(await holdsOf(aId, slabId)).toEqual(['free', 'free']);
    expect(await reasons((await anotherOf(test.book, lotA)).label)).toEqual(['Its lot is on hold.']);
  });

  it('is held by a container, a job and a piece alike, each lot behind them', async () => {
    const first = await pouredTable(test.book);
    const byJug = must(
      await holdAll(test.book, by(), { kind: 'container', id: first.bId, wide: false, why: 'Cloudy' }),
    );
    expect(byJug.lots.map(({ stockId }) => stockId)).toEqual([first.lotB]);
    expect(await holdsOf(first.lotA, first.lotB)).toEqual(['free', 'on-hold']);
    const byJob = must(await holdAll(test.book, by(), { kind: 'job', id: first.jobId, wide: false, why: 'Soft' }));
    expect(byJob.lots.map(({ stockId }) => stockId)).toEqual([first.lotA]);
    const second = await pouredTable(test.book);
    const byPiece = must(
      await holdAll(test.book, by(), { kind: 'piece', id: second.slabId, wide: false, why: 'Soft' }),
    );
    expect(byPiece.lots.map(({ stockId }) => stockId)).toEqual([second.lotA, second.lotB]);
  });

  describe('until it is released', () => {
    it('one press frees lot, containers and what came since; its reversal is the exact opposite', async () => {
      const { lotA, aId, slabId } = await pouredTable(test.book);
      const { entryId } = await hold(lotA);
      const later = await anotherOf(test.book, lotA);
      const released = must(await releaseAll(test.book, by(), { entryId, why: 'The test pour is hard' }));
      expect([released.labels.length, released.lots]).toEqual([2, 1]);
      expect(await holdsOf(lotA, aId, slabId, later.stockId)).toEqual(['free', 'free', 'free', 'free']);
      expect(await reasons(later.label)).toEqual([]);
      expect(await stillHeld(test.book.read, { entryId })).toEqual([]);

      await undo(released.entryId);
      expect(await holdsOf(lotA, aId, slabId, later.stockId)).toEqual(['on-hold', 'on-hold', 'on-hold', 'free']);
      expect(await reasons(later.label)).toEqual(['Its lot is on hold.']);
      // It is the same hold again, with its reason, and can be released again.
      expect((await stillHeld(test.book.read, { entryId })).map(({ stockId }) => stockId)).toEqual([lotA, aId, slabId]);
      expect((await lotPage(test.book, lotA))?.heldBecause).toBe('Stays soft');
      must(await releaseAll(test.book, by(), { entryId, why: 'Hard after all' }));
      expect(await holdsOf(lotA, aId, slabId)).toEqual(['free', 'free', 'free']);
    });

    it('undoing the hold frees lot and containers alike, and undoing that holds them again', async () => {
      const { lotA, aId } = await pouredTable(test.book);
      const { entryId } = await hold(lotA);
      const later = await anotherOf(test.book, lotA);
      await undo(entryId);
      expect(await holdsOf(lotA, aId)).toEqual(['free', 'free']);
      expect(await reasons(later.label)).toEqual([]);
      await undo(await newestOf(lotA));
      expect(await holdsOf(lotA, aId)).toEqual(['on-hold', 'on-hold']);
      expect((await stillHeld(test.book.read, { stockIds: [lotA] }))[0]?.entryId).toBe(entryId);
    });

    it('on the page of the lot its containers that the trace holds are free with it, and no other', async () => {
      const { lotA, aId, slabId } = await pouredTable(test.book);
      const dented = await anotherOf(test.book, lotA);
      must(await changeHold(test.book, by(), { stockId: dented.stockId, hold: 'on-hold', why: 'Dented' }));
      const { entryId } = await hold(lotA);
      const page = await lotPage(test.book, lotA);
      expect(page?.held.map(({ stockId, inAll }) => [stockId, inAll])).toEqual([
        [lotA, 3],
        [aId, 3],
      ]);
      const released = must(await changeHold(test.book, by(), { stockId: lotA, hold: 'free', why: 'The maker wrote' }));
      expect(released).toEqual({ hold: 'free', with: 1 });
      expect(await holdsOf(lotA, aId, dented.stockId, slabId)).toEqual(['free', 'free', 'on-hold', 'on-hold']);
      // The wood the trace holds is still the trace's to release.
      expect((await stillHeld(test.book.read, { entryId })).map(({ stockId }) => stockId)).toEqual([slabId]);
      await undo(await newestOf(lotA));
      expect(await holdsOf(lotA, aId, dented.stockId)).toEqual(['on-hold', 'on-hold', 'on-hold']);
      expect((await stillHeld(test.book.read, { entryId })).map(({ stockId }) => stockId)).toEqual([lotA, aId, slabId]);
    });

    it('a lot recalled since stays recalled, and so does what comes in of it', async () => {
      const { lotA, aId } = await pouredTable(test.book);
      const { entryId } = await hold(lotA);
      must(await changeHold(test.book, by(), { stockId: lotA, hold: 'recalled', why: 'The maker wrote' }));
      must(await releaseAll(test.book, by(), { entryId, why: 'Not our pour' }));
      expect(await holdsOf(lotA, aId)).toEqual(['recalled', 'free']);
      const later = await anotherOf(test.book, lotA);
      expect([later.lotHold, later.heldBecause]).toEqual(['recalled', 'The maker wrote']);
      expect(await reasons(later.label)).toEqual(['Its lot is recalled.']);
    });
  });

  it('holds whatever comes and goes at the same moment: nothing is taken after it, nothing comes in free', async () => {
    const { lotA, a } = await pouredTable(test.book);
    const pulls = [...Array(12)].map(() => pullContainer(test.book, by(), { ...ofJug(a), seen: 'care' }));
    const [, , ...arrived] = await Promise.all([
      hold(lotA),
      Promise.all(pulls),
      ...[...Array(6)].map(() => anotherOf(test.book, lotA)),
    ]);
    for (const { label } of arrived) expect((await reasons(label))[0]).toBe('Its lot is on hold.');
    expect((await proveBook(test.book.read)).differences).toEqual([]);
  });

  it('knows the reason of a lot beyond the newest that the arrival card has', async () => {
    const { lotA } = await pouredTable(test.book);
    const { productId } = await test.book.read.lot.findUniqueOrThrow({ where: { stockId: lotA } });
    await hold(lotA, 'An old lot');
    await test.book.write(async (tx) => {
      for (let nr = 0; nr < 205; nr += 1) {
        const { id } = await tx.stock.create({ data: { kind: 'lot' }, select: { id: true } });
        await tx.lot.create({
          data: { stockId: id, productId, code: `N-${nr}`, madeOn: day('2026-01-01'), madePrecision: 'day' },
        });
      }
    });
    const product = await arrivalProduct(test.book, productId);
    expect(product?.lots.find(({ lotId }) => lotId === lotA)?.heldBecause).toBe('An old lot');
    expect(product?.lots).toHaveLength(201);
  });
});
