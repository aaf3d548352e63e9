import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { entriesOf, type HistoryOf } from '@/app/_server/ledger/entries-of';
import { history } from '@/app/_server/ledger/history';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { addPlace } from '@/app/_server/places/add-place';
import { changeHold } from '@/app/_server/stock/change-hold';
import { discard } from '@/app/_server/stock/discard';
import { moveStock } from '@/app/_server/stock/move-stock';
import { noteCondition } from '@/app/_server/stock/note-condition';
import { openContainer } from '@/app/_server/stock/open-container';
import { recordInspection } from '@/app/_server/stock/record-inspection';
import { weighContainer } from '@/app/_server/stock/weigh-container';
import { Prisma } from '@/prisma/generated/client';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, type TestBook, TODAY } from '@/tests/support/test-book';
import { onServer } from '@/tests/support/test-server';

describe('the history', () => {
  let test: TestBook;
  let bench: { label: string; placeId: number };
  let shelf: { label: string; placeId: number };
  let resin: Awaited<ReturnType<typeof stocked>>;
  let other: Awaited<ReturnType<typeof stocked>>;

  async function place(name: string) {
    const { label } = must(await addPlace(test.book, by(), { name, kind: 'shelf' }));
    const { id: placeId } = await test.book.read.place.findUniqueOrThrow({ where: { label } });
    return { label, placeId };
  }

  beforeAll(async () => {
    test = await freshBook();
    bench = await place('Bench');
    shelf = await place('Shelf');
    resin = await stocked(test.book, { count: 3, placeLabel: bench.label });
    other = await stocked(test.book, { product: { name: 'Oil', system: undefined }, placeLabel: shelf.label });
  });
  afterAll(() => test.remove());

  const kinds = async (of: HistoryOf) => (await history(test.book, of)).entries.map((entry) => entry.kind).reverse();
  const moveTo = async (label: string, to: { label: string }) =>
    must(await moveStock(test.book, by(), { labels: [label], placeLabel: to.label }));

  it('of a place is what was written about it and whatever came to it and went from it, nothing else', async () => {
    const [first = ''] = resin.labels;
    expect(await kinds(bench)).toEqual(['place-added', 'received']);
    const { entryId } = await moveTo(first, shelf);
    expect(await kinds(bench)).toEqual(['place-added', 'received', 'moved']);
    expect(await kinds(shelf)).toEqual(['place-added', 'received', 'moved']);
    must(await weighContainer(test.book, by(), { label: first, left: 2_000_000, why: '' }));
    expect(await kinds(shelf)).toEqual(['place-added', 'received', 'moved']);
    must(await weighContainer(test.book, by(), { label: first, left: 2_500_000, why: '' }));
    must(await reverseEntry(test.book, by(), { entryId, why: 'wrong tin' }));
    expect(await kinds(bench)).toEqual(['place-added', 'received', 'moved', 'reversed']);
    expect(await kinds(shelf)).toEqual(['place-added', 'received', 'moved', 'reversed']);
  });

  it('of a product goes through its lots and its containers', async () => {
    const [, second = '', third = ''] = resin.labels;
    const before = await kinds({ productId: resin.productId });
    expect(before.slice(0, 3)).toEqual(['product-taught', 'received', 'moved']);
    must(await openContainer(test.book, by(), { label: second, opened: { on: TODAY, sureness: 'known' } }));
    must(await noteCondition(test.book, by(), { label: second, conditions: ['haze'], why: '' }));
    must(await changeHold(test.book, by(), { stockId: resin.lotId, hold: 'quarantine', why: 'asked the maker' }));
    must(
      await recordInspection(test.book, by(), {
        lotId: resin.lotId,
        kind: 'inspection',
        madeOn: TODAY,
        passed: true,
        validUntil: undefined,
        method: 'looked',
        note: '',
      }),
    );
    must(await changeHold(test.book, by(), { stockId: resin.lotId, hold: 'free', why: 'it is good' }));
    must(await discard(test.book, by(), { label: third, why: 'spilt' }));
    expect((await kinds({ productId: resin.productId })).slice(before.length)).toEqual([
      'opened',
      'condition-noted',
      'held',
      'inspected',
      'released',
      'discarded',
    ]);
    expect(await kinds({ productId: other.productId })).toEqual(['product-taught', 'received']);
  });

  it('of an arrival of more than can be listed says how many more there are', async () => {
    const many = await stocked(test.book, { product: { name: 'Many', system: undefined }, count: 60 });
    const [received] = (await history(test.book, { productId: many.productId })).entries;
    expect(received?.movements).toHaveLength(50);
    expect(received?.moreMovements).toBe(10);
    const [one] = (await history(test.book, { stockId: other.containers[0]?.stockId })).entries;
    expect(one?.moreMovements).toBe(0);
  });

  it('gives every entry once over its pages, newest first, however many things it goes through', async () => {
    const walked = await stocked(test.book, { product: { name: 'Walked', system: undefined }, count: 4 });
    for (let round = 0; round < 20; round += 1) {
      for (const label of walked.labels) await moveTo(label, round % 2 ? bench : shelf);
    }
    for (const [of, count] of [
      [{ productId: walked.productId }, 82],
      [{ lotId: walked.lotId }, 81],
      [{ stockId: walked.containers[0]?.stockId }, 21],
    ] as const) {
      const seen: number[] = [];
      let more = true;
      while (more) {
        const page = await history(test.book, of, seen.at(-1));
        expect(page.entries.length).toBeLessThanOrEqual(30);
        seen.push(...page.entries.map((entry) => entry.id));
        more = page.more;
      }
      expect(seen).toHaveLength(count);
      expect(seen).toEqual([...new Set(seen)].sort((a, b) => b - a));
    }
  });

  // The plans are SQLite's.
  it.skipIf(onServer())('is found on indexes, whatever it is of', async () => {
    const asked: { sql: string; values: readonly unknown[] }[] = [];
    const spied = {
      ...test.book,
      read: {
        $queryRaw: async (parts: TemplateStringsArray, ...values: unknown[]) => {
          asked.push(Prisma.sql(parts, ...(values as never[])));
          return [];
        },
      },
    };
    for (const of of [{}, bench, { productId: 1 }, { lotId: 1 }, { stockId: 1 }, { jobId: 1 }]) {
      await entriesOf(spied as never, of, 1000, 31);
    }
    expect(asked).toHaveLength(6);
    for (const { sql, values } of asked) {
      const plan = await test.book.read.$queryRawUnsafe<{ detail: string }[]>(`EXPLAIN QUERY PLAN ${sql}`, ...values);
      const scans = plan
        .map((row) => row.detail)
        .filter((detail) => /^SCAN (e|Entry|Movement|Container|Lot)\b/.test(detail));
      expect(scans, sql).toEqual([]);
      expect(plan.map((row) => row.detail).join('\n')).not.toMatch(/TEMP B-TREE FOR DISTINCT/);
    }
  });
});
