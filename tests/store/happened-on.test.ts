import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { history } from '@/app/_server/ledger/history';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { discard } from '@/app/_server/stock/discard';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { weighContainer } from '@/app/_server/stock/weigh-container';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import { aSlab, stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, NOW, type TestBook, TODAY } from '@/tests/support/test-book';

describe('what was weighed or thrown away on another day', () => {
  let test: TestBook;
  let products = 0;
  beforeAll(async () => {
    test = await freshBook();
  });
  afterAll(async () => {
    expect((await proveBook(test.book.read)).differences).toEqual([]);
    await test.remove();
  });

  const tin = async () => {
    products += 1;
    const got = await stocked(test.book, { receivedOn: day('2026-11-10'), product: { name: `Resin ${products}` } });
    return { label: got.labels[0] ?? '', stockId: got.containers[0]?.stockId ?? 0 };
  };
  const weigh = (label: string, happenedOn?: string, left = 2_000_000) =>
    weighContainer(test.book, by(), { label, left, why: '', happenedOn: happenedOn ? day(happenedOn) : undefined });
  const throwAway = (label: string, happenedOn: string) =>
    discard(test.book, by(), { label, why: 'Spilt', happenedOn: day(happenedOn) });
  const newest = async (stockId: number) => (await history(test.book, { stockId })).entries[0];

  it('happened at noon of that day in the workshop, and was written now', async () => {
    const { label, stockId } = await tin();
    must(await weigh(label, '2026-11-20'));
    const noonInNewYork = '2026-11-20T17:00:00.000Z';
    const written = { happenedAt: noonInNewYork, writtenAt: NOW.toISOString() };
    expect(await newest(stockId)).toMatchObject({ kind: 'weighed', ...written });
    must(await throwAway(label, '2026-11-20'));
    expect(await newest(stockId)).toMatchObject({ kind: 'discarded', ...written });
  });

  it('happened now where no day or today is given', async () => {
    const { label, stockId } = await tin();
    must(await weigh(label));
    expect((await newest(stockId))?.happenedAt).toBe(NOW.toISOString());
    must(await throwAway(label, TODAY));
    expect((await newest(stockId))?.happenedAt).toBe(NOW.toISOString());
  });

  it('is not on a day to come, and not before the thing came in', async () => {
    const { label } = await tin();
    const { pieces } = must(await receivePieces(test.book, by(), aSlab({ receivedOn: day('2026-11-10') })));
    const slab = pieces[0]?.label ?? '';
    for (const act of [weigh(label, '2026-11-26'), throwAway(label, '2026-11-26'), throwAway(slab, '2026-11-26')]) {
      expect(await act).toMatchObject({ error: { code: 'received-in-the-future', field: 'happenedOn' } });
    }
    for (const act of [weigh(label, '2026-11-09'), throwAway(label, '2026-11-09'), throwAway(slab, '2026-11-09')]) {
      expect(await act).toMatchObject({ error: { code: 'happened-before-it-arrived', field: 'happenedOn' } });
    }
    must(await throwAway(slab, '2026-11-10'));
  });

  it('is not before a day on which more was taken', async () => {
    const { label } = await tin();
    must(
      await pullContainer(test.book, by(), {
        label,
        purpose: 'client',
        dayOfUse: TODAY,
        asked: 400_000,
        seen: 'care',
        happenedOn: day('2026-11-18'),
      }),
    );
    for (const act of [await weigh(label, '2026-11-17'), await throwAway(label, '2026-11-17')]) {
      expect(act).toMatchObject({ error: { code: 'changed-after-that-day', field: 'happenedOn' } });
      if (!act.ok) expect(sayRefusal(act.error, 'month-first').what).toContain('in the book on Nov 18, 2026');
    }
    must(await weigh(label, '2026-11-18'));
  });

  it('may be before a day whose taking was reversed', async () => {
    const { label } = await tin();
    const { entryId } = must(
      await pullContainer(test.book, by(), { label, purpose: 'client', dayOfUse: TODAY, asked: 400_000, seen: 'care' }),
    );
    expect(await throwAway(label, '2026-11-20')).toMatchObject({ error: { code: 'changed-after-that-day' } });
    must(await reverseEntry(test.book, by(), { entryId, why: 'Wrong tin' }));
    must(await throwAway(label, '2026-11-20'));
  });
});
