import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addJob } from '@/app/_server/jobs/add-job';
import { setStage } from '@/app/_server/jobs/set-stage';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { rebuildBalances } from '@/app/_server/ledger/rebuild-balances';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { addNeed } from '@/app/_server/needs/add-need';
import { changeNeed } from '@/app/_server/needs/change-need';
import { readNeeds } from '@/app/_server/needs/read-needs';
import { removeNeed } from '@/app/_server/needs/remove-need';
import { reserveNeeds } from '@/app/_server/needs/reserve-needs';
import { addPlace } from '@/app/_server/places/add-place';
import { keepPour } from '@/app/_server/pours/keep-pour';
import { keepSheet } from '@/app/_server/pours/keep-sheet';
import { weighOutForLift } from '@/app/_server/pours/weigh-out';
import { release } from '@/app/_server/promises/release';
import { releaseAll } from '@/app/_server/promises/release-all';
import { reserve } from '@/app/_server/promises/reserve';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { discard } from '@/app/_server/stock/discard';
import { givePiece } from '@/app/_server/stock/give-piece';
import { receiveContainers } from '@/app/_server/stock/receive-containers';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { weighContainer } from '@/app/_server/stock/weigh-container';
import { beginStocktake } from '@/app/_server/stocktake/begin-stocktake';
import { noteCounted } from '@/app/_server/stocktake/note-counted';
import { noteSeen } from '@/app/_server/stocktake/note-seen';
import { postStocktake } from '@/app/_server/stocktake/post-stocktake';
import { stocktakePage } from '@/app/_server/stocktake/stocktake-page';
import { STANDS } from '@/app/_server/timeline/standing';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Result } from '@/shared/result/result';
import type { WalkChoice } from '@/shared/stocktake/choices-of';
import { FACTS } from '@/tests/support/pour-figures';
import { pourAsk } from '@/tests/support/pour-of-a-test';
import { curveByLedger, freeByLedger, piecesByLedger, tinsByLedger } from '@/tests/support/promise-ledger';
import { aSlab, stocked } from '@/tests/support/stock-of-a-test';
import { by as anyBy, day, freshBook, must, NOW, type TestBook, TODAY } from '@/tests/support/test-book';

// Part A in three tins that end before, between and after the two lifts of a pour, part B in one; two jobs; two slabs.
const KG = 1_000_000;
const ENDS: readonly CalendarDate[] = [TODAY, day('2026-11-28'), day('2027-03-01')];
const tin = fc.nat({ max: 3 });
const job = fc.nat({ max: 1 });
const amount = fc.integer({ min: 1, max: KG });
const slab = fc.nat({ max: 1 });
const act = <T extends string, R extends object>(
  weight: number,
  kind: T,
  of: { [K in keyof R]: fc.Arbitrary<R[K]> },
) => ({
  weight,
  arbitrary: fc.record({ do: fc.constant(kind), ...of }) as unknown as fc.Arbitrary<{ do: T } & R>,
});
const anAct = fc.oneof(
  act(9, 'reserve', { tin, job, amount }),
  act(3, 'reserve-needs', { job }),
  act(4, 'release', { nth: fc.nat(), amount }),
  act(1, 'release-all', { job }),
  act(4, 'pull', { tin, job: fc.nat({ max: 2 }), amount }),
  act(2, 'weigh', { tin, left: fc.nat({ max: 2 * KG }) }),
  act(1, 'discard', { tin }),
  act(6, 'weigh-out', { tin, amount }),
  act(3, 'stocktake', {
    seen: fc.array(fc.nat({ max: 4 }), { minLength: 1, maxLength: 5 }),
    left: fc.nat({ max: KG }),
  }),
  act(2, 'add-need', { amount }),
  act(3, 'change-need', { nth: fc.nat(), amount }),
  act(2, 'remove-need', { nth: fc.nat() }),
  act(3, 're-plan', { leakagePercent: fc.integer({ min: 0, max: 30 }) }),
  act(4, 'piece', {
    slab,
    job,
    act: fc.constantFrom('promise' as const, 'promise' as const, 'take' as const, 'free' as const),
  }),
  act(3, 'end', { job, open: fc.constantFrom(true, true, false) }),
  act(5, 'reverse', { nth: fc.nat() }),
);
type Act = typeof anAct extends fc.Arbitrary<infer A> ? A : never;
const KINDS = ['reserve', 'release', 'pull', 'weigh', 'weigh-out', 'stocktake', 'end', 'reverse'] as const;
const RARE = ['add-need', 'change-need', 'remove-need', 're-plan', 'piece'] as const;

describe('whatever is promised, used, lost and put right', () => {
  let test: TestBook;
  let runs = 0;
  let second = 0;
  let curves = 0;
  const done = new Map<string, number>();
  /** Every act a second after the one before it, so that a walk knows what came first. */
  const by = () => {
    second += 1;
    return { ...anyBy(), now: new Date(NOW.getTime() + second * 1000) };
  };

  beforeAll(async () => {
    test = await freshBook();
  });
  afterAll(() => test.remove());

  it('never more is promised than there is, every step of the curve is the ledger’s, and the book proves', async () => {
    await fc.assert(fc.asyncProperty(fc.array(anAct, { minLength: 14, maxLength: 32, size: 'max' }), live), {
      numRuns: 30,
      endOnFailure: true,
    });
    expect((await rebuildBalances(test.book)).mended).toEqual([]);
    expect((await proveBook(test.book.read)).differences).toEqual([]);
    for (const kind of KINDS) expect(done.get(kind) ?? 0, `acts of the kind ${kind}`).toBeGreaterThan(5);
    for (const kind of RARE) expect(done.get(kind) ?? 0, `acts of the kind ${kind}`).toBeGreaterThan(2);
    // Many of them had more than one step, and something that others want.
    expect(curves).toBeGreaterThan(50);
  }, 600_000);

  async function live(acts: readonly Act[]): Promise<void> {
    const { book } = test;
    runs += 1;
    const system = `Tarn ${runs}`;
    const { label: shelf } = must(await addPlace(book, by(), { name: `Shelf ${runs}`, kind: 'shelf' }));
    const part = (letter: 'A' | 'B', until: string) =>
      stocked(book, {
        size: 2 * KG,
        lotCode: `${letter}-${until}`,
        placeLabel: shelf,
        dates: { bestBefore: { date: day(until), precision: 'day', confirmed: true } },
        product: {
          name: `${system} ${letter}`,
          kind: letter === 'A' ? 'resin-a' : 'resin-b',
          system: { name: system, part: letter },
        },
      });
    const [first, ...others] = ENDS;
    const a = await part('A', first ?? TODAY);
    const labels = [...a.labels];
    for (const until of others) {
      const dates = { bestBefore: { date: until, precision: 'day' as const, confirmed: true } };
      const made = { productId: a.productId, lotCode: `A-${until}`, dates, count: 1, size: 2 * KG, receivedOn: TODAY };
      const { containers } = must(await receiveContainers(book, by(), { ...made, placeLabel: shelf }));
      labels.push(...containers.map(({ label }) => label));
    }
    labels.push(...(await part('B', '2027-03-01')).labels);
    const made = must(await receivePieces(book, by(), aSlab({ species: 'Elm', count: 2, placeLabel: shelf })));
    const slabs = made.pieces.map(({ label }) => label);
    const { id: systemId } = await book.read.resinSystem.findUniqueOrThrow({ where: { name: system } });
    must(await keepSheet(book, by(), { systemId, facts: FACTS }));
    const jobIds: number[] = [];
    for (const nr of [0, 1]) {
      const fields = { name: `Job ${runs}/${nr}`, purpose: 'client' as const, client: '', note: '' };
      jobIds.push(must(await addJob(book, by(), { ...fields, dayOfUse: day('2026-11-27') })).jobId);
    }
    const [pouring = 0, other = 0] = jobIds;
    must(await keepPour(book, by(), pourAsk({ jobId: pouring, systemId })));
    const need = { kind: 'part' as const, systemId, part: 'A' as const, surface: '', note: '' };
    must(await addNeed(book, by(), { ...need, jobId: other, milligrams: 900_000 }));
    const wood = { kind: 'wood' as const, species: 'Elm', form: 'slab' as const, count: 1, note: '' };
    for (const jobId of jobIds) must(await addNeed(book, by(), { ...wood, jobId }));
    const entries: number[] = [];

    for (const each of acts) {
      const before = await balances();
      const asked = by();
      const outcome = await perform(each, asked);
      if (outcome === undefined) continue;
      const after = await balances();
      if (!outcome.ok) {
        expect(after, `a refused act changes nothing: ${each.do}`).toEqual(before);
        continue;
      }
      done.set(each.do, (done.get(each.do) ?? 0) + 1);
      const { id } = await book.read.entry.findUniqueOrThrow({ where: { key: asked.key }, select: { id: true } });
      entries.push(id);
      for (const { left, promised, byJob } of after.tins) {
        expect(promised, each.do).toBeLessThanOrEqual(left);
        expect(Math.min(promised, ...byJob), each.do).toBeGreaterThanOrEqual(0);
      }
      for (const { left } of after.pieces) expect([0, 1], each.do).toContain(left);
      if (each.do !== 'end' && each.do !== 'reverse' && id % 4 === 0) {
        must(await reverseEntry(book, by(), { entryId: id, why: 'At once' }));
        expect(await balances(), `undone at once, all is as it was: ${each.do}`).toEqual(before);
      }
      await theLedgerSaysTheSame();
    }

    async function balances() {
      return { tins: await tinsByLedger(book, labels, jobIds), pieces: await piecesByLedger(book, slabs) };
    }

    /** What the page of each job says, beside what its movements and promise lines say alone. */
    async function theLedgerSaysTheSame() {
      const { tins, pieces } = await balances();
      const head = { today: TODAY, currency: 'USD' };
      const pages = [await readNeeds(book, pouring, head), await readNeeds(book, other, head)] as const;
      for (const [nr, page] of pages.entries()) {
        const held = page.needs.flatMap(({ standing: { reserved, failing } }) => [...reserved, ...failing]);
        const spoken = (label: string) =>
          held.reduce((sum, one) => (one.label === label ? sum + one.stockAmount : sum), 0) +
          page.loose.reduce((sum, one) => (one.label === label ? sum + one.amount : sum), 0);
        for (const { label, byJob } of tins) expect(spoken(label), label).toBe(byJob[nr]);
        for (const { label, left, jobId } of pieces)
          expect(spoken(label), label).toBe(left && jobId === jobIds[nr] ? 1 : 0);
        const state = await book.read.job.findUniqueOrThrow({ where: { id: jobIds[1 - nr] ?? 0 } });
        for (const curve of page.curves) {
          const letter = curve.name.endsWith('part A') ? 'A' : 'B';
          const supplies = tins.flatMap(({ left, promised }, at) =>
            at < ENDS.length === (letter === 'A') ? [{ left, promised, until: ENDS[at] ?? day('2027-03-01') }] : [],
          );
          const wanted = (state.state === 'open' ? (pages[1 - nr]?.needs ?? []) : []).flatMap(
            ({ need: { system: of, on, goodTo, amount: asked }, used, standing: { reserved } }) => {
              const open = asked - used - reserved.reduce((sum, one) => sum + one.amount, 0);
              return of?.part === letter && open > 0 ? [{ on, goodTo, amount: open }] : [];
            },
          );
          expect(curve.steps.map(({ reasons: _, ...step }) => step)).toEqual(curveByLedger(supplies, wanted, TODAY));
          for (const { on, goodTo, free } of curve.asks)
            expect(free).toBe(freeByLedger(supplies, wanted, { on, goodTo }));
          if (curve.steps.length > 1 && wanted.length > 0) curves += 1;
        }
      }
    }

    /** The walk through the shelf: those are seen, the first of them is counted, and everything is put right by it. */
    async function walk(
      { seen, left }: { seen: readonly number[]; left: number },
      asked: ReturnType<typeof by>,
    ): Promise<Result<unknown, unknown>> {
      const open = await book.read.stocktake.findFirst({
        where: {
          place: { label: shelf },
          OR: [{ closedById: null }, { closedBy: { reversedBy: { isNot: null } } }],
        },
        select: { entryId: true },
      });
      const stocktake = open?.entryId ?? must(await beginStocktake(book, by(), { placeLabel: shelf })).stocktake;
      const things = [...labels, ...slabs];
      for (const nr of seen) must(await noteSeen(book, by(), { stocktake, text: things[nr] ?? '' }));
      const stock = await book.read.stock.findUniqueOrThrow({ where: { label: things[seen[0] ?? 0] ?? '' } });
      if (stock.kind === 'container')
        await noteCounted(book, by(), { stocktake, stockId: stock.id, counted: left, grossMg: null });
      const page = await stocktakePage(book, stocktake);
      const { revision: asOf } = await book.read.book.findUniqueOrThrow({ where: { id: 1 } });
      const choices = (page?.walk?.things ?? []).flatMap(({ stockId, delta, choices: may }) => {
        // A walk may be half done: of what was not seen only the slabs are said to be gone.
        const missing = may.includes('gone') && !slabs.includes(labelOf(stockId));
        const choice: WalkChoice | undefined = missing ? 'leave' : may.find((one) => one !== 'leave');
        return choice === undefined ? [] : [{ stockId, delta, choice }];
      });
      return postStocktake(book, asked, { stocktake, why: 'Counted', choices, asOf });

      function labelOf(stockId: number): string {
        return page?.walk?.things.find((one) => one.stockId === stockId)?.label ?? '';
      }
    }

    /** The needs of the second job that were put down by hand and stand. */
    async function byHand(nth: number): Promise<number | undefined> {
      const where = { jobId: other, liftId: null, kind: 'material', ...STANDS };
      const rows = await book.read.need.findMany({ where, orderBy: { id: 'asc' }, select: { id: true } });
      return rows[nth % Math.max(1, rows.length)]?.id;
    }

    async function perform(each: Act, asked: ReturnType<typeof by>): Promise<Result<unknown, unknown> | undefined> {
      const label = 'tin' in each ? (labels[each.tin] ?? '') : '';
      const jobId = 'job' in each ? (jobIds[each.job] ?? 0) : 0;
      switch (each.do) {
        case 'reserve':
          return reserve(book, asked, { jobId, items: [{ label, amount: each.amount }] });
        case 'reserve-needs':
          return reserveNeeds(book, asked, { jobId });
        case 'release': {
          const promised = await book.read.promised.findMany({
            where: { amount: { gt: 0 }, stock: { label: { in: labels } } },
            orderBy: [{ jobId: 'asc' }, { stockId: 'asc' }],
            select: { jobId: true, stock: { select: { label: true } } },
          });
          const held = promised[each.nth % Math.max(1, promised.length)];
          const items = [{ label: held?.stock.label ?? '', amount: each.amount }];
          return held ? release(book, asked, { jobId: held.jobId, items }) : undefined;
        }
        case 'release-all':
          return releaseAll(book, asked, { jobId, why: '' });
        case 'pull': {
          const pull = { label, asked: each.amount, purpose: 'client' as const, dayOfUse: TODAY };
          return pullContainer(book, asked, { ...pull, jobId: jobIds[each.job], seen: 'care' });
        }
        case 'weigh':
          return weighContainer(book, asked, { label, left: each.left, why: 'Scale' });
        case 'discard':
          return discard(book, asked, { label, why: 'Spilt' });
        case 'weigh-out': {
          const pour = await book.read.pour.findFirst({ where: { jobId: pouring, ...STANDS }, select: { id: true } });
          const letter = each.tin < ENDS.length ? ('A' as const) : ('B' as const);
          const slot = { pourId: pour?.id ?? 0, nr: 1, batch: 1, part: letter, more: true };
          return weighOutForLift(book, asked, { ...slot, label, mass: each.amount, seen: 'care' });
        }
        case 'stocktake':
          return walk(each, asked);
        case 'add-need':
          return addNeed(book, asked, { ...need, jobId: other, milligrams: each.amount });
        case 'change-need': {
          const needId = await byHand(each.nth);
          return needId === undefined
            ? undefined
            : changeNeed(book, asked, { ...need, needId, milligrams: each.amount });
        }
        case 'remove-need': {
          const needId = await byHand(each.nth);
          return needId === undefined ? undefined : removeNeed(book, asked, { needId });
        }
        case 're-plan': {
          const pour = await book.read.pour.findFirst({ where: { jobId: pouring, ...STANDS }, select: { id: true } });
          const { leakagePercent } = each;
          const anew = pourAsk({ jobId: pouring, systemId }, { reason: 'A test', figures: { leakagePercent } });
          return pour ? keepPour(book, asked, { ...anew, pourId: pour.id }) : undefined;
        }
        case 'piece':
          return givePiece(book, asked, { label: slabs[each.slab] ?? '', act: each.act, jobId });
        case 'end':
          return setStage(book, asked, { jobId, stage: each.open ? 'agreed' : 'dropped', reason: '' });
        case 'reverse': {
          const entryId = entries[each.nth % Math.max(1, entries.length)];
          return entryId === undefined ? undefined : reverseEntry(book, asked, { entryId, why: 'Mistaken' });
        }
      }
    }
  }
});
