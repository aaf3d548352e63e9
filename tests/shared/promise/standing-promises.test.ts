import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PromiseLine } from '@/shared/promise/promise-line';
import { standingPromises } from '@/shared/promise/standing-promises';
import { takeFromPromises } from '@/shared/promise/take-from-promises';

const line = (
  id: number,
  delta: number,
  needId: number | null = null,
  more: Partial<PromiseLine> = {},
): PromiseLine => ({
  id,
  jobId: 1,
  stockId: 7,
  needId,
  delta,
  ...more,
});
const amounts = (lines: PromiseLine[]) => standingPromises(lines).map((each) => [each.id, each.amount]);

describe('what stands of promises', () => {
  it('a release takes from its own need first, then from what is for no need, then from the rest, oldest first', () => {
    expect(amounts([line(1, 500, 1), line(2, 300, 2), line(3, 200), line(4, -600, 2)])).toEqual([[1, 400]]);
    expect(amounts([line(1, 500, 1), line(2, 300, 2), line(3, -600, 1)])).toEqual([[2, 200]]);
    expect(amounts([line(1, 5), line(2, 5), line(3, -6)])).toEqual([[2, 4]]);
  });

  it('an undone line takes from the very line it undoes', () => {
    expect(amounts([line(1, 5), line(2, 5), line(3, -5, null, { reversesId: 2 })])).toEqual([[1, 5]]);
  });

  it('another job’s, and another thing’s, are left alone', () => {
    expect(
      amounts([line(1, 5, null, { jobId: 2 }), line(2, 5, null, { stockId: 8 }), line(3, 5), line(4, -5)]),
    ).toEqual([
      [1, 5],
      [2, 5],
    ]);
  });

  it('adds up to the sum of the lines, whatever their order of needs', () => {
    const anyLine = fc.record({
      jobId: fc.integer({ min: 1, max: 2 }),
      stockId: fc.integer({ min: 1, max: 2 }),
      needId: fc.option(fc.integer({ min: 1, max: 3 })),
      delta: fc.integer({ min: -9, max: 9 }).filter((each) => each !== 0),
    });
    fc.assert(
      fc.property(fc.array(anyLine, { maxLength: 20 }), (some) => {
        const sums = new Map<string, number>();
        const lines: PromiseLine[] = [];
        for (const each of some) {
          const key = `${each.jobId}/${each.stockId}`;
          const sum = (sums.get(key) ?? 0) + each.delta;
          // What a book never does is not asked.
          if (sum < 0) continue;
          sums.set(key, sum);
          lines.push({ id: lines.length + 1, ...each });
        }
        for (const [key, sum] of sums) {
          const stands = standingPromises(lines).filter((each) => `${each.jobId}/${each.stockId}` === key);
          expect(stands.reduce((total, each) => total + each.amount, 0)).toBe(sum);
          expect(stands.every((each) => each.amount > 0)).toBe(true);
        }
      }),
    );
  });
});

describe('what is taken off promises', () => {
  const standing = standingPromises([line(1, 500, 1), line(2, 300, 2, { jobId: 2 })]);

  it('is the oldest first when it is used, the newest first when it cannot be kept', () => {
    expect(takeFromPromises(standing, 600, { first: 'oldest' }).map((each) => [each.jobId, each.amount])).toEqual([
      [1, 500],
      [2, 100],
    ]);
    expect(takeFromPromises(standing, 400, { first: 'newest' }).map((each) => [each.jobId, each.amount])).toEqual([
      [2, 300],
      [1, 100],
    ]);
  });

  it('is that of the need it is for before all others, and never more than stands', () => {
    expect(takeFromPromises(standing, 100, { first: 'oldest', needId: 2 })).toMatchObject([{ needId: 2, amount: 100 }]);
    const all = takeFromPromises(standing, 9000, { first: 'newest' });
    expect(all.reduce((sum, each) => sum + each.amount, 0)).toBe(800);
    expect(takeFromPromises(standing, 0, { first: 'newest' })).toEqual([]);
  });

  it('is one line for a job, a thing and a need', () => {
    const twice = standingPromises([line(1, 5, 1), line(2, 5, 1)]);
    expect(takeFromPromises(twice, 8, { first: 'oldest' })).toEqual([{ jobId: 1, stockId: 7, needId: 1, amount: 8 }]);
  });
});
