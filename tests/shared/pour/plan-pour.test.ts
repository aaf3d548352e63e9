import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { beyondTheSheet } from '@/shared/pour/beyond-the-sheet';
import { checkSheet } from '@/shared/pour/check-sheet';
import { mixedDensity } from '@/shared/pour/mixed-density';
import { type PourAsk, planPour } from '@/shared/pour/plan-pour';
import { sayPlanError } from '@/shared/pour/say-plan-error';
import { measureVoid } from '@/shared/pour/void-volume';
import { weighedRatio } from '@/shared/pour/weighed-ratio';
import { unwrap } from '@/shared/result/result';
import { microlitres } from '@/shared/units/stock-unit';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';
import { FACTS, FIGURES, g, mm } from '@/tests/support/pour-figures';

const day = (text: string) => text as CalendarDate;
const ASK: PourAsk = { ...FIGURES, sheet: { ...FACTS, from: 'sheet' }, first: day('2026-12-07') };
const open = () => false;

describe('a void', () => {
  it('of sloping sides holds at every height what its formula says: half the depth of a V groove a quarter', () => {
    const groove = unwrap(
      measureVoid({
        from: 'solid',
        solid: { shape: 'v-groove', length: mm(1000), width: mm(40), depth: mm(20) },
        wood: microlitres(0),
      }),
    );
    expect([groove.below(mm(0)), groove.below(mm(10)), groove.below(mm(20))]).toEqual([0, 100_000, 400_000]);
  });

  it('of a cone holds an eighth below half its depth', () => {
    const solid = { shape: 'cone-frustum' as const, topDiameter: mm(120), bottomDiameter: mm(0), depth: mm(100) };
    const cone = unwrap(measureVoid({ from: 'solid', solid, wood: microlitres(0) }));
    expect(cone.below(mm(50)) / cone.below(mm(100))).toBeCloseTo(1 / 8, 5);
  });

  it('of fills is level at the top: shallow ones begin higher up', () => {
    const fills = unwrap(
      measureVoid({
        from: 'fills',
        fills: [
          { area: 1000, depth: mm(30) },
          { area: 500, depth: mm(10) },
        ],
      }),
    );
    expect([fills.depth, fills.below(mm(20)), fills.below(mm(30))]).toEqual([mm(30), 20_000, 35_000]);
  });

  it('is refused where it holds nothing, or its stations are out of order', () => {
    expect(measureVoid({ from: 'fills', fills: [] })).toMatchObject({ error: { code: 'no-fills' } });
    const solid = { shape: 'box' as const, length: mm(100), width: mm(100), depth: mm(10) };
    expect(measureVoid({ from: 'solid', solid, wood: microlitres(100_000) })).toMatchObject({
      error: { code: 'wood-fills-the-form' },
    });
    const widths = [
      { at: mm(500), width: mm(80) },
      { at: mm(0), width: mm(60) },
    ];
    expect(measureVoid({ from: 'stations', depth: mm(40), widths })).toMatchObject({
      error: { code: 'stations-out-of-order', station: 1 },
    });
  });
});

describe('a whole pour', () => {
  it('is laid out in lifts of 30 mm with their days, grams and needs', () => {
    const plan = unwrap(planPour(ASK, open));
    expect(plan.lifts.map(({ nr, depth, on, joins }) => [nr, depth, on, joins])).toEqual([
      [1, mm(30), '2026-12-07', 'first'],
      [2, mm(30), '2026-12-08', 'while-tacky'],
    ]);
    // 1.5 L at 1067 g/L is 1600.5 g: 1601 steps of a gram, 1104 of A and 497 of B.
    expect(plan.lifts.map(({ batches }) => batches)).toEqual([
      [{ a: g(1104), b: g(497), total: g(1601), ratioErrorTenths: 0 }],
      [{ a: g(1104), b: g(497), total: g(1601), ratioErrorTenths: 0 }],
    ]);
    expect(plan.days).toEqual({ lastLift: '2026-12-08', demould: '2026-12-11', fullCure: '2026-12-15' });
  });

  it('seals the wood first, on a day of its own, and keeps off closed days', () => {
    const sealed = unwrap(
      planPour({ ...ASK, sealArea: 500_000, first: day('2026-12-11') }, (on) => on === '2026-12-12'),
    );
    expect(sealed.lifts.map(({ nr, on, joins }) => [nr, on, joins])).toEqual([
      [0, '2026-12-11', 'seal'],
      [1, '2026-12-13', 'sand-first'],
      [2, '2026-12-14', 'while-tacky'],
    ]);
    expect(sealed.need.seal).toBe(100_000);
  });

  it('pours shallower where a lift would be more than the sheet lets cure at once', () => {
    const depths = [{ least: mm(6), most: mm(50), mostMass: g(1000) }];
    const plan = unwrap(planPour({ ...ASK, sheet: { ...ASK.sheet, depths } }, open));
    expect(plan.lifts.map(({ depth }) => depth)).toEqual([mm(15), mm(15), mm(15), mm(15)]);
    expect(beyondTheSheet(plan)).toBeUndefined();
  });

  it('warns where it is asked for in fewer lifts than the sheet allows, and names the lift', () => {
    const plan = unwrap(planPour({ ...ASK, lifts: 1 }, open));
    expect(beyondTheSheet(plan)).toEqual({ nr: 1, why: 'deeper-than-the-sheet' });
  });

  it('goes by the depth for the mass of each lift, not by the first row of the table', () => {
    const depths = [
      { least: mm(6), most: mm(50), mostMass: g(1000) },
      { least: mm(6), most: mm(20), mostMass: g(5000) },
    ];
    const plan = unwrap(planPour({ ...ASK, sheet: { ...ASK.sheet, depths } }, open));
    // 3 L are 3.2 kg: two lifts of 1.6 kg may be 20 mm deep and are 30, three of 1.07 kg are 20.
    expect(plan.lifts.map(({ depth }) => depth)).toEqual([mm(20), mm(20), mm(20)]);
    expect(beyondTheSheet(plan)).toBeUndefined();
    const two = unwrap(planPour({ ...ASK, sheet: { ...ASK.sheet, depths }, lifts: 2 }, open));
    expect(beyondTheSheet(two)).toEqual({ nr: 1, why: 'deeper-than-the-sheet' });
  });

  it('counts what stays in the buckets to the mass of a lift, so that its own plan is never beyond the sheet', () => {
    // 1601 g in the form and 22 g in each bucket: 1615 g would be kept by the form's alone.
    const depths = [{ least: mm(6), most: mm(50), mostMass: g(1615) }];
    const lossPerBatch = microlitres(20_000);
    const plan = unwrap(planPour({ ...ASK, lossPerBatch, sheet: { ...ASK.sheet, depths } }, open));
    expect(plan.lifts.map(({ depth }) => depth)).toEqual([mm(20), mm(20), mm(20)]);
    expect(beyondTheSheet(plan)).toBeUndefined();
  });

  it('asks for a reason where a batch is larger than any its pot life was measured with', () => {
    const potLives = [{ minutes: 40, mass: g(100), at: tenthsCelsius(230) }];
    const sheet = { ...ASK.sheet, potLives };
    const plan = unwrap(planPour({ ...ASK, sheet }, open));
    expect(plan.lifts[0]?.batches.map(({ total }) => total)).toEqual([g(1601)]);
    expect(plan.lifts[0]?.potLife?.cautions).toEqual(['more-than-the-sheet']);
    expect(beyondTheSheet(plan)).toEqual({ nr: 1, why: 'batch-not-measured' });
    // A bucket of what was measured is within it; so is a row for a larger mass.
    const small = unwrap(planPour({ ...ASK, sheet, bucket: g(100) }, open));
    expect([small.lifts[0]?.batches.length, beyondTheSheet(small)]).toEqual([17, undefined]);
    const more = [...potLives, { minutes: 20, mass: g(2000), at: tenthsCelsius(230) }];
    const known = unwrap(planPour({ ...ASK, sheet: { ...sheet, potLives: more } }, open));
    expect([known.lifts[0]?.potLife?.minutes, beyondTheSheet(known)]).toEqual([20, undefined]);
  });

  it('is never planned anew for a day on which the lift below cannot be poured on', () => {
    const poured = { lifts: 1, depth: mm(30), last: day('2026-12-07') };
    const first = (againFromHours: number | undefined, closed = '') =>
      unwrap(planPour({ ...ASK, poured, sheet: { ...ASK.sheet, againFromHours } }, (on) => on === closed)).lifts[0];
    // Asked for the very day lift 1 was poured on: from 12 hours is the next, from 30 the one after, from 6 the same.
    expect(first(12)).toMatchObject({ on: '2026-12-08', joins: 'while-tacky' });
    expect(first(30)).toMatchObject({ on: '2026-12-09', joins: 'sand-first' });
    expect(first(6)).toMatchObject({ on: '2026-12-07', joins: 'while-tacky' });
    expect(first(undefined)).toMatchObject({ on: '2026-12-08' });
    // Poured in the evening, its six hours end tomorrow.
    const evening = { ...poured, ready: day('2026-12-08') };
    const night = planPour({ ...ASK, poured: evening, sheet: { ...ASK.sheet, againFromHours: 6 } }, open);
    expect(unwrap(night).lifts[0]).toMatchObject({ on: '2026-12-08' });
    expect(first(12, '2026-12-08')).toMatchObject({ on: '2026-12-09', joins: 'sand-first' });
  });

  it('goes on from what was poured, sanding first where the window has passed', () => {
    const poured = { lifts: 1, depth: mm(30), last: day('2026-12-04') };
    const plan = unwrap(planPour({ ...ASK, poured, sealArea: 500_000 }, open));
    expect(plan.lifts.map(({ nr, depth, joins }) => [nr, depth, joins])).toEqual([[2, mm(30), 'sand-first']]);
    expect(planPour({ ...ASK, poured: { ...poured, depth: mm(60) } }, open)).toMatchObject({
      error: { code: 'nothing-left-to-pour' },
    });
  });

  it('mixes no more at once than can be poured within the pot life', () => {
    // 60 min for up to 10 kg, at 60 a kilogram, is 1 kg; the lift is 1601 g.
    const slow = unwrap(planPour({ ...ASK, minutesPerKilogram: 60 }, open));
    expect(slow.lifts[0]?.batches.map(({ total }) => total)).toEqual([g(801), g(800)]);
  });

  it.each([
    ['no-mixed-density', { sheet: { ...ASK.sheet, byVolume: undefined, densityA: undefined } }],
    ['bucket-too-small', { bucket: g(10), lossPerBatch: microlitres(20_000) }],
    ['too-many-lifts', { lifts: 41 }],
    ['no-depth-limit', { sheet: { ...ASK.sheet, depths: [] } }],
    ['too-warm-for-the-sheet', { room: tenthsCelsius(300) }],
  ] as const)('is refused with a sentence of its own: %s', (code, change) => {
    const refused = planPour({ ...ASK, ...change }, open);
    expect(refused).toMatchObject({ ok: false, error: { code } });
    if (!refused.ok) expect(sayPlanError(refused.error).what).not.toBe('That number cannot be.');
  });

  it('keeps every total, whatever is asked: volumes are the void, A and B are the batches, steps of the scale', () => {
    fc.assert(
      fc.property(
        fc.record({
          length: fc.integer({ min: 20, max: 3000 }),
          width: fc.integer({ min: 10, max: 900 }),
          depth: fc.integer({ min: 6, max: 140 }),
          bucket: fc.integer({ min: 400, max: 12_000 }),
          loss: fc.integer({ min: 0, max: 60_000 }),
          leakage: fc.integer({ min: 0, max: 30 }),
          step: fc.constantFrom(0.1, 1, 2, 5),
          sealed: fc.integer({ min: 0, max: 900_000 }),
        }),
        ({ length, width, depth, bucket, loss, leakage, step, sealed }) => {
          const planned = planPour(
            {
              ...ASK,
              space: {
                from: 'solid',
                solid: { shape: 'box', length: mm(length), width: mm(width), depth: mm(depth) },
                wood: microlitres(0),
              },
              bucket: g(bucket),
              lossPerBatch: microlitres(loss),
              leakagePercent: leakage,
              step: g(step),
              sealArea: sealed,
            },
            open,
          );
          if (!planned.ok)
            return ['step-too-coarse', 'thinner-than-the-sheet', 'bucket-too-small'].includes(planned.error.code);
          const { lifts, need, density, totalA, totalB } = planned.value;
          const sum = (of: (lift: (typeof lifts)[number]) => number) => lifts.reduce((all, lift) => all + of(lift), 0);
          expect(need.void).toBe(length * width * depth);
          expect(need.total).toBe(need.void + need.seal + need.leakage + need.cups);
          expect(sum(({ fills, leaks, cups }) => fills + leaks + cups)).toBe(need.total);
          expect(totalA + totalB).toBe(sum(({ mass }) => mass));
          for (const { batches, mass, fills, leaks, cups } of lifts) {
            expect(batches.reduce((all, { a, b }) => all + a + b, 0)).toBe(mass);
            // Never short, and no more than a step a lift and a milligram a reckoning over.
            const exact = ((fills + leaks + cups) * density.gramsPerLitre) / 1000;
            expect(mass).toBeGreaterThanOrEqual(exact - 1e-6);
            expect(mass).toBeLessThanOrEqual(exact + g(step) + batches.length + 2);
            for (const { a, b, total } of batches) {
              expect(total).toBeLessThanOrEqual(g(bucket));
              expect([a % g(step), b % g(step)]).toEqual([0, 0]);
            }
          }
          return true;
        },
      ),
    );
  });
});

describe('a batch as it was weighed', () => {
  const parts = { a: 100, b: 45 };

  it('says how far the ratio is off, and what to add of which part', () => {
    expect(weighedRatio(g(345), g(150), parts, 20)).toEqual({
      errorTenths: -34,
      within: false,
      add: { part: 'B', amount: 5_250 },
    });
    expect(weighedRatio(g(340), g(160), parts, 20)).toMatchObject({
      within: false,
      add: { part: 'A', amount: 15_556 },
    });
    expect(weighedRatio(g(100), g(45), parts)).toEqual({ errorTenths: 0, within: true });
    expect(weighedRatio(g(0), g(45), parts)).toBeUndefined();
  });

  it('is right once what it asks for is added, whatever was weighed', () => {
    const grams = fc.integer({ min: 10_000, max: 5_000_000 });
    fc.assert(
      fc.property(grams, grams, (one, two) => {
        const [a, b] = [g(one / 1000), g(two / 1000)];
        const judged = weighedRatio(a, b, parts, 1);
        if (!judged?.add) return true;
        const { part, amount } = judged.add;
        const mended = weighedRatio(
          g((a + (part === 'A' ? amount : 0)) / 1000),
          g((b + (part === 'B' ? amount : 0)) / 1000),
          parts,
          1,
        );
        return mended?.within === true;
      }),
    );
  });
});

describe('a data sheet', () => {
  const sheet = { ...FACTS, from: 'sheet' as const };

  it('holds together, or is refused at the field to look at', () => {
    expect(unwrap(checkSheet(sheet)).parts).toEqual({ a: 100, b: 45 });
    expect(checkSheet({ ...sheet, densityA: 1.1 })).toMatchObject({
      error: { code: 'outside-range', field: 'densityA' },
    });
    expect(checkSheet({ ...sheet, againFromHours: 30 })).toMatchObject({
      error: { code: 'wrong-way-round', field: 'againToHours' },
    });
    const depths = [{ least: mm(50), most: mm(6) }];
    expect(checkSheet({ ...sheet, depths })).toMatchObject({
      error: { code: 'wrong-way-round', field: 'depthMost', row: 0 },
    });
    const room = { leastRoom: tenthsCelsius(300), mostRoom: tenthsCelsius(200) };
    expect(checkSheet({ ...sheet, ...room })).toMatchObject({ error: { field: 'mostRoom' } });
    expect(checkSheet({ ...sheet, byMass: { a: 100, b: 50 } })).toMatchObject({ error: { code: 'ratios-contradict' } });
    const at = tenthsCelsius(230);
    const potLives = [
      { minutes: 40, mass: g(100), at },
      { minutes: 50, mass: g(1000), at },
    ];
    expect(checkSheet({ ...sheet, potLives })).toMatchObject({
      error: { code: 'longer-with-more', field: 'potMinutes', row: 1 },
    });
    // In a cooler room more may well keep longer.
    const cooler = potLives.map((row, nr) => ({ ...row, at: nr === 1 ? tenthsCelsius(150) : at }));
    expect(checkSheet({ ...sheet, potLives: cooler }).ok).toBe(true);
    expect(checkSheet({ ...sheet, potLives: [{ minutes: 0, mass: g(100), at }] })).toMatchObject({
      error: { code: 'outside-range', field: 'potMinutes', row: 0 },
    });
  });

  it('gives the density of the mix, or lets it be reckoned from its parts', () => {
    expect(mixedDensity({ mixedDensity: 1060 }, { a: 100, b: 40 })).toEqual({ gramsPerLitre: 1060, from: 'sheet' });
    expect(mixedDensity(FACTS, { a: 100, b: 45 })).toEqual({ gramsPerLitre: 1067, from: 'parts' });
    expect(mixedDensity({ densityA: 1100 }, { a: 1, b: 1 })).toBeUndefined();
  });
});
