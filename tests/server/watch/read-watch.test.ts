import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { changeHold } from '@/app/_server/stock/change-hold';
import { containerLine, judgeableSelect } from '@/app/_server/stock/judgeable';
import { noteCondition } from '@/app/_server/stock/note-condition';
import { receiveContainers } from '@/app/_server/stock/receive-containers';
import { recordInspection } from '@/app/_server/stock/record-inspection';
import { containersToJudge } from '@/app/_server/watch/containers-to-judge';
import { readWatch, type Watch } from '@/app/_server/watch/read-watch';
import { sayWatch } from '@/app/_server/watch/say-watch';
import { WATCH_LISTS, type WatchList, watchListOf } from '@/app/_server/watch/watch-list';
import { judge } from '@/shared/shelf-life/judge';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, NOW, type TestBook, TODAY } from '@/tests/support/test-book';

const bestBefore = (date: string, confirmed = true) => ({
  bestBefore: { date: day(date), precision: 'day' as const, confirmed },
});
async function allLines(book: TestBook['book']) {
  const rows = await book.read.container.findMany({
    where: { stock: { quantity: { gt: 0 } } },
    select: judgeableSelect,
    orderBy: { stockId: 'asc' },
  });
  return rows.map(containerLine);
}

const LONG_AGO = new Date('2026-08-01T15:00:00Z');

describe('Watch', () => {
  let test: TestBook;
  let watch: Watch;
  const lots: Record<string, number> = {};
  const labels: Record<string, string> = {};

  beforeAll(async () => {
    test = await freshBook();
    const { book } = test;
    const put = async (name: string, more: Parameters<typeof stocked>[1] = {}) => {
      const got = await stocked(book, { lotCode: name, product: { name }, ...more });
      lots[name] = got.lotId;
      labels[name] = got.labels[0] ?? '';
      return got;
    };
    await put('fine', { dates: bestBefore('2027-06-01') });
    const recalled = await put('recalled', { dates: bestBefore('2026-01-01'), count: 2 });
    must(await changeHold(book, by(), { stockId: recalled.lotId, hold: 'recalled', why: 'Maker’s notice' }));
    const gelled = await put('gelled', { dates: bestBefore('2026-01-02') });
    must(await noteCondition(book, by(), { label: gelled.labels[0] ?? '', conditions: ['gelled'], why: '' }));
    const failed = await put('failed', { dates: bestBefore('2026-11-01') });
    must(
      await recordInspection(book, by(), {
        lotId: failed.lotId,
        kind: 'inspection',
        madeOn: TODAY,
        passed: false,
        method: '',
        note: 'Stays soft',
      }),
    );
    await put('past yesterday', { dates: bestBefore('2026-11-24'), count: 3 });
    await put('past long', { dates: bestBefore('2026-08-01') });
    await put('good to today', { dates: bestBefore('2026-11-25') });
    await put('day 60', { dates: bestBefore('2027-01-24') });
    await put('day 61', { dates: bestBefore('2027-01-25') });
    await put('undated', { dates: {}, product: { name: 'undated', statedLife: undefined }, count: 4 });
    await put('unconfirmed', { dates: bestBefore('2027-06-01', false), count: 2 });
    await put('touched', {
      dates: bestBefore('2028-01-01'),
      opened: { on: day('2026-08-01'), sureness: 'known' },
      product: { name: 'touched', openedLife: { count: 2, unit: 'year' } },
    });
    watch = await readWatch(book, { today: TODAY, timeZone: 'America/New_York' });
  });
  afterAll(() => test.remove());

  const names = (list: WatchList) => watch.lists[list].groups.map(({ line, count }) => `${line.product} ×${count}`);

  it('puts each container into the first list that fits: a hold stands above what is also past its day', () => {
    expect(names('on-hold')).toEqual(['recalled ×2']);
    expect(names('spoilt')).toEqual(['failed ×1', 'gelled ×1']);
  });

  it('counts the last good day as good, and lists the earliest limit first', () => {
    expect(names('expired')).toEqual(['past long ×1', 'past yesterday ×3']);
    expect(names('expiring')).toEqual(['good to today ×1', 'day 60 ×1']);
  });

  it('shows a lot’s own matter on one line with the number of its containers', () => {
    expect(names('undated')).toEqual(['undated ×4']);
    expect(names('unconfirmed')).toEqual(['unconfirmed ×2']);
    expect(watch.lists.undated.containers).toBe(4);
  });

  it('leaves out what needs nothing: fresh, 61 days off, or opened long ago but moved today', () => {
    const all = WATCH_LISTS.flatMap((list) => watch.lists[list].groups.map(({ line }) => line.product));
    expect(all).not.toContain('fine');
    expect(all).not.toContain('day 61');
    expect(all).not.toContain('touched');
    expect(watch.containers).toBe(19);
  });

  it('finds what was opened more than 60 days ago and not moved since', async () => {
    const early = { ...by(), now: LONG_AGO };
    const product = await test.book.read.product.findFirstOrThrow({ where: { name: 'touched' }, select: { id: true } });
    must(
      await receiveContainers(test.book, early, {
        productId: product.id,
        lotCode: 'old',
        dates: bestBefore('2028-01-01'),
        count: 1,
        size: 2_500_000,
        receivedOn: day('2026-07-01'),
        opened: { on: day('2026-07-15'), sureness: 'known' },
      }),
    );
    const now = await readWatch(test.book, { today: TODAY, timeZone: 'America/New_York' });
    expect(now.lists.forgotten.groups.map(({ line, openedDays }) => [line.lotCode, openedDays])).toEqual([
      ['old', 133],
    ]);
    const sooner = await readWatch(test.book, { today: day('2026-09-13'), timeZone: 'America/New_York' });
    expect(sooner.lists.forgotten.groups).toEqual([]);
  });

  it('reads the same facts as the nested read of one container does', async () => {
    const flat = await containersToJudge(test.book, TODAY);
    const nested = new Map((await allLines(test.book)).map((line) => [line.stockId, line]));
    expect(flat.length).toBeGreaterThan(15);
    for (const { line, movedAt } of flat) {
      expect({ ...line, tareMg: null }).toEqual({ ...nested.get(line.stockId), tareMg: null });
      expect([NOW.getTime(), LONG_AGO.getTime()]).toContain(movedAt);
    }
  });

  it('leaves no container unjudged that belongs into a list, whatever its dates, life and state', async () => {
    const other = await freshBook();
    const days = [undefined, '2026-11-01', '2026-11-25', '2027-02-23', '2027-02-24', '2029-01-01'];
    let nr = 0;
    for (const best of days) {
      for (const made of [undefined, '2025-12-20', '2026-10-30']) {
        for (const [basis, confirmed] of [
          ['data-sheet', true],
          ['house-default', true],
          ['data-sheet', false],
        ] as const) {
          nr += 1;
          await stocked(other.book, {
            lotCode: `L${nr}`,
            product: {
              name: `P${nr}`,
              statedLifeBasis: basis,
              careWindowDays: nr % 2 ? 90 : 14,
              policyKind: nr % 13 ? 'fixed' : 'keeps',
            },
            opened: nr % 11 ? undefined : { on: day('2026-11-21'), sureness: 'known' },
            dates: {
              ...(best && { bestBefore: { date: day(best), precision: nr % 3 ? 'day' : 'month', confirmed } }),
              ...(made && { madeOn: { date: day(made), precision: 'day', confirmed } }),
            },
          });
        }
      }
    }
    const judged = new Set((await containersToJudge(other.book, TODAY)).map(({ line }) => line.stockId));
    const lines = await allLines(other.book);
    const left = lines.filter((line) => !judged.has(line.stockId));
    const wrongly = left.filter((line) => {
      const verdict = judge({ ...line.candidate, purpose: 'client', dayOfUse: TODAY, today: TODAY });
      return watchListOf(verdict, { openedOn: line.candidate.container.opened?.on, today: TODAY }) !== undefined;
    });
    expect(wrongly.map((line) => line.lotCode)).toEqual([]);
    expect(lines).toHaveLength(54);
    expect(left.length).toBeGreaterThan(5);
    await other.remove();
  });

  it('sums up in one sentence, the sooner wanted first', () => {
    expect(sayWatch(watch)).toBe(
      '2 to use first, 4 past their day, 2 spoilt, 2 on hold, 4 without a date, 2 with a date to confirm.',
    );
    const none = Object.fromEntries(
      WATCH_LISTS.map((list) => [list, { groups: [], containers: 0 }]),
    ) as unknown as Watch['lists'];
    expect(sayWatch({ lists: none, heldPieceCount: 0 })).toBe('Nothing needs you today.');
    expect(sayWatch({ lists: { ...none, expired: { ...none.expired, containers: 1 } }, heldPieceCount: 1 })).toBe(
      '1 past its day, 1 piece of wood on hold.',
    );
  });
});
