import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { explainShortage, explainTin } from '@/app/_server/allocation/explain-allocation';
import { readAllocation } from '@/app/_server/allocation/read-allocation';
import { addJob } from '@/app/_server/jobs/add-job';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { addNeed } from '@/app/_server/needs/add-need';
import { readNeeds } from '@/app/_server/needs/read-needs';
import { teachProduct } from '@/app/_server/products/teach-product';
import { reserve } from '@/app/_server/promises/reserve';
import { receiveContainers } from '@/app/_server/stock/receive-containers';
import { allottedJobs } from '@/app/(shop)/jobs/allotted/allotted-view';
import { comparedView, saidDifference } from '@/app/(shop)/jobs/allotted/compared-view';
import { RESIN, stocked } from '@/tests/support/stock-of-a-test';
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
    expect(comparedView(read, HOW)[0]).toEqual({ term: 'Short', best: 'nothing', byHand: 'nothing' });
    expect(saidDifference(read, HOW)).toContain('comes to the same');

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

describe('what is shown can be promised', () => {
  let test: TestBook;
  beforeAll(async () => {
    test = await freshBook();
  });
  afterAll(async () => {
    expect((await proveBook(test.book.read)).differences).toEqual([]);
    await test.remove();
  });
  const jobFor = async (name: string) => {
    const fields = { name, purpose: 'client' as const, client: '', dayOfUse: day('2026-12-05'), note: '' };
    return must(await addJob(test.book, by(), fields)).jobId;
  };
  const openTin = async (productId: number, lotCode: string, until: string, size: number) => {
    const dates = { bestBefore: { date: day(until), precision: 'day' as const, confirmed: true } };
    const made = must(
      await receiveContainers(test.book, by(), { productId, lotCode, dates, count: 1, size, receivedOn: TODAY }),
    );
    return made.containers[0]?.label ?? '';
  };

  it('to the last microlitre: a tin kept by volume, wanted by mass, is promised whole and no more than whole', async () => {
    const { labels } = await stocked(test.book, {
      size: 1000,
      product: {
        name: 'G, part A',
        unit: 'uL',
        packageSize: 1000,
        tareMg: undefined,
        system: { name: 'G', part: 'A' },
      },
    });
    const { id: systemId } = await test.book.read.resinSystem.findUniqueOrThrow({ where: { name: 'G' } });
    const jobIds = [await jobFor('First'), await jobFor('Second')];
    const need = { kind: 'part' as const, systemId, part: 'A' as const, surface: 'Top', note: '' };
    for (const [nr, milligrams] of [367, 367, 366].entries())
      must(await addNeed(test.book, by(), { ...need, jobId: jobIds[nr % 2] ?? 0, milligrams }));
    const read = await readAllocation(test.book, HEAD);
    expect(read.allocation.short).toEqual([]);
    const shown = allottedJobs(read, HOW);
    expect(shown.flatMap(({ items }) => items).reduce((sum, { amount }) => sum + amount, 0)).toBe(1000);
    for (const { jobId, items } of shown) must(await reserve(test.book, by(), { jobId, items }));
    const { id } = await test.book.read.stock.findUniqueOrThrow({ where: { label: labels[0] ?? '' } });
    const { _sum } = await test.book.read.promised.aggregate({ where: { stockId: id }, _sum: { amount: true } });
    expect(_sum.amount).toBe(1000n);
    // Nobody can take a part of a microlitre: nothing is short, and nothing is to be bought.
    expect((await readAllocation(test.book, HEAD)).ask.needs).toEqual([]);
    for (const jobId of jobIds)
      expect((await readNeeds(test.book, jobId, HEAD)).needs.map(({ buy }) => buy)).toEqual(
        jobId === jobIds[0] ? [undefined, undefined] : [undefined],
      );
  });

  it('as it would be taken by hand too: its tins, what differs in amounts, and a press of its own', async () => {
    const oil = { ...RESIN, name: 'Hard oil', kind: 'oil', system: undefined, openedLife: undefined };
    const { productId } = must(await teachProduct(test.book, by(), oil as never));
    const [soon, later] = [
      await openTin(productId, 'SOON', '2026-12-20', 1_000_000),
      await openTin(productId, 'LATER', '2027-10-10', 4_000_000),
    ];
    const jobId = await jobFor('Bench');
    const need = { kind: 'product' as const, productId, unit: 'mg' as const, note: '' };
    must(await addNeed(test.book, by(), { ...need, jobId, amount: 3_000_000, surface: 'Top' }));
    const read = await readAllocation(test.book, HEAD);
    const job = allottedJobs(read, HOW).find((each) => each.jobId === jobId);
    const [shown] = job?.needs ?? [];
    const tinsOf = (list: { label: string; amount: string }[] = []) => list.map(({ label, amount }) => [label, amount]);
    expect(tinsOf(shown?.tins)).toEqual([[later, '3 kg']]);
    expect(shown?.byHand).toMatchObject({ differs: '1 kg from other tins', short: '' });
    expect(tinsOf(shown?.byHand?.tins)).toEqual([
      [soon, '1 kg'],
      [later, '2 kg'],
    ]);
    expect(comparedView(read, HOW)).toEqual([
      { term: 'Short', best: 'nothing', byHand: 'nothing' },
      { term: 'Surfaces of more than one lot', best: '0', byHand: '1' },
      { term: 'Passes its limit unused', best: '1 kg', byHand: 'nothing' },
      { term: 'Sealed tins opened', best: '1', byHand: '2' },
    ]);
    expect(saidDifference(read, HOW)).toContain('1 more surface of more than one lot.');
    const { promised } = must(await reserve(test.book, by(), { jobId, items: job?.byHand ?? [] }));
    expect(promised.map(({ label, amount }) => [label, amount])).toEqual([
      [soon, 1_000_000],
      [later, 2_000_000],
    ]);
    // All of it is promised: the page has nothing more to say of the job.
    expect(allottedJobs(await readAllocation(test.book, HEAD), HOW)).toEqual([]);
  });
});
