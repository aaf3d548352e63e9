import { describe, expect, it } from 'vitest';
import { availableToPromise } from '@/shared/promise/available-to-promise';
import { coverDemands } from '@/shared/promise/cover-demands';
import type { MaterialNeed, OnHand } from '@/shared/promise/material-need';
import { packagesToBuy } from '@/shared/promise/packages-to-buy';
import { planMaterialNeeds } from '@/shared/promise/plan-material-needs';
import { shareCost } from '@/shared/promise/share-cost';
import type { Demand, Supply } from '@/shared/promise/supply-and-demand';
import { minorUnits } from '@/shared/units/minor-units';
import { stepOnDay } from '@/tests/shared/promise/step-on-day';
import { candidate, day, inspection, printed, TODAY, USE_DAY } from '@/tests/shared/shelf-life/fixtures';

// None of the sources below was opened for these checks: the definitions, rules and worked figures are from memory.

const week = (nr: number) =>
  day(`2027-0${1 + Math.floor((nr * 7) / 28)}-${String(1 + ((nr * 7) % 28)).padStart(2, '0')}`);
const supply = (amount: number, nr: number): Supply => ({
  id: `w${nr}`,
  words: '',
  kind: nr === 0 ? 'on-hand' : 'arriving',
  from: week(nr),
  amount,
  promised: 0,
});
const ordered = (amounts: readonly number[]): Demand[] =>
  amounts.map((amount, nr) => ({ id: `o${nr}`, words: '', on: week(nr), amount })).filter((each) => each.amount > 0);
const freeIn = (supplies: Supply[], demands: Demand[], nr: number) =>
  stepOnDay(availableToPromise(supplies, demands, week(0)), week(nr))?.free;

// APICS Dictionary, "available-to-promise (ATP)": the uncommitted portion of a company's inventory and planned production.
describe('APICS Dictionary, available-to-promise (from memory)', () => {
  it('is the part of the stock and of what is planned to come that nobody was promised', () => {
    expect(freeIn([supply(40, 0), supply(50, 3)], ordered([30, 0, 5]), 0)).toBe(5);
  });
});

// The worked table of the textbooks: on hand 50; lots of 100 in weeks 3 and 5; orders booked 20, 10, 60, 10, 40, 10.
// Discrete ATP by lot: 20 (50−20−10), 30 (100−60−10), 50 (100−40−10); cumulative with look-ahead: 20, 20, 50, 50, 100, 100.
// Weeks here count from 0. Arnold, Introduction to Materials Management, "available to promise"; from memory, own figures.
describe('available to promise with look-ahead, the table of the textbooks (from memory)', () => {
  const supplies = [supply(50, 0), supply(100, 2), supply(100, 4)];
  const orders = ordered([20, 10, 60, 10, 40, 10]);
  it.each([
    [0, 20],
    [1, 20],
    [2, 50],
    [3, 50],
    [4, 100],
    [5, 100],
  ])('week %d: %d', (nr, free) => {
    expect(freeIn(supplies, orders, nr)).toBe(free);
  });

  it('looks ahead: a lot that later orders overdraw lowers what went before', () => {
    // On hand 50, a lot of 20 in week 2; orders 10 now and 45 in week 2: 25 of the first lot are wanted then.
    expect(freeIn([supply(50, 0), supply(20, 2)], ordered([10, 0, 45]), 0)).toBe(15);
    expect(freeIn([supply(50, 0), supply(20, 2)], ordered([10, 0, 45]), 2)).toBe(15);
  });
});

// F. Glover, "Maximum matching in a convex bipartite graph", Naval Research Logistics Quarterly 14 (1967): serving the
// points in order, each from the interval that ends first, serves the most. From memory.
describe('Glover 1967: the interval that ends first serves (from memory)', () => {
  it('serves both where serving from the longer one first would serve one', () => {
    const short: Supply = { ...supply(1, 0), id: 'short', lastGoodDay: week(1) };
    const long: Supply = { ...supply(1, 0), id: 'long', lastGoodDay: week(4) };
    expect(
      coverDemands(
        [long, short],
        [ordered([1])[0], ordered([0, 0, 0, 1])[0]].filter((each) => each !== undefined),
      ).total,
    ).toBe(2);
  });
});

const need = (change: Partial<MaterialNeed> = {}): MaterialNeed => ({
  id: 1,
  jobId: 1,
  purpose: 'client',
  on: USE_DAY,
  unit: 'mg',
  amount: 500,
  used: 0,
  productIds: [1],
  surface: '',
  ...change,
});
const tin = (stockId: number, facts: Parameters<typeof candidate>[0] = {}): OnHand => ({
  stockId,
  label: `T-${stockId}`,
  productId: 1,
  unit: 'mg',
  left: 1000,
  candidate: candidate({
    ...facts,
    container: { ...facts.container, id: String(stockId), label: `T-${stockId}`, left: 1000 },
  }),
  promised: [],
});
const chosen = (stock: OnHand[], change: Partial<MaterialNeed> = {}) =>
  planMaterialNeeds([need(change)], stock, [], TODAY)[0]?.have.map((part) => part.label);

describe('21 CFR 211.150(a): the oldest approved stock is distributed first (from memory)', () => {
  it('what a press promises is the first to expire of what is approved', () => {
    const [older, newer] = [
      tin(1, { lot: { bestBefore: printed('2027-03-01') } }),
      tin(2, { lot: { bestBefore: printed('2027-09-01') } }),
    ];
    expect(chosen([newer, older])).toEqual(['T-1']);
  });
});

describe('WHO good storage and distribution practices (TRS 1025, Annex 7): first expired, first out (from memory)', () => {
  it('goes by expiry, not by the day it was made or came in', () => {
    const first = tin(1, { lot: { madeOn: printed('2026-01-01'), bestBefore: printed('2027-02-01') } });
    const second = tin(2, { lot: { madeOn: printed('2025-01-01'), bestBefore: printed('2027-06-01') } });
    expect(chosen([second, first])).toEqual(['T-1']);
  });

  it('stock that has expired is taken out of the usable stock', () => {
    expect(chosen([tin(1, { lot: { bestBefore: printed('2026-11-01') } })])).toEqual([]);
  });
});

describe('21 CFR 211.142(a) and 211.110(c): what is in quarantine or rejected is not to be used (from memory)', () => {
  it.each(['quarantine', 'on-hold', 'recalled'] as const)('nothing of a lot that is %s can be promised', (hold) => {
    expect(chosen([tin(1, { lot: { hold } })])).toEqual([]);
  });
});

describe('21 CFR 211.87: retested before use after long storage (from memory)', () => {
  it('what a retest releases is promised within the time the retest gives', () => {
    const late = { lot: { bestBefore: printed('2026-10-01') }, inspections: [inspection()] };
    expect(chosen([tin(1, late)])).toEqual(['T-1']);
    expect(chosen([tin(1, late)], { on: day('2027-05-02') })).toEqual([]);
  });
});

// IAS 2 Inventories, paragraph 23: items segregated for a specific project carry their own cost, specific identification.
describe('IAS 2, paragraph 23: what is set apart for a job carries its own actual cost (from memory)', () => {
  it('each promise of a container takes its share of what that container cost, and nothing is lost between them', () => {
    const { promises, free } = shareCost(minorUnits(10_000), { size: 3, left: 3, promises: [1, 1] });
    expect([...promises, free].reduce<number>((sum, each) => sum + each, 0)).toBe(10_000);
    expect(promises.every((each) => Math.abs(each - 10_000 / 3) < 1)).toBe(true);
  });
});

// The coin problem: with 3 and 5 every amount from 8 on can be paid exactly, and 7 cannot (Sylvester 1882: ab − a − b = 7).
describe('Sylvester 1882, the largest amount that two sizes cannot make up is ab − a − b (from memory)', () => {
  const offers = [{ size: 3 }, { size: 5 }];
  it('3 and 5 leave one over at 7, and nothing from 8 on', () => {
    expect(packagesToBuy(7, offers)?.amount).toBe(8);
    for (let short = 8; short < 60; short += 1) expect(packagesToBuy(short, offers)?.amount).toBe(short);
  });
});
