import { describe, expect, it } from 'vitest';
import { firstCoatDay } from '@/app/(shop)/jobs/[id]/finish/first-coat-day';
import { day } from '@/tests/support/day';
import { steps } from '@/tests/support/step-of-a-test';

const TODAY = day('2026-11-25');
const [TOP, BASE] = [1, 2];
const TABLE = steps(
  { kind: 'lift', day: '2026-12-01', pourId: 7, partId: TOP },
  { kind: 'demould', day: '2026-12-04', pourId: 7, partId: TOP },
  { kind: 'cure', day: '2026-12-08', pourId: 7, partId: TOP },
  { kind: 'flatten', day: '2026-11-26', partId: BASE },
  { kind: 'coat', day: '2026-12-20', productId: 3, partId: BASE },
  { kind: 'cure', day: '2026-12-27', productId: 3, partId: BASE },
);

describe('the day coats are likeliest to begin', () => {
  it('is after the pour, the cure and the flattening of their own part, of the whole job after all of them', () => {
    expect(firstCoatDay(TOP, TABLE, TODAY)).toBe('2026-12-09');
    expect(firstCoatDay(BASE, TABLE, TODAY)).toBe('2026-11-27');
    expect(firstCoatDay(null, TABLE, TODAY)).toBe('2026-12-09');
  });

  it('is today where nothing of it is planned, or all of that lies behind', () => {
    expect(firstCoatDay(3, TABLE, TODAY)).toBe(TODAY);
    expect(firstCoatDay(TOP, TABLE, day('2027-01-04'))).toBe('2027-01-04');
  });
});
