import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addJob } from '@/app/_server/jobs/add-job';
import { changeJob } from '@/app/_server/jobs/change-job';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { rebuildBalances } from '@/app/_server/ledger/rebuild-balances';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { addNeed } from '@/app/_server/needs/add-need';
import { readNeeds } from '@/app/_server/needs/read-needs';
import { reserveNeeds } from '@/app/_server/needs/reserve-needs';
import { release } from '@/app/_server/promises/release';
import { releaseAll } from '@/app/_server/promises/release-all';
import { reserve } from '@/app/_server/promises/reserve';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { discard } from '@/app/_server/stock/discard';
import { weighContainer } from '@/app/_server/stock/weigh-container';
import type { Result } from '@/shared/result/result';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, type TestBook, TODAY } from '@/tests/support/test-book';

const SIZE = 1000;
const which = fc.nat({ max: 1 });
const amount = fc.integer({ min: 1, max: 700 });
const anAct = fc.oneof(
  { weight: 9, arbitrary: fc.record({ do: fc.constant('reserve' as const), tin: which, job: which, amount }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('reserve-needs' as const), job: which }) },
  { weight: 3, arbitrary: fc.record({ do: fc.constant('release' as const), tin: which, job: which, amount }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('release-all' as const), job: which }) },
  {
    weight: 5,
    arbitrary: fc.record({ do: fc.constant('pull' as const), tin: which, job: fc.nat({ max: 2 }), amount }),
  },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('weigh' as const), tin: which, left: fc.nat({ max: SIZE }) }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('discard' as const), tin: which }) },
  {
    weight: 2,
    arbitrary: fc.record({ do: fc.constant('end' as const), job: which, open: fc.constantFrom(true, true, false) }),
  },
  { weight: 5, arbitrary: fc.record({ do: fc.constant('reverse' as const), nth: fc.nat() }) },
);
type Act = typeof anAct extends fc.Arbitrary<infer A> ? A : never;

describe('whatever is promised, used, lost and put right', () => {
  let test: TestBook;
  let runs = 0;
  const done = new Map<string, number>();

  beforeAll(async () => {
    test = await freshBook();
  });
  afterAll(() => test.remove());

  it('never more is promised than there is, what is free is the ledger less the promises, and the book proves', async () => {
    await fc.assert(fc.asyncProperty(fc.array(anAct, { minLength: 12, maxLength: 30, size: 'max' }), live), {
      numRuns: 25,
    });
    expect((await rebuildBalances(test.book)).mended).toEqual([]);
    expect((await proveBook(test.book.read)).differences).toEqual([]);
    for (const kind of ['reserve', 'release', 'pull', 'weigh', 'end', 'reverse'])
      expect(done.get(kind) ?? 0, `acts of the kind ${kind}`).toBeGreaterThan(5);
  });

  async function live(acts: readonly Act[]): Promise<void> {
    const { book } = test;
    runs += 1;
    const fields = (nr: number) => ({
      name: `Job ${runs}/${nr}`,
      purpose: 'client' as const,
      client: '',
      dayOfUse: day('2026-12-12'),
      note: '',
    });
    const jobs = [0, 1].map(async (nr) => must(await addJob(book, by(), fields(nr))).jobId);
    const jobIds = await Promise.all(jobs);
    const { productId, labels } = await stocked(book, {
      product: { name: `Oil ${runs}`, system: undefined, colourShows: false },
      count: 2,
      size: SIZE,
    });
    const need = { kind: 'product' as const, productId, unit: 'mg' as const, surface: '', note: '' };
    for (const jobId of jobIds) must(await addNeed(book, by(), { ...need, jobId, amount: 900 }));
    const entries: number[] = [];

    for (const act of acts) {
      const before = await balances();
      const asked = by();
      const outcome = await perform(act, asked);
      if (outcome === undefined) continue;
      const after = await balances();
      if (!outcome.ok) {
        expect(after, 'a refused act changes nothing').toEqual(before);
        continue;
      }
      done.set(act.do, (done.get(act.do) ?? 0) + 1);
      const { id } = await book.read.entry.findUniqueOrThrow({ where: { key: asked.key }, select: { id: true } });
      entries.push(id);
      for (const { left, promised } of after) {
        expect(promised, act.do).toBeLessThanOrEqual(left);
        expect(promised).toBeGreaterThanOrEqual(0);
      }
      if (act.do !== 'end' && act.do !== 'reverse' && id % 4 === 0) {
        must(await reverseEntry(book, by(), { entryId: id, why: 'At once' }));
        expect(await balances(), 'undone at once, all is as it was').toEqual(before);
      }
    }
    await freeIsTheLedgerLessThePromises();

    /** What is in each container by its movements, and promised of it by its lines. */
    async function balances() {
      const rows = await book.read.stock.findMany({
        where: { label: { in: labels } },
        orderBy: { id: 'asc' },
        select: {
          movements: { select: { quantityDelta: true } },
          promiseLines: { select: { delta: true, jobId: true } },
        },
      });
      return rows.map(({ movements, promiseLines }) => ({
        left: movements.reduce((sum, each) => sum + Number(each.quantityDelta), 0),
        promised: promiseLines.reduce((sum, each) => sum + Number(each.delta), 0),
        byJob: jobIds.map((jobId) =>
          promiseLines.reduce((sum, each) => (each.jobId === jobId ? sum + Number(each.delta) : sum), 0),
        ),
      }));
    }

    async function freeIsTheLedgerLessThePromises() {
      const free = (await balances()).reduce((sum, each) => sum + each.left - each.promised, 0);
      const head = { today: TODAY, currency: 'USD' };
      for (const [nr, jobId] of jobIds.entries()) {
        const [curve] = (await readNeeds(book, jobId, head)).curves;
        const other = await readNeeds(book, jobIds[1 - nr] ?? 0, head);
        const state = await book.read.job.findUniqueOrThrow({ where: { id: jobIds[1 - nr] ?? 0 } });
        const [theirs] = other.needs;
        const kept =
          state.state === 'open' && theirs
            ? Math.max(0, 900 - theirs.used - theirs.standing.reserved.reduce((sum, part) => sum + part.amount, 0))
            : 0;
        expect(curve?.steps[0]?.free ?? 0).toBe(Math.max(0, free - kept));
      }
    }

    async function perform(act: Act, asked: ReturnType<typeof by>): Promise<Result<unknown, unknown> | undefined> {
      const label = 'tin' in act ? (labels[act.tin] ?? '') : '';
      const jobId = 'job' in act ? jobIds[act.job] : undefined;
      switch (act.do) {
        case 'reserve':
          return reserve(book, asked, { jobId: jobId ?? 0, items: [{ label, amount: act.amount }] });
        case 'reserve-needs':
          return reserveNeeds(book, asked, { jobId: jobId ?? 0 });
        case 'release':
          return release(book, asked, { jobId: jobId ?? 0, items: [{ label, amount: act.amount }] });
        case 'release-all':
          return releaseAll(book, asked, { jobId: jobId ?? 0, why: '' });
        case 'pull':
          return pullContainer(book, asked, {
            label,
            jobId,
            asked: act.amount,
            purpose: 'client',
            dayOfUse: TODAY,
            seen: 'care',
          });
        case 'weigh':
          return weighContainer(book, asked, { label, left: act.left, why: 'Scale' });
        case 'discard':
          return discard(book, asked, { label, why: 'Spilt' });
        case 'end':
          return changeJob(book, asked, {
            ...fields(act.job),
            jobId: jobId ?? 0,
            state: act.open ? 'open' : 'dropped',
          });
        case 'reverse': {
          const entryId = entries[act.nth % Math.max(1, entries.length)];
          return entryId === undefined ? undefined : reverseEntry(book, asked, { entryId, why: 'Mistaken' });
        }
      }
    }
  }
});
