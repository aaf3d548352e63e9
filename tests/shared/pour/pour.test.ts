import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { cautionsOfLift } from '@/shared/pour/cautions-of-lift';
import { massRatio } from '@/shared/pour/check-ratio';
import { planLifts } from '@/shared/pour/plan-lifts';
import { potLifeAt } from '@/shared/pour/pot-life-at';
import { pourNeed } from '@/shared/pour/pour-need';
import { schedulePour } from '@/shared/pour/schedule-pour';
import { splitBatches } from '@/shared/pour/split-batches';
import { weighOut } from '@/shared/pour/weigh-out';
import { unwrap } from '@/shared/result/result';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { microlitres, milligrams } from '@/shared/units/stock-unit';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';

const mm = (length: number): Nanometres => nanometres(Math.round(length * 1e6));
const g = (grams: number) => milligrams(Math.round(grams * 1000));
const day = (text: string) => text as CalendarDate;
const C = (degrees: number) => tenthsCelsius(Math.round(degrees * 10));

describe('how much a pour takes', () => {
  const ask = {
    form: microlitres(5_000_000),
    displaced: microlitres(1_000_000),
    sealArea: 0,
    sealPerSquareMetre: microlitres(0),
    leakagePercent: 5,
    lossPerBatch: microlitres(20_000),
    batches: 2,
  };

  it('is the void, the seal coat, the leakage and what stays in the cups, each said', () => {
    expect(unwrap(pourNeed(ask))).toEqual({
      void: 4_000_000,
      seal: 0,
      leakage: 200_000,
      cups: 40_000,
      total: 4_240_000,
    });
    const sealed = unwrap(pourNeed({ ...ask, sealArea: 500_000, sealPerSquareMetre: microlitres(300_000) }));
    expect(sealed.seal).toBe(150_000);
  });

  it('is refused where the wood fills the form, and where a number is none', () => {
    expect(pourNeed({ ...ask, displaced: ask.form })).toEqual({
      ok: false,
      error: { code: 'wood-fills-the-form', field: 'displaced' },
    });
    expect(pourNeed({ ...ask, leakagePercent: 101 })).toMatchObject({ ok: false, error: { field: 'leakagePercent' } });
    expect(pourNeed({ ...ask, batches: 0 })).toMatchObject({ ok: false, error: { field: 'batches' } });
  });

  it('is never less than the void and its parts add up, whatever is asked', () => {
    const volume = fc.integer({ min: 1, max: 100_000_000 });
    fc.assert(
      fc.property(
        volume,
        volume,
        fc.integer({ min: 0, max: 100 }),
        fc.integer({ min: 1, max: 9 }),
        (form, wood, leak, batches) => {
          const need = pourNeed({
            ...ask,
            form: microlitres(form),
            displaced: microlitres(wood),
            leakagePercent: leak,
            batches,
          });
          if (!need.ok) return wood >= form;
          const { total, ...parts } = need.value;
          return total === parts.void + parts.seal + parts.leakage + parts.cups && total >= form - wood;
        },
      ),
    );
  });
});

describe('the ratio to weigh by', () => {
  it('comes from the sheet, which agrees with its volumes and densities within 3 %', () => {
    const sheet = { byMass: { a: 100, b: 45 }, byVolume: { a: 2, b: 1 }, densityA: 1100, densityB: 1000 };
    expect(unwrap(massRatio(sheet))).toEqual({ parts: { a: 100, b: 45 }, from: 'sheet', apartTenths: 10 });
  });

  it('is refused where the sheet contradicts itself', () => {
    const sheet = { byMass: { a: 100, b: 50 }, byVolume: { a: 2, b: 1 }, densityA: 1100, densityB: 1000 };
    expect(massRatio(sheet)).toMatchObject({ ok: false, error: { code: 'ratios-contradict', apartTenths: 91 } });
  });

  it('comes from volume and densities where the sheet has no other, and not without densities', () => {
    expect(unwrap(massRatio({ byVolume: { a: 2, b: 1 }, densityA: 1100, densityB: 1000 }))).toEqual({
      parts: { a: 2200, b: 1000 },
      from: 'volume-and-densities',
    });
    expect(massRatio({ byVolume: { a: 2, b: 1 } })).toEqual({ ok: false, error: { code: 'no-densities' } });
    expect(massRatio({})).toEqual({ ok: false, error: { code: 'no-ratio' } });
    expect(massRatio({ byMass: { a: 100, b: 0 } })).toMatchObject({ ok: false, error: { code: 'bad-ratio' } });
  });
});

describe('weighing out a batch', () => {
  it('keeps the total and says how far rounding put the ratio off', () => {
    expect(unwrap(weighOut(g(500), { a: 100, b: 45 }, g(1)))).toEqual({
      a: g(345),
      b: g(155),
      total: g(500),
      ratioErrorTenths: -2,
    });
    expect(unwrap(weighOut(g(500), { a: 100, b: 45 }, g(0.1)))).toMatchObject({ a: g(344.8), b: g(155.2) });
  });

  it('is refused on a scale too coarse for it', () => {
    expect(weighOut(g(10), { a: 100, b: 1 }, g(5))).toMatchObject({ ok: false, error: { code: 'step-too-coarse' } });
  });

  it('shares the whole out into batches that fit the bucket, nothing lost, none a step larger than another', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 100, max: 40_000 }),
        fc.integer({ min: 200, max: 5_000 }),
        fc.constantFrom(0.1, 1, 5),
        (total, bucket, step) => {
          const batches = splitBatches({ total: g(total), parts: { a: 100, b: 45 }, bucket: g(bucket), step: g(step) });
          if (!batches.ok) return batches.error.code === 'step-too-coarse';
          const totals = batches.value.map((batch) => batch.total);
          const sum = totals.reduce((all, one) => all + one, 0);
          expect(sum).toBe(Math.ceil(g(total) / g(step)) * g(step));
          expect(Math.max(...totals)).toBeLessThanOrEqual(g(bucket));
          expect(Math.max(...totals) - Math.min(...totals)).toBeLessThanOrEqual(g(step));
          for (const { a, b, total: each } of batches.value) expect(a + b).toBe(each);
        },
      ),
    );
  });

  it('makes three of 2.5 kg in a bucket of 1 kg, and no fewer where the pot life asks for less', () => {
    const ask = { total: g(2500), parts: { a: 100, b: 45 }, bucket: g(1000), step: g(0.1) };
    expect(unwrap(splitBatches(ask)).map(({ total }) => total)).toEqual([g(833.4), g(833.3), g(833.3)]);
    expect(unwrap(splitBatches({ ...ask, mostMixed: g(500) }))).toHaveLength(5);
  });
});

describe('lifts', () => {
  const depths = [
    { least: mm(6), most: mm(50), upTo: C(22) },
    { least: mm(6), most: mm(30), upTo: C(28) },
  ];

  it('are the fewest even ones the sheet allows at the room temperature', () => {
    expect(unwrap(planLifts(mm(100), depths, C(20)))).toEqual([mm(50), mm(50)]);
    expect(unwrap(planLifts(mm(101), depths, C(22)))).toHaveLength(3);
    expect(unwrap(planLifts(mm(100), depths, C(25)))).toHaveLength(4);
  });

  it('add up to the depth exactly', () => {
    fc.assert(
      fc.property(fc.integer({ min: 6_000_000, max: 400_000_000 }), (depth) => {
        const lifts = unwrap(planLifts(nanometres(depth), depths, C(20)));
        expect(lifts.reduce((sum, lift) => sum + lift, 0)).toBe(depth);
        expect(Math.max(...lifts)).toBeLessThanOrEqual(mm(50));
      }),
    );
  });

  it('are refused without a limit, in too warm a room, and thinner than the sheet allows', () => {
    expect(planLifts(mm(100), [], C(20))).toEqual({ ok: false, error: { code: 'no-depth-limit' } });
    expect(planLifts(mm(100), depths, C(30))).toEqual({ ok: false, error: { code: 'too-warm-for-the-sheet' } });
    expect(planLifts(mm(3), depths, C(20))).toMatchObject({ ok: false, error: { code: 'thinner-than-the-sheet' } });
  });

  it('have a caution for each way they leave the sheet, and none at its very limits', () => {
    const sheet = {
      from: 'sheet' as const,
      depths: [{ least: mm(6), most: mm(50), mostMass: g(10_000) }],
      leastRoom: C(18),
      mostRoom: C(26),
    };
    expect(cautionsOfLift(sheet, { depth: mm(50), mass: g(10_000), room: C(26) })).toEqual([]);
    const codes = cautionsOfLift(sheet, { depth: mm(51), mass: g(10_001), room: C(27) }).map(({ code }) => code);
    expect(codes).toEqual(['deeper-than-the-sheet', 'more-than-the-sheet', 'room-too-warm']);
    expect(
      cautionsOfLift({ ...sheet, from: 'typed' }, { depth: mm(5), mass: g(1), room: C(17) }).map(({ code }) => code),
    ).toEqual(['thinner-than-the-sheet', 'room-too-cold', 'no-sheet']);
  });
});

describe('the pot life', () => {
  it('halves for every 10 °C above the sheet and is not lengthened below it (common practice)', () => {
    const sheet = { minutes: 40, mass: g(100), at: C(25) };
    expect(potLifeAt(sheet, { room: C(35), mass: g(100) })).toEqual({
      minutes: 20,
      cautions: ['warmer-than-the-sheet'],
    });
    expect(potLifeAt(sheet, { room: C(45), mass: g(100) }).minutes).toBe(10);
    expect(potLifeAt(sheet, { room: C(15), mass: g(900) })).toEqual({ minutes: 40, cautions: ['more-than-the-sheet'] });
  });
});

describe('the days of a pour', () => {
  const weekend = (on: CalendarDate) => [0, 6].includes(new Date(`${on}T00:00:00Z`).getUTCDay());
  const timing = { againFromHours: 12, againToHours: 24, demouldHours: 48, fullCureDays: 7 };

  it('keep the shop shut on its closed days, and sand where the window closed meanwhile', () => {
    // 2026-11-27 is a Friday.
    expect(unwrap(schedulePour(2, day('2026-11-27'), timing, weekend))).toEqual({
      lifts: [
        { on: '2026-11-27', joins: 'first' },
        { on: '2026-11-30', joins: 'sand-first' },
      ],
      lastLift: '2026-11-30',
      demould: '2026-12-02',
      fullCure: '2026-12-07',
    });
  });

  it('pour on the next day while it is tacky, and begin on the first open day', () => {
    const { lifts } = unwrap(schedulePour(3, day('2026-11-22'), timing, weekend));
    expect(lifts).toEqual([
      { on: '2026-11-23', joins: 'first' },
      { on: '2026-11-24', joins: 'while-tacky' },
      { on: '2026-11-25', joins: 'while-tacky' },
    ]);
  });

  it('are refused where the shop never opens', () => {
    expect(schedulePour(1, day('2026-11-25'), timing, () => true)).toEqual({
      ok: false,
      error: { code: 'no-open-day' },
    });
    expect(schedulePour(0, day('2026-11-25'), timing, weekend)).toEqual({ ok: false, error: { code: 'no-lifts' } });
  });
});
