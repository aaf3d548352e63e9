import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printArea, readArea } from '@/shared/finish/area-text';
import { coatDays } from '@/shared/finish/coat-days';
import { coatedArea } from '@/shared/finish/coated-area';
import { coatsNeed } from '@/shared/finish/coats-need';
import { readCoverage, sayCoverage, typedCoverage } from '@/shared/finish/coverage-text';
import { checkFinishSheet } from '@/shared/finish/finish-sheet';
import { wetFilm } from '@/shared/finish/wet-film';
import { unwrap } from '@/shared/result/result';
import { openDay } from '@/shared/timeline/closed-days';
import { inStockUnit } from '@/shared/units/in-stock-unit';
import { nanometres } from '@/shared/units/nanometres';
import { microlitres, milligrams, pieces } from '@/shared/units/stock-unit';
import { day } from '@/tests/support/day';

const MM = 1_000_000;
const mm = (length: number) => nanometres(length * MM);
const ASK = { areaMm2: 2e6, coats: 3, coverageTenths: 100, lossPercent: 20 };

describe('what coats take', () => {
  it('is area over coverage, more by what is lost, each coat rounded up', () => {
    expect(unwrap(coatsNeed(ASK))).toEqual({ each: 250_000, total: 750_000 });
    expect(unwrap(coatsNeed({ ...ASK, lossPercent: 0, coats: 1 })).total).toBe(200_000);
    expect(unwrap(coatsNeed({ areaMm2: 1, coats: 2, coverageTenths: 1000, lossPercent: 0 }))).toEqual({
      each: 1,
      total: 2,
    });
  });

  it.each([
    { areaMm2: 0 },
    { areaMm2: 9e8 + 1 },
    { coats: 0 },
    { coats: 31 },
    { coats: 1.5 },
    { coverageTenths: 4 },
    { coverageTenths: 1001 },
    { lossPercent: -1 },
    { lossPercent: 91 },
  ])('is refused where a number cannot be: %o', (bad) => {
    expect(coatsNeed({ ...ASK, ...bad })).toEqual({
      ok: false,
      error: { code: 'outside-range', field: Object.keys(bad)[0] },
    });
  });

  it('is never short, and never more than a microlitre a coat too much', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9e8 }),
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 5, max: 1000 }),
        fc.integer({ min: 0, max: 90 }),
        (areaMm2, coats, coverageTenths, lossPercent) => {
          const { each, total } = unwrap(coatsNeed({ areaMm2, coats, coverageTenths, lossPercent }));
          // each × coverage × (1 − loss) covers the area: in whole numbers, each × tenths × (100 − loss) ≥ area × 1000.
          const covers = BigInt(each) * BigInt(coverageTenths) * BigInt(100 - lossPercent);
          expect(covers >= BigInt(areaMm2) * 1000n).toBe(true);
          expect(covers - BigInt(coverageTenths) * BigInt(100 - lossPercent) < BigInt(areaMm2) * 1000n).toBe(true);
          expect(total).toBe(each * coats);
        },
      ),
    );
  });
});

describe('the surface of a part', () => {
  const part = { shape: 'rectangle' as const, count: 1, length: mm(1000), width: mm(500), thickness: null };
  it('is its faces, and its edges where the thickness is known', () => {
    expect(coatedArea(part, 1)).toBe(500_000);
    expect(coatedArea(part, 2)).toBe(1_000_000);
    expect(coatedArea({ ...part, thickness: mm(40) }, 2)).toBe(1_000_000 + 3000 * 40);
    expect(coatedArea({ ...part, count: 4, shape: '' }, 2)).toBe(4_000_000);
  });

  it('is π r² and π d for a round one, and nearly so for an oval drawn round', () => {
    const round = { ...part, shape: 'round' as const, width: null, thickness: mm(40) };
    expect(coatedArea(round, 2)).toBeCloseTo(2 * Math.PI * 500 ** 2 + Math.PI * 1000 * 40, 0);
    const oval = { ...part, shape: 'oval' as const, width: mm(1000), thickness: mm(40) };
    expect(coatedArea(oval, 2)).toBeCloseTo(coatedArea(round, 2) ?? 0, 0);
  });

  it('is not known where a length is missing', () => {
    expect(coatedArea({ ...part, width: null }, 2)).toBeUndefined();
    expect(coatedArea({ ...part, length: null, shape: 'round' }, 2)).toBeUndefined();
  });
});

describe('the days of coats', () => {
  const WEEKEND = { weekdays: [0, 6], ranges: [] };
  const open = (one: ReturnType<typeof day>) => openDay(one, WEEKEND);
  it('step over closed days, and are sanded where the window has passed meanwhile', () => {
    const sheet = { recoatFromHours: 12, recoatToHours: 48, cureDays: 5 };
    expect(unwrap(coatDays(3, day('2026-12-04'), sheet, open))).toEqual({
      coats: [
        { on: '2026-12-04', joins: 'first' },
        { on: '2026-12-07', joins: 'sand-first' },
        { on: '2026-12-08', joins: 'in-window' },
      ],
      curedOn: '2026-12-13',
    });
  });

  it('may share a day where the sheet lets them within a working day', () => {
    const { coats } = unwrap(coatDays(3, day('2026-12-01'), { recoatFromHours: 3, sandBetween: true }, open));
    expect(coats.map(({ on, joins }) => [on, joins])).toEqual([
      ['2026-12-01', 'first'],
      ['2026-12-01', 'sand-first'],
      ['2026-12-01', 'sand-first'],
    ]);
  });

  it('are a day apart where no sheet says, and no cure is made up', () => {
    expect(unwrap(coatDays(2, day('2026-12-05'), {}, open))).toEqual({
      coats: [
        { on: '2026-12-07', joins: 'first' },
        { on: '2026-12-08', joins: 'in-window' },
      ],
    });
    expect(coatDays(0, day('2026-12-05'), {}, open).ok).toBe(false);
    expect(coatDays(31, day('2026-12-05'), {}, open).ok).toBe(false);
  });
});

describe('a finish sheet', () => {
  it('may leave out whatever it does not say', () => {
    expect(checkFinishSheet({ from: 'typed' }).ok).toBe(true);
  });
  it.each([
    [{ coverageTenths: 4 }, 'coverageTenths'],
    [{ coats: 0 }, 'coats'],
    [{ recoatFromHours: -1 }, 'recoatFromHours'],
    [{ recoatToHours: 1441 }, 'recoatToHours'],
    [{ cureDays: 181 }, 'cureDays'],
    [{ coats: 2.5 }, 'coats'],
  ])('is refused out of range: %o', (bad, field) => {
    expect(checkFinishSheet({ from: 'sheet', ...bad })).toEqual({ ok: false, error: { code: 'outside-range', field } });
  });
  it('is refused where its window ends before it begins', () => {
    const bad = { from: 'sheet' as const, recoatFromHours: 24, recoatToHours: 12 };
    expect(checkFinishSheet(bad)).toMatchObject({ error: { code: 'window-ends-before-it-begins' } });
    expect(checkFinishSheet({ ...bad, recoatToHours: 24 }).ok).toBe(true);
  });
});

describe('areas and coverages as they are typed', () => {
  it('take the unit of the book unless another is said', () => {
    expect(unwrap(readArea('2.5', { prefer: 'metric' }))).toBe(2_500_000);
    expect(unwrap(readArea('27 sq ft', { prefer: 'metric' }))).toBeCloseTo(2_508_382.08, 2);
    expect(unwrap(readArea('10', { prefer: 'imperial' }))).toBeCloseTo(929_030.4, 3);
    expect(unwrap(readArea('1,5 m²', { prefer: 'imperial' }))).toBe(1_500_000);
    expect(['', 'much', '0', '5 acres', '901 m2'].map((text) => readArea(text, { prefer: 'metric' }).ok)).toEqual(
      Array(5).fill(false),
    );
    expect(printArea(2_500_000, { prefer: 'metric' })).toBe('2.50 m²');
  });
  it('read back what they print', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 990 }), (tenths) => {
        expect(unwrap(readCoverage(typedCoverage(tenths, { prefer: 'metric' }), { prefer: 'metric' }))).toBe(tenths);
        const back = unwrap(readCoverage(typedCoverage(tenths, { prefer: 'imperial' }), { prefer: 'imperial' }));
        expect(Math.abs(back - tenths)).toBeLessThanOrEqual(1);
      }),
    );
    expect(sayCoverage(125, { prefer: 'metric' })).toBe('12.5 m² a litre');
    expect(wetFilm(125)).toBe(80);
    expect(['', 'x', '0.4', '101'].map((text) => readCoverage(text, { prefer: 'metric' }).ok)).toEqual(
      Array(4).fill(false),
    );
  });
});

describe('an amount in the unit its stock is counted in', () => {
  it('is rounded up, and comes back no smaller', () => {
    expect(unwrap(inStockUnit(microlitres(250_000), 'uL', 'mg', 1040))).toBe(260_000);
    expect(unwrap(inStockUnit(milligrams(260_001), 'mg', 'uL', 1040))).toBe(250_001);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e9 }), fc.integer({ min: 200, max: 20_000 }), (amount, density) => {
        const there = unwrap(inStockUnit(microlitres(amount), 'uL', 'mg', density));
        expect(unwrap(inStockUnit(there, 'mg', 'uL', density))).toBeGreaterThanOrEqual(amount);
      }),
    );
  });
  it('stays where the unit is the same, and is refused without a density or for pieces', () => {
    expect(unwrap(inStockUnit(pieces(3), 'piece', 'piece', null))).toBe(3);
    expect(inStockUnit(microlitres(3), 'uL', 'mg', null)).toEqual({ ok: false, error: { code: 'no-density' } });
    expect(inStockUnit(microlitres(3), 'uL', 'piece', 1000)).toEqual({ ok: false, error: { code: 'not-convertible' } });
  });
});
