import { isWeekend, parseISO } from 'date-fns';
import { describe, expect, it } from 'vitest';
import { addDays } from '@/shared/calendar/add-days';
import { daysToWait } from '@/shared/calendar/days-to-wait';
import { printArea, readArea } from '@/shared/finish/area-text';
import { coatedArea } from '@/shared/finish/coated-area';
import { coatsNeed } from '@/shared/finish/coats-need';
import { readCoverage } from '@/shared/finish/coverage-text';
import { wetFilm } from '@/shared/finish/wet-film';
import { unwrap } from '@/shared/result/result';
import { closedOn, weekdayOf } from '@/shared/timeline/closed-days';
import { judgeTimeline } from '@/shared/timeline/judge-timeline';
import { nanometres } from '@/shared/units/nanometres';
import { day } from '@/tests/support/day';
import { FACTS, steps } from '@/tests/support/step-of-a-test';

const IMPERIAL = { prefer: 'imperial' as const };
const MM = 1_000_000;

describe('NIST SP 811 (2008), appendix B.8, from memory: square foot, US gallon, mil', () => {
  // ft² to m² 9.290304 E-02 (exact); gallon (US) to m³ 3.785412 E-03; mil to m 2.54 E-05 (exact).
  it('a square foot is 9.290304 E-02 m² exactly', () => {
    expect(unwrap(readArea('1', IMPERIAL))).toBe(92_903.04);
    expect(unwrap(readArea('100', IMPERIAL)) / 1e6).toBeCloseTo(9.290304, 12);
    expect(printArea(9_290_304, IMPERIAL)).toBe('100.00 ft²');
  });

  it.each([
    [100, 2.454],
    [400, 9.817],
    [500, 12.271],
    [1000, 24.542],
  ])('%i ft² a gallon are %f m² a litre', (squareFeet, squareMetres) => {
    const reckoned = (squareFeet * 0.09290304) / 3.785412;
    expect(reckoned).toBeCloseTo(squareMetres, 3);
    expect(unwrap(readCoverage(String(squareFeet), IMPERIAL))).toBe(Math.round(squareMetres * 10));
  });

  // US coatings practice rounds it to 1604 ft² (UFC 3-190-06, 2004, film thickness; from memory).
  it('a gallon a mil high covers 1604 square feet', () => {
    const exact = 3.785411784e-3 / 2.54e-5 / 0.09290304;
    expect(Math.round(exact)).toBe(1604);
    const tenths = (1604 * 0.09290304 * 10) / 3.785411784;
    expect(wetFilm(tenths)).toBeCloseTo(25.4, 2);
  });
});

describe('spreading rate and film (coatings manuals, common practice)', () => {
  it.each([
    [10, 100],
    [8, 125],
    [12.5, 80],
    [20, 50],
  ])('%f m² a litre stand %i µm wet', (squareMetres, micrometres) => {
    expect(wetFilm(squareMetres * 10)).toBe(micrometres);
  });

  // FPL-GTR-190 (2010), chapter 16, about 400 ft² a gallon a coat of paint; from memory.
  it('400 square feet a gallon are 4 mil wet', () => {
    const tenths = (400 * 0.09290304 * 10) / 3.785411784;
    expect(wetFilm(tenths) / 25.4).toBeCloseTo(4.01, 2);
  });

  // Practical rate = theoretical rate × (1 − loss): 40 % lost is the figure manuals give for spraying open frames.
  it('what is lost divides, it does not add: half as much again at a third lost', () => {
    const need = (lossPercent: number) =>
      unwrap(coatsNeed({ areaMm2: 6e6, coats: 1, coverageTenths: 100, lossPercent })).each;
    expect(need(0)).toBe(600_000);
    expect(need(40)).toBe(1_000_000);
    expect(need(50)).toBe(2 * need(0));
  });
});

describe('Abramowitz and Stegun (1964), table 17.1, complete elliptic integral E(m), from memory', () => {
  // The perimeter of an ellipse with half axes a ≥ b is 4 a E(1 − b²/a²).
  const edge = (a: number, b: number) => {
    const oval = {
      shape: 'oval' as const,
      count: 1,
      length: nanometres(2 * a * MM),
      width: nanometres(2 * b * MM),
      thickness: nanometres(MM),
    };
    return (coatedArea(oval, 1) ?? 0) - (coatedArea({ ...oval, thickness: null }, 1) ?? 0);
  };
  it.each([
    { m: 0.75, a: 2000, b: 1000, e: 1.211056028 },
    { m: 0.64, a: 1000, b: 600, e: 1.27634994 },
    { m: 0.36, a: 1000, b: 800, e: 1.418083394 },
    { m: 0, a: 500, b: 500, e: 1.570796327 },
  ])('E($m): the edge of an oval $a by $b', ({ m, a, b, e }) => {
    expect(1 - (b / a) ** 2).toBeCloseTo(m, 12);
    expect(edge(a, b) / (4 * a)).toBeCloseTo(e, 5);
  });
});

describe('5 U.S.C. 6103 and the list of federal holidays for 2026 (OPM), from memory: their days of the week', () => {
  it.each([
    ['2026-01-01', 4],
    ['2026-01-19', 1],
    ['2026-02-16', 1],
    ['2026-05-25', 1],
    ['2026-06-19', 5],
    ['2026-07-03', 5],
    ['2026-09-07', 1],
    ['2026-10-12', 1],
    ['2026-11-11', 3],
    ['2026-11-26', 4],
    ['2026-12-25', 5],
  ])('%s falls on day %i of the week, Sunday 0', (date, weekday) => {
    expect(weekdayOf(day(date))).toBe(weekday);
  });
});

describe('date-fns as the other opinion', () => {
  it('agrees on every weekend of two years', () => {
    for (let ahead = 0; ahead < 731; ahead += 1) {
      const date = addDays(day('2026-01-01'), ahead);
      expect(closedOn(date, { weekdays: [0, 6], ranges: [] }) !== undefined, date).toBe(isWeekend(parseISO(date)));
    }
  });
});

describe('SI Brochure, 9th edition (2019), table 8: a day is 24 hours', () => {
  it('hours of a sheet are whole days, rounded up, but for what is over within a working day (common practice)', () => {
    expect([24, 48, 72, 168].map(daysToWait)).toEqual([1, 2, 3, 7]);
    expect([25, 49, 9, 8, 0].map(daysToWait)).toEqual([2, 3, 1, 0, 0]);
  });
});

describe('common practice of the trade', () => {
  const flattened = (on: string, hours: number, cureDays: number) =>
    judgeTimeline(steps({ kind: 'lift', day: '2026-12-01', pourId: 1 }, { kind: 'flatten', day: on }), {
      ...FACTS,
      pours: { 1: { demouldHours: hours, fullCureDays: cureDays } },
    }).find(({ stepId }) => stepId === 2)?.word;

  it('touch-up fills set for a few days before they are sanded', () => {
    expect(['2026-12-02', '2026-12-03', '2026-12-04'].map((on) => flattened(on, 24, 3))).toEqual([
      'care',
      'care',
      'use',
    ]);
  });

  it('a deep pour leaves the form after three days and is flattened after a week', () => {
    expect(['2026-12-03', '2026-12-04', '2026-12-07', '2026-12-08'].map((on) => flattened(on, 72, 7))).toEqual([
      'stop',
      'care',
      'care',
      'use',
    ]);
  });

  it('an oiled top is handed over a week after its last coat, not a day before', () => {
    const handed = (on: string) =>
      judgeTimeline(
        steps({ kind: 'coat', day: '2026-12-01', productId: 1, coatNr: 1 }, { kind: 'delivery', day: on }),
        { ...FACTS, finishes: { 1: { cureDays: 7 } } },
      ).find(({ stepId }) => stepId === 2)?.word;
    expect([handed('2026-12-07'), handed('2026-12-08')]).toEqual(['stop', 'use']);
  });
});
