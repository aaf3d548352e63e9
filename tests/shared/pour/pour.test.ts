import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { cautionsOfLift } from '@/shared/pour/cautions-of-lift';
import { massRatio } from '@/shared/pour/check-ratio';
import { isNearTarget } from '@/shared/pour/is-near-target';
import { joinAt } from '@/shared/pour/join-at';
import { limitOfLift } from '@/shared/pour/limit-of-lift';
import { mostMixed } from '@/shared/pour/most-mixed';
import { MOST_LIFTS, planLifts } from '@/shared/pour/plan-lifts';
import { potLifeAt } from '@/shared/pour/pot-life-at';
import { pourNeed } from '@/shared/pour/pour-need';
import type { LiftDepth } from '@/shared/pour/resin-sheet';
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

  it('go by the row for their room and their mass', () => {
    const [light, heavy, warm] = [
      { least: mm(6), most: mm(50), upTo: C(22), mostMass: g(1000) },
      { least: mm(6), most: mm(20), upTo: C(22), mostMass: g(5000) },
      { least: mm(3), most: mm(12), upTo: C(28) },
    ];
    const limit = (room: number, mass: number) => limitOfLift([warm, heavy, light], { room: C(room), mass: g(mass) });
    expect(limit(20, 1000)).toEqual({ row: light, isTooHeavy: false });
    expect(limit(22, 1001)).toEqual({ row: heavy, isTooHeavy: false });
    // Too heavy for the rows of its room: what holds in a warmer one, holds in this.
    expect(limit(20, 5001)).toEqual({ row: warm, isTooHeavy: false });
    expect(limit(23, 100)).toEqual({ row: warm, isTooHeavy: false });
    expect(limitOfLift([heavy, light], { room: C(20), mass: g(5001) })).toEqual({ row: heavy, isTooHeavy: true });
    expect(limit(29, 1)).toBeUndefined();
  });

  it('are the fewest that keep the sheet, found by trying every number of them against every row', () => {
    const row = fc.record({
      least: fc.integer({ min: 0, max: 12 }).map(mm),
      most: fc.integer({ min: 12, max: 60 }).map(mm),
      upTo: fc.constantFrom(undefined, C(20), C(25), C(30)),
      mostMass: fc.constantFrom(undefined, g(500), g(2000), g(8000)),
    });
    /** Straight from the words of the table: of the rows that hold, none cooler and none lighter than the one that counts. */
    const keeps = (rows: readonly LiftDepth[], room: number, lift: number, mass: number) => {
      const hold = rows.filter((each) => (each.upTo ?? 1e9) >= room && (each.mostMass ?? 1e15) >= mass);
      const counts = hold.filter((each) =>
        hold.every(
          (other) =>
            (each.upTo ?? 1e9) < (other.upTo ?? 1e9) ||
            ((each.upTo ?? 1e9) === (other.upTo ?? 1e9) && (each.mostMass ?? 1e15) <= (other.mostMass ?? 1e15)),
        ),
      )[0];
      return counts !== undefined && lift >= counts.least && lift <= counts.most;
    };
    fc.assert(
      fc.property(
        fc.array(row, { minLength: 1, maxLength: 5 }),
        fc.integer({ min: 15, max: 32 }),
        fc.integer({ min: 5, max: 200 }),
        fc.integer({ min: 1, max: 400 }),
        (rows, degrees, depth, gramsPerMillimetre) => {
          const massOf = (bottom: number, top: number) =>
            milligrams(Math.round((top - bottom) / 1000) * gramsPerMillimetre);
          const planned = planLifts(mm(depth), rows, C(degrees), massOf);
          const counts = Array.from({ length: MOST_LIFTS }, (_, nr) => nr + 1);
          const fewest = counts.find((count) => {
            const whole = depth * 1e6;
            let bottom = 0;
            return Array.from(
              { length: count },
              (_, nr) => Math.floor(whole / count) + (nr < whole % count ? 1 : 0),
            ).every((lift) => {
              bottom += lift;
              return keeps(rows, C(degrees), lift, massOf(bottom - lift, bottom));
            });
          });
          if (fewest !== undefined) {
            expect(planned.ok && planned.value.length).toBe(fewest);
          } else if (planned.ok) {
            // Only where every number of them is too heavy for the sheet is something planned beyond it.
            const { cautions } = planned.value.reduce(
              ({ bottom, cautions: so }, lift) => {
                const mass = massOf(bottom, bottom + lift);
                const said = cautionsOfLift({ from: 'sheet', depths: rows }, { depth: lift, mass, room: C(degrees) });
                return { bottom: bottom + lift, cautions: [...so, ...said.map(({ code }) => code)] };
              },
              { bottom: 0, cautions: [] as string[] },
            );
            expect(new Set(cautions)).toEqual(new Set(['more-than-the-sheet']));
          }
        },
      ),
      { numRuns: 400 },
    );
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
    const of = { minutes: 40, mass: g(100), at: C(25) };
    expect(potLifeAt([of], { room: C(35), mass: g(100) })).toEqual({
      minutes: 20,
      of,
      cautions: ['warmer-than-the-sheet'],
    });
    expect(potLifeAt([of], { room: C(45), mass: g(100) })?.minutes).toBe(10);
    expect(potLifeAt([of], { room: C(15), mass: g(900) })).toEqual({
      minutes: 40,
      of,
      cautions: ['more-than-the-sheet'],
    });
    expect(potLifeAt([], { room: C(15), mass: g(900) })).toBeUndefined();
  });

  const rows = [
    { minutes: 25, mass: g(1000), at: C(23) },
    { minutes: 40, mass: g(100), at: C(23) },
    { minutes: 30, mass: g(100), at: C(30) },
  ];

  it.each([
    [100, 23, 40, []],
    [101, 23, 25, []],
    [1000, 20, 25, []],
    [1001, 23, 25, ['more-than-the-sheet']],
    [100, 28, 30, []],
    // Past every row of its mass, from the warmest of them: ten degrees halve it.
    [100, 40, 15, ['warmer-than-the-sheet']],
    [600, 33, 12, ['warmer-than-the-sheet']],
  ] as const)(
    'of %i g in %i °C goes by the row of a mass not below it: %i minutes',
    (mass, room, minutes, cautions) => {
      expect(potLifeAt(rows, { room: C(room), mass: g(mass) })).toMatchObject({ minutes, cautions });
    },
  );

  it('bounds a batch by what can be handled of each mass that was measured', () => {
    const ask = { room: C(23), bucket: g(800), minutesPerKilogram: 5 };
    // 25 minutes at 5 a kilogram are 5 kg: the bucket is less.
    expect(mostMixed(rows, ask)).toBe(g(800));
    // At 50 a kilogram they are 500 g, more than the 100 g that keep 40 minutes.
    expect(mostMixed(rows, { ...ask, minutesPerKilogram: 50 })).toBe(g(500));
    expect(mostMixed(rows, { ...ask, minutesPerKilogram: 500 })).toBe(g(80));
    // Beyond 1 kg nothing was measured: the minutes of 1 kg are the most there can be.
    expect(mostMixed(rows, { ...ask, bucket: g(9000) })).toBe(g(5000));
    expect(mostMixed(undefined, ask)).toBe(g(800));
    expect(mostMixed([{ minutes: 30, mass: g(10_000), at: C(23) }], { ...ask, bucket: g(20_000) })).toBe(g(6000));
  });
});

describe('a lift that is poured on', () => {
  const at = Date.parse('2026-11-25T15:00:00Z');
  const window = { at, againFromHours: 12, againToHours: 24 };
  const later = (hours: number) => at + hours * 3_600_000;

  it.each([
    [0, 'too-early', 0],
    [11.99, 'too-early', 11.9],
    [12, 'while-tacky', 12],
    [24, 'while-tacky', 24],
    [24.01, 'sand-first', 24.1],
    [-3, 'too-early', 0],
  ] as const)('after %d hours of a window from 12 to 24: %s', (hours, joins, said) => {
    expect(joinAt(window, later(hours))).toEqual({ joins, hours: said });
  });

  it('is sanded where the sheet names no end, and never too early where it names no beginning', () => {
    expect(joinAt({ at, againFromHours: 12 }, later(13)).joins).toBe('sand-first');
    expect(joinAt({ at, againToHours: 6 }, later(0)).joins).toBe('while-tacky');
    expect(joinAt({ at }, later(1)).joins).toBe('sand-first');
  });
});

describe('what was weighed of what was planned', () => {
  it('is near within the tolerance, or a step of the scale where that is more', () => {
    const by = { toleranceTenths: 20, step: g(1) };
    expect([1081, 1082, 1126, 1127].map((grams) => isNearTarget(g(grams), g(1104), by))).toEqual([
      false,
      true,
      true,
      false,
    ]);
    expect(isNearTarget(g(9), g(10), by)).toBe(true);
    expect(isNearTarget(g(1), g(1104), { step: g(1) })).toBe(false);
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

  it('hold no more lifts than can be waited for within a working day of 8 hours', () => {
    const quick = (againFromHours: number) =>
      unwrap(schedulePour(4, day('2026-11-23'), { againFromHours, againToHours: 12 }, () => false)).lifts;
    expect(quick(6)).toEqual([
      { on: '2026-11-23', joins: 'first' },
      { on: '2026-11-23', joins: 'while-tacky' },
      { on: '2026-11-24', joins: 'sand-first' },
      { on: '2026-11-24', joins: 'while-tacky' },
    ]);
    expect(quick(4).map(({ on }) => on.slice(-2))).toEqual(['23', '23', '23', '24']);
    expect(quick(2).map(({ on }) => on.slice(-2))).toEqual(['23', '23', '23', '23']);
  });

  it('are refused where the shop never opens', () => {
    expect(schedulePour(1, day('2026-11-25'), timing, () => true)).toEqual({
      ok: false,
      error: { code: 'no-open-day' },
    });
    expect(schedulePour(0, day('2026-11-25'), timing, weekend)).toEqual({ ok: false, error: { code: 'no-lifts' } });
  });
});
