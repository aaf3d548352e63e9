import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { rebuildBalances } from '@/app/_server/ledger/rebuild-balances';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { reserveNeeds } from '@/app/_server/needs/reserve-needs';
import { keepPour } from '@/app/_server/pours/keep-pour';
import { keepSheet } from '@/app/_server/pours/keep-sheet';
import { type PourLift, pourLift } from '@/app/_server/pours/pour-lift';
import { promisedTins } from '@/app/_server/pours/promised-tins';
import { readPour } from '@/app/_server/pours/read-pour';
import { samplesOfLifts } from '@/app/_server/pours/samples-of-lifts';
import { voidChoices } from '@/app/_server/pours/void-choices';
import { type WeighOut, weighOutForLift } from '@/app/_server/pours/weigh-out';
import { keepSample } from '@/app/_server/samples/keep-sample';
import { sampleChoices } from '@/app/_server/samples/list-samples';
import { discard } from '@/app/_server/stock/discard';
import { givePiece } from '@/app/_server/stock/give-piece';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';
import { FACTS, g, mm } from '@/tests/support/pour-figures';
import { planned, pourAsk, readyToPour } from '@/tests/support/pour-of-a-test';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, NOW, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

const ROOM = tenthsCelsius(210);
const TOMORROW = day('2026-11-26');

describe('a pour at the bench', () => {
  let test: TestBook;
  beforeAll(async () => {
    test = await freshBook();
  });
  afterAll(async () => {
    expect((await proveBook(test.book.read)).differences).toEqual([]);
    expect((await rebuildBalances(test.book)).mended).toEqual([]);
    await test.remove();
  });

  /** Who asks, so many hours after the time of the test. */
  const at = (hours: number) => ({ ...by(), now: new Date(NOW.getTime() + hours * 3_600_000) });
  const undo = (entryId: number, hours = 0) => reverseEntry(test.book, at(hours), { entryId, why: 'A mistake' });
  const pourOf = async (pourId: number) => {
    const found = await readPour(test.book.read, pourId);
    if (!found) throw new Error('There is no such pour.');
    return found;
  };
  const liftOf = async (pourId: number, nr: number) => {
    const lift = (await pourOf(pourId)).lifts.find((each) => each.nr === nr);
    if (!lift) throw new Error('There is no such lift.');
    return lift;
  };
  type Ready = Awaited<ReturnType<typeof readyToPour>>;
  const weigh = (
    { pourId, nr, hours = 0 }: { pourId: number; nr: number; hours?: number },
    part: 'A' | 'B',
    label: string,
    more: Partial<WeighOut> = {},
  ) =>
    weighOutForLift(test.book, at(hours), {
      pourId,
      nr,
      batch: 1,
      part,
      label,
      mass: part === 'A' ? g(1104) : g(497),
      seen: 'care',
      ...more,
    });
  const pour = (
    { pourId, nr, hours = 0 }: { pourId: number; nr: number; hours?: number },
    more: Partial<PourLift> = {},
  ) => pourLift(test.book, at(hours), { pourId, nr, room: ROOM, note: '', reason: '', ...more });
  const weighBoth = async (
    where: { pourId: number; nr: number; hours?: number },
    { a, b }: Ready,
    more?: Partial<WeighOut>,
  ) => {
    must(await weigh(where, 'A', a, more));
    must(await weigh(where, 'B', b));
  };
  /** A pour whose first lift was poured at the time of the test; the window of the sheet is from 12 to 24 hours. */
  const firstPoured = async (more: Partial<PourLift> = {}, hours = 0) => {
    const ready = await readyToPour(test.book);
    const { pourId } = await planned(test.book, ready);
    await weighBoth({ pourId, nr: 1 }, ready);
    const { entryId } = must(await pour({ pourId, nr: 1, hours }, more));
    return { ...ready, pourId, entryId };
  };

  describe('on a lift that was poured', () => {
    it('weighs nothing too early without a reason, which stays with the lift and is asked once', async () => {
      const { pourId, ...ready } = await firstPoured();
      const where = { pourId, nr: 2, hours: 3 };
      const refused = await weigh(where, 'A', ready.a);
      expect(refused).toMatchObject({
        error: { code: 'too-early-to-pour-again', field: 'early', facts: { below: 1, hours: 3, from: 12, about: 0 } },
      });
      if (!refused.ok) {
        expect(sayRefusal(refused.error).what).toBe(
          'Lift 1 below it was poured 3 hours ago. The sheet says from 12 hours.',
        );
      }
      expect(refusedWith(await weigh(where, 'A', ready.a, { below: { early: ' ', sanded: true } }))).toBe(
        'too-early-to-pour-again',
      );
      const early = { early: 'The maker says so for thin ones' };
      const { entryId } = must(await weigh(where, 'A', ready.a, { below: early }));
      const entry = await test.book.read.entry.findUniqueOrThrow({ where: { id: entryId } });
      expect(entry.why).toContain('on lift 1 too early: The maker says so for thin ones');
      expect((await liftOf(pourId, 2)).weighed[0]?.below).toEqual(early);
      must(await weigh(where, 'B', ready.b));
      must(await pour(where));
      // Undone, it is asked again.
      const { poured, weighed } = await liftOf(pourId, 2);
      must(await undo(poured?.entryId ?? 0, 3));
      for (const { entryId: each } of [...weighed].reverse()) must(await undo(each, 3));
      expect(refusedWith(await weigh(where, 'A', ready.a))).toBe('too-early-to-pour-again');
    });

    it('asks nothing while it is tacky, at both ends of the window', async () => {
      const { pourId, ...ready } = await firstPoured();
      must(await weigh({ pourId, nr: 2, hours: 12 }, 'A', ready.a));
      must(await weigh({ pourId, nr: 2, hours: 23.5 }, 'B', ready.b));
      must(await pour({ pourId, nr: 2, hours: 24 }));
      expect((await liftOf(pourId, 2)).poured).toMatchObject({ on: TOMORROW, isExact: true, below: {} });
    });

    it('is sanded first once the window has closed, and says so where it closes over the bucket', async () => {
      const { pourId, ...ready } = await firstPoured();
      await weighBoth({ pourId, nr: 2, hours: 23 }, ready);
      const late = { pourId, nr: 2, hours: 24.5 };
      const refused = await pour(late, { reason: 'It will hold' });
      expect(refused).toMatchObject({ error: { code: 'sand-first', field: 'sanded', facts: { to: 24, hours: 24.5 } } });
      if (!refused.ok) expect(sayRefusal(refused.error).todo).toContain('dust mask');
      must(await pour(late, { sanded: true }));
      expect((await liftOf(pourId, 2)).poured).toMatchObject({
        why: 'River, lift 2, lift 1 sanded first',
        below: { sanded: true },
      });
    });

    it('is ticked as sanded at the first weighing, and not asked for the second or the pouring', async () => {
      const { pourId, ...ready } = await firstPoured();
      const where = { pourId, nr: 2, hours: 40 };
      expect(refusedWith(await weigh(where, 'A', ready.a))).toBe('sand-first');
      await weighBoth(where, ready, { below: { sanded: true } });
      must(await pour(where));
    });

    it('counts from noon where only the day is known, and from its last weighing where that was later', async () => {
      const known = await firstPoured({ happenedOn: TODAY }, 24);
      // Noon in New York is two hours after the time of the test.
      expect((await liftOf(known.pourId, 1)).poured).toMatchObject({ at: '2026-11-25T17:00:00.000Z', isExact: false });
      const refused = await weigh({ pourId: known.pourId, nr: 2, hours: 13 }, 'A', known.a);
      expect(refused).toMatchObject({ error: { facts: { hours: 11, about: 1 } } });
      if (!refused.ok) expect(sayRefusal(refused.error).what).toContain('about 11 hours ago');
      must(await weigh({ pourId: known.pourId, nr: 2, hours: 14 }, 'A', known.a));

      const ready = await readyToPour(test.book);
      const { pourId } = await planned(test.book, ready);
      await weighBoth({ pourId, nr: 1, hours: 8 }, ready);
      must(await pour({ pourId, nr: 1, hours: 30 }, { happenedOn: TODAY }));
      expect((await liftOf(pourId, 1)).poured?.at).toBe('2026-11-25T23:00:00.000Z');
    });

    it('is planned anew for no day before it can be poured on, and after a lift that is only weighed not before tomorrow', async () => {
      const { pourId, ...ready } = await firstPoured();
      const anew = await planned(test.book, ready, { pourId, first: TODAY });
      const after = await pourOf(anew.pourId);
      expect(after.lifts.map((lift) => lift.poured?.on ?? lift.day)).toEqual([TODAY, TOMORROW]);
      expect(after.kept.plan.lifts.map(({ joins }) => joins)).toEqual(['while-tacky']);

      // Poured at eight in the evening, with six hours to wait: tomorrow, though six hours are within a working day.
      const quick = await readyToPour(test.book, { facts: { ...FACTS, againFromHours: 6 } });
      const late = await planned(test.book, quick);
      await weighBoth({ pourId: late.pourId, nr: 1, hours: 10 }, quick);
      must(await pour({ pourId: late.pourId, nr: 1, hours: 10 }));
      const night = must(await keepPour(test.book, at(10.5), pourAsk(quick, { pourId: late.pourId, first: TODAY })));
      expect((await pourOf(night.pourId)).lifts[1]?.day).toBe(TOMORROW);

      const begun = await readyToPour(test.book);
      const first = await planned(test.book, begun);
      must(await weigh({ pourId: first.pourId, nr: 1 }, 'A', begun.a));
      const slipped = must(
        await keepPour(test.book, at(48), pourAsk(begun, { pourId: first.pourId, first: day('2026-11-27') })),
      );
      // Weighed on the 25th and not poured: on the 27th at the earliest, so the next is on the 28th.
      expect((await pourOf(slipped.pourId)).lifts.map((lift) => lift.day)).toEqual([TODAY, '2026-11-28']);
    });
  });

  describe('as it is poured', () => {
    it('has what was planned in it, or a reason', async () => {
      const ready = await readyToPour(test.book);
      const { pourId } = await planned(test.book, ready);
      must(await weigh({ pourId, nr: 1 }, 'A', ready.a, { mass: g(1) }));
      must(await weigh({ pourId, nr: 1 }, 'B', ready.b, { mass: g(0.45) }));
      const refused = await pour({ pourId, nr: 1 });
      expect(refused).toMatchObject({
        error: { code: 'amount-off', field: 'reason', facts: { batch: 1, part: 'A', is: g(1), target: g(1104) } },
      });
      if (!refused.ok) expect(sayRefusal(refused.error).what).toBe('Part A: 1 g are in, 1.104 kg were planned.');
      must(await pour({ pourId, nr: 1 }, { reason: 'Only a smear was wanted' }));
      expect((await liftOf(pourId, 1)).poured?.why).toBe('River, lift 1: Only a smear was wanted');
    });

    it('is near enough within the sheet’s 2 %, and not beyond it', async () => {
      const ready = await readyToPour(test.book);
      const light = await planned(test.book, ready, { name: 'Light' });
      must(await weigh({ pourId: light.pourId, nr: 1 }, 'A', ready.a, { mass: g(1082) }));
      must(await weigh({ pourId: light.pourId, nr: 1 }, 'B', ready.b, { mass: g(487) }));
      must(await pour({ pourId: light.pourId, nr: 1 }));
      const heavy = await planned(test.book, ready, { name: 'Heavy' });
      must(await weigh({ pourId: heavy.pourId, nr: 1 }, 'A', ready.a, { mass: g(1127) }));
      must(await weigh({ pourId: heavy.pourId, nr: 1 }, 'B', ready.b, { mass: g(507) }));
      expect(refusedWith(await pour({ pourId: heavy.pourId, nr: 1 }))).toBe('amount-off');
    });

    it('was poured on no day before it was weighed, and on none to come', async () => {
      const ready = await readyToPour(test.book);
      const { pourId } = await planned(test.book, ready);
      await weighBoth({ pourId, nr: 1 }, ready);
      const before = await pour({ pourId, nr: 1 }, { happenedOn: day('2026-10-01') });
      expect(before).toMatchObject({ error: { code: 'poured-before-weighed', facts: { on: TODAY } } });
      expect(refusedWith(await pour({ pourId, nr: 1 }, { happenedOn: TOMORROW }))).toBe('received-in-the-future');
      must(await pour({ pourId, nr: 1, hours: 24 }, { happenedOn: TODAY }));
    });

    it('frees with its last lift what is still promised for it, and promises it again where that is undone', async () => {
      const ready = await readyToPour(test.book);
      const { pourId } = await planned(test.book, ready);
      must(await reserveNeeds(test.book, by(), { jobId: ready.jobId }));
      const promised = async () =>
        (await test.book.read.promised.findMany({ where: { jobId: ready.jobId }, orderBy: { stockId: 'asc' } })).map(
          ({ amount }) => Number(amount),
        );
      expect(await promised()).toEqual([g(2208), g(994)]);
      // What the card sends somebody to fetch.
      expect(await promisedTins(test.book.read, await pourOf(pourId))).toMatchObject([
        { part: 'A', label: ready.a, amount: g(2208), unit: 'mg' },
        { part: 'B', label: ready.b, amount: g(994), unit: 'mg' },
      ]);
      const light = async (nr: number, hours: number) => {
        must(await weigh({ pourId, nr, hours }, 'A', ready.a, { mass: g(1084) }));
        must(await weigh({ pourId, nr, hours }, 'B', ready.b, { mass: g(488) }));
        return must(await pour({ pourId, nr, hours }));
      };
      await light(1, 0);
      expect(await promised()).toEqual([g(1124), g(506)]);
      const { entryId } = await light(2, 20);
      expect(await promised()).toEqual([0, 0]);
      must(await undo(entryId, 20));
      expect(await promised()).toEqual([g(40), g(18)]);
      must(await pour({ pourId, nr: 2, hours: 20 }));
      expect(await promised()).toEqual([0, 0]);
    });

    it('frees what was promised for lifts it was planned with before, and nothing of another pour', async () => {
      const ready = await readyToPour(test.book, { size: 10_000_000 });
      const { pourId } = await planned(test.book, ready);
      await planned(test.book, ready, { name: 'Rim' });
      must(await reserveNeeds(test.book, by(), { jobId: ready.jobId }));
      await weighBoth({ pourId, nr: 1 }, ready);
      must(await pour({ pourId, nr: 1 }));
      const lower = { from: 'solid', solid: { shape: 'box', length: mm(500), width: mm(100), depth: mm(36) } } as const;
      const figures = { space: { ...lower, wood: 0 as never } };
      const anew = await planned(test.book, ready, { pourId, first: TODAY, figures });
      // Nothing more is promised for the lift that was planned anew: it uses what its lift before was promised.
      const [, second] = (await pourOf(anew.pourId)).lifts;
      const [batch] = second?.batches ?? [];
      const where = { pourId: anew.pourId, nr: 2, hours: 20 };
      must(await weigh(where, 'A', ready.a, { mass: batch?.a ?? 0 }));
      must(await weigh(where, 'B', ready.b, { mass: batch?.b ?? 0 }));
      must(await pour(where));
      const left = await test.book.read.promised.findMany({
        where: { jobId: ready.jobId },
        orderBy: { stockId: 'asc' },
      });
      // The two lifts of the rim.
      expect(left.map(({ amount }) => Number(amount))).toEqual([g(2208), g(994)]);
    });
  });

  it('is planned in batches its sheet has a pot life for, or with a reason', async () => {
    const ready = await readyToPour(test.book);
    const potLives = [{ minutes: 40, mass: g(100), at: tenthsCelsius(230) }];
    must(await keepSheet(test.book, by(), { systemId: ready.systemId, facts: { ...FACTS, potLives } }));
    const refused = await keepPour(test.book, by(), pourAsk(ready));
    expect(refused).toMatchObject({ error: { code: 'beyond-the-sheet', facts: { why: 'batch-not-measured' } } });
    if (!refused.ok) expect(sayRefusal(refused.error).todo).toContain('smaller bucket');
    const { pourId } = must(await keepPour(test.book, by(), pourAsk(ready, { reason: 'Tried with 2 kg' })));
    expect((await pourOf(pourId)).kept.reason).toBe('Tried with 2 kg');
    // What it is planned with stays answered: the bench only minds it.
    await weighBoth({ pourId, nr: 1 }, ready);
    must(await pour({ pourId, nr: 1 }));
  });

  it('offers the wood that is there and what was taken for the job, not what has gone', async () => {
    const { jobId } = await readyToPour(test.book);
    const slab = async (act?: 'promise' | 'take') => {
      const { pieces } = must(await receivePieces(test.book, by(), aSlab()));
      const label = pieces[0]?.label ?? '';
      if (act) must(await givePiece(test.book, by(), { label, act, jobId }));
      return label;
    };
    const [there, taken, free, gone] = [await slab('promise'), await slab('take'), await slab(), await slab('promise')];
    const offered = async (named: string[] = []) =>
      (await voidChoices(test.book, jobId, named)).wood.map(({ label, what }) => [label, what.endsWith(', taken')]);
    expect(await offered()).toEqual([
      [there, false],
      [taken, true],
      [gone, false],
    ]);
    must(await discard(test.book, by(), { label: gone, why: 'Split' }));
    expect(await offered([free])).toEqual([
      [there, false],
      [taken, true],
      [free, false],
    ]);
    // Owned still, and not there: whatever a count took off the shelf stands in no form.
    const { id } = await test.book.read.stock.findUniqueOrThrow({ where: { label: there } });
    await test.book.write((tx) => tx.stock.update({ where: { id }, data: { quantity: 0 } }));
    expect(await offered()).toEqual([[taken, true]]);
    await test.book.write((tx) => tx.stock.update({ where: { id }, data: { quantity: 1 } }));
  });

  it('can be kept a sample of, however long ago it was poured, and the list says what it leaves out', async () => {
    const { pourId, entryId } = await firstPoured();
    const { id: liftId } = await liftOf(pourId, 1);
    expect((await sampleChoices(test.book)).olderLifts).toBe(0);
    const ready = await readyToPour(test.book);
    for (const name of ['One', 'Two']) {
      const many = await planned(test.book, ready, { name, figures: { lifts: 40 }, reason: 'Many thin ones' });
      await test.book.write((tx) =>
        tx.lift.updateMany({ where: { pourId: many.pourId }, data: { pouredById: entryId, pouredOn: TODAY } }),
      );
    }
    const newest = await sampleChoices(test.book);
    expect(newest.lifts).toHaveLength(60);
    expect(newest.lifts.some((lift) => lift.liftId === liftId)).toBe(false);
    expect(newest.olderLifts).toBeGreaterThanOrEqual(21);
    const asked = await sampleChoices(test.book, liftId);
    expect(asked.lifts[0]).toMatchObject({ liftId, words: expect.stringContaining('River, lift 1') });
    expect(asked.olderLifts).toBe(newest.olderLifts - 1);
    expect(await samplesOfLifts(test.book, [liftId])).toEqual([]);
    const { sampleId } = must(
      await keepSample(test.book, by(), { name: 'River, lift 1', liftId, madeOn: TODAY, note: '' }),
    );
    expect(await samplesOfLifts(test.book, [liftId])).toEqual([{ id: sampleId, name: 'River, lift 1', liftId }]);
    await test.book.write((tx) =>
      tx.lift.updateMany({
        where: { pouredById: entryId, NOT: { id: liftId } },
        data: { pouredById: null, pouredOn: null },
      }),
    );
  });
});
