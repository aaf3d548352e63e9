import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { explainShortage, explainTin } from '@/app/_server/allocation/explain-allocation';
import { readAllocation } from '@/app/_server/allocation/read-allocation';
import { addJob } from '@/app/_server/jobs/add-job';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { addNeed } from '@/app/_server/needs/add-need';
import { teachProduct } from '@/app/_server/products/teach-product';
import { reserve } from '@/app/_server/promises/reserve';
import { receiveContainers } from '@/app/_server/stock/receive-containers';
import { allottedJobs, comparedView, saidDifference } from '@/app/(shop)/jobs/allotted/allotted-view';
import { RESIN } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, type TestBook, TODAY } from '@/tests/support/test-book';

const HEAD = { today: TODAY, currency: 'USD' };
const HOW = { today: TODAY, order: 'day-first', prefer: 'metric', currency: 'USD' } as const;

describe('which tin goes to which job', () => {
  let test: TestBook;
  let productId = 0;
  const labels: Record<string, string> = {};
  const jobs: Record<string, number> = {};
  beforeAll(async () => {
    test = await freshBook();
    const oil = { ...RESIN, name: 'Hard oil', kind: 'oil', system: undefined, openedLife: undefined };
    productId = must(await teachProduct(test.book, by(), oil as never)).productId;
    const tin = async (name: string, until: string, size: number) => {
      const made = must(
        await receiveContainers(test.book, by(), {
          productId,
          lotCode: name,
          dates: { bestBefore: { date: day(until), precision: 'day', confirmed: true } },
          count: 1,
          size,
          receivedOn: TODAY,
        }),
      );
      labels[name] = made.containers[0]?.label ?? '';
    };
    await tin('SOON', '2026-12-10', 1_000_000);
    await tin('LATER', '2027-10-10', 1_000_000);
    const job = async (name: string, on: string, amount: number) => {
      const { jobId } = must(
        await addJob(test.book, by(), { name, purpose: 'client', client: '', dayOfUse: day(on), note: '' }),
      );
      jobs[name] = jobId;
      must(
        await addNeed(test.book, by(), {
          jobId,
          kind: 'product',
          productId,
          amount,
          unit: 'mg',
          surface: '',
          note: '',
        } as never),
      );
    };
    await job('Bench', '2026-12-05', 800_000);
    await job('Shelf', '2027-02-05', 900_000);
  });
  afterAll(async () => {
    expect((await proveBook(test.book.read)).differences).toEqual([]);
    await test.remove();
  });

  it('is proved, past no limit, and explained', async () => {
    const read = await readAllocation(test.book, HEAD);
    expect(read.allocation.status).toBe('proved');
    expect(read.allocation.short).toEqual([]);
    const said = allottedJobs(read, HOW);
    expect(said.map(({ name, needs }) => [name, needs.flatMap(({ tins }) => tins.map(({ label }) => label))])).toEqual([
      ['Bench', [labels.SOON]],
      ['Shelf', [labels.LATER]],
    ]);
    expect(said[0]?.items).toMatchObject([{ label: labels.SOON, amount: 800_000 }]);
    expect(comparedView(read, HOW)[0]).toEqual({ term: 'Short on', best: 'nothing', byHand: 'nothing' });
    expect(saidDifference(read)).toContain('comes to the same');

    const take = read.allocation.takes[0];
    const words = await explainTin(
      test.book,
      HEAD,
      { needId: take?.needId ?? '', containerId: take?.containerId ?? '' },
      HOW,
    );
    expect(words?.why.join(' ')).toMatch(/Expires first|would pass its limit/);
    // Without it the bench takes the other tin, and the shelf is short.
    expect(words?.instead.join(' ')).toMatch(/Take .* from .*LATER|short/);
    expect(await explainTin(test.book, HEAD, { needId: '999', containerId: '1' }, HOW)).toBeUndefined();
  });

  it('leaves out what is promised, and names the fewest things that cannot all be had', async () => {
    const [bench] = allottedJobs(await readAllocation(test.book, HEAD), HOW);
    must(await reserve(test.book, by(), { jobId: bench?.jobId ?? 0, items: bench?.items ?? [] }));
    const after = await readAllocation(test.book, HEAD);
    expect(after.ask.needs.map(({ jobName }) => jobName)).toEqual(['Shelf']);
    must(
      await addNeed(test.book, by(), {
        jobId: jobs.Shelf ?? 0,
        kind: 'product',
        productId,
        amount: 5_000_000,
        unit: 'mg',
        surface: '',
        note: '',
      } as never),
    );
    const short = await readAllocation(test.book, HEAD);
    expect(short.allocation.short.length).toBeGreaterThan(0);
    const [conflict] = await explainShortage(test.book, HEAD, HOW);
    expect(conflict?.[0]).toContain('Shelf');
    expect(conflict?.join(' ')).toContain('wanted');
  });
});
