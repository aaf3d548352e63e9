import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays } from '@/shared/calendar/add-days';
import { parseCalendarDate } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';
import { ANY_WOOD, airDryingDays } from '@/shared/wood/air-drying-days';
import { ALL_SPECIES } from '@/shared/wood/all-species';
import { readingDeviation } from '@/shared/wood/drying-belief';
import { dryingCurve } from '@/shared/wood/drying-curve';
import { dryingPrior } from '@/shared/wood/drying-prior';
import { type DryingAsked, forecastDrying } from '@/shared/wood/forecast-drying';
import { oneMoreReading } from '@/shared/wood/one-more-reading';
import { quantilesOf } from '@/shared/wood/quantiles-of';
import { sayDryingRefusal } from '@/shared/wood/say-drying-refusal';

const day = unwrap(parseCalendarDate('2026-01-05'));
const points = (...figures: readonly (readonly [number, number])[]) =>
  figures.map(([days, mcTenths]) => ({ on: addDays(day, days), mcTenths }));
const cherry: DryingAsked = {
  points: points([0, 300]),
  targetTenths: 100,
  emc: 7,
  speciesId: 'black-cherry',
  thickness: nanometres(25_400_000),
};
const forecast = (asked: DryingAsked) => unwrap(forecastDrying(asked)).value;

describe('drying forecast', () => {
  it('refuses to forecast from nothing, and says what a reading would do', () => {
    const refused = forecastDrying({ ...cherry, points: [] });
    expect(refused).toEqual({ ok: false, error: { code: 'no-readings', wanted: 1 } });
    if (!refused.ok) expect(sayDryingRefusal(refused.error).todo).toMatch(/two weeks/);
  });

  it('without a thickness wants three days of readings', () => {
    const blind = { ...cherry, thickness: null };
    expect(forecastDrying(blind)).toEqual({ ok: false, error: { code: 'no-thickness', wanted: 2 } });
    expect(forecastDrying({ ...blind, points: points([0, 300], [30, 220], [60, 168]) }).ok).toBe(true);
    expect(sayDryingRefusal({ code: 'no-thickness', wanted: 1 }).todo).toMatch(/one more day/);
  });

  it('refuses a room that settles at or above the target, and a target out of range', () => {
    const damp = forecastDrying({ ...cherry, emc: 10 });
    expect(damp).toEqual({ ok: false, error: { code: 'room-too-damp', emc: 10, target: 10 } });
    for (const targetTenths of [29, 301]) {
      const refused = forecastDrying({ ...cherry, targetTenths });
      expect(refused).toMatchObject({ ok: false, error: { code: 'target-out-of-range' } });
      if (!refused.ok) expect(sayDryingRefusal(refused.error).says).toMatch(/3 and 30 %/);
    }
  });

  it('one reading gives a wide date; readings along a curve narrow it around the true one', () => {
    const first = forecast(cherry).days;
    expect(first.likely).toBe(118);
    // 7 + 23 e^(−0.015 t), to the nearest tenth: reaches 10 % after 136 days, 76 after the last reading.
    const read = forecast({ ...cherry, points: points([0, 300], [20, 240], [40, 196], [60, 164]) }).days;
    const width = (days: typeof first) => (days.latest ?? Number.NaN) - (days.earliest ?? Number.NaN);
    expect(width(read)).toBeLessThan(width(first) / 3);
    expect(read.earliest).toBeLessThan(76);
    expect(read.latest).toBeGreaterThan(76);
    expect(Math.abs((read.likely ?? 0) - 76)).toBeLessThan(12);
  });

  it('one more reading narrows the interval, and a later one narrows it more', () => {
    const soon = unwrap(oneMoreReading(cherry, 14));
    const late = unwrap(oneMoreReading(cherry, 28));
    expect(soon.on).toBe(addDays(day, 14));
    expect(soon.widthThen).toBeLessThan((soon.widthNow ?? 0) * 0.75);
    expect(late.widthThen).toBeLessThan(soon.widthThen ?? 0);
    expect(oneMoreReading({ ...cherry, points: [] })).toMatchObject({ ok: false, error: { code: 'no-readings' } });
  });

  it('a piece already there is reached on the day of its last reading', () => {
    const there = forecast({ ...cherry, points: points([0, 95], [7, 92], [14, 91]) });
    expect(there.reached).toBe(true);
    expect(there.dates.likely).toBe(addDays(day, 14));
  });

  it('says in how much of its belief the room is too damp ever to get there, and leaves the end open', () => {
    const near = forecast({ ...cherry, emc: 9.6 });
    expect(near.neverShare).toBeGreaterThan(0.1);
    expect(near.dates.latest).toBeNull();
    expect(forecast(cherry).neverShare).toBeLessThan(0.01);
  });

  it('ends are in order, and the same question has the same answer', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 110, max: 600 }),
        fc.integer({ min: 12, max: 100 }),
        fc.constantFrom(null, ...ALL_SPECIES.map(({ id }) => id)),
        (mcTenths, mm, speciesId) => {
          const asked = { ...cherry, points: points([0, mcTenths]), speciesId, thickness: nanometres(mm * 1_000_000) };
          const { days } = forecast(asked);
          expect(days.earliest ?? 1e9).toBeLessThanOrEqual(days.likely ?? 1e9);
          expect(days.likely ?? 1e9).toBeLessThanOrEqual(days.latest ?? 1e9);
          expect(forecast(asked).days).toEqual(days);
        },
      ),
      { numRuns: 25 },
    );
  });

  it('thicker takes longer, wetter takes longer, a drier room is faster', () => {
    const likely = (more: Partial<DryingAsked>) => forecast({ ...cherry, ...more }).days.likely ?? 1e9;
    expect(likely({ thickness: nanometres(50_800_000) })).toBeGreaterThan(2.5 * likely({}));
    expect(likely({ points: points([0, 600]) })).toBeGreaterThan(likely({}));
    expect(likely({ emc: 5 })).toBeLessThan(likely({}));
  });

  // Pieces made by the model with known rates and errors, in equal steps of their own distribution: a check of the
  // arithmetic, not of wood.
  it('the middle 80 % holds the truth about four times out of five', () => {
    const { meanLnRate, deviation } = dryingPrior(cherry.speciesId, nanometres(25_400_000));
    // The middles of eighteen equal slices of a normal.
    const half = [0.0697, 0.2104, 0.3555, 0.5085, 0.6745, 0.8619, 1.0853, 1.383, 1.9145];
    const steps = [...half.map((z) => -z).reverse(), ...half];
    let held = 0;
    let all = 0;
    for (const [at, z] of steps.entries()) {
      for (let turn = 0; turn < steps.length; turn += 2) {
        const rate = Math.exp(meanLnRate + z * deviation);
        const noise = (reading: number) => steps[(at * 7 + turn + reading * 5) % steps.length] ?? 0;
        const read = [0, 14, 28].map((days, reading) => {
          const mc = 7 + 23 * Math.exp(-rate * days);
          return [days, Math.round(10 * (mc + noise(reading) * readingDeviation(mc)))] as const;
        });
        const { days } = forecast({ ...cherry, points: points(...read), emcDeviation: 0.01 });
        const truth = Math.log(23 / 3) / rate - 28;
        all++;
        if ((days.earliest ?? 1e9) <= truth + 1 && truth <= (days.latest ?? 1e9)) held++;
      }
    }
    expect(held / all).toBeGreaterThan(0.74);
    expect(held / all).toBeLessThan(0.86);
  });
});

describe('the forecast as a curve', () => {
  const { cases } = forecast({ ...cherry, points: points([0, 300], [30, 220]) });
  const curve = dryingCurve(cases, addDays(day, 30), 120, 12);

  it('starts near the last reading, falls, and stays above the room', () => {
    expect(curve).toHaveLength(13);
    expect(curve[0]?.on).toBe(addDays(day, 30));
    expect(Math.abs((curve[0]?.middle ?? 0) - 22)).toBeLessThan(1);
    for (const [at, point] of curve.entries()) {
      const before = curve[at - 1];
      if (before) expect(point.middle).toBeLessThan(before.middle);
      expect(point.low).toBeLessThanOrEqual(point.middle);
      expect(point.middle).toBeLessThanOrEqual(point.high);
      expect(point.middle).toBeGreaterThan(7);
    }
  });

  it('its cases share one whole', () => {
    expect(cases.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 6);
  });
});

describe('what is believed before a reading', () => {
  it('is the geometric mean of the published range at 1 in', () => {
    const prior = dryingPrior('sugar-maple', nanometres(25_400_000));
    expect(prior.daysTo20).toBeCloseTo(100, 6);
    expect(prior.source).toBe('air-drying-times');
    expect(() => dryingPrior('sugar-maple', nanometres(0))).toThrow(RangeError);
  });

  it('grows with thickness to the power 1.5, and is less sure away from 1 in', () => {
    const [thin, thick] = [1, 2].map((inches) => dryingPrior('sugar-maple', nanometres(inches * 25_400_000)));
    expect((thick?.daysTo20 ?? 0) / (thin?.daysTo20 ?? 1)).toBeCloseTo(2 ** 1.5, 6);
    expect(thick?.deviation).toBeGreaterThan(thin?.deviation ?? 0);
  });

  it('takes any wood together where the species has no times', () => {
    expect(airDryingDays('monkeypod')).toBe(ANY_WOOD);
    expect(airDryingDays(null)).toBe(ANY_WOOD);
    for (const { id } of ALL_SPECIES) expect(airDryingDays(id).most).toBeGreaterThan(airDryingDays(id).least);
  });

  it('every species with drying times is one the book knows', () => {
    expect(ALL_SPECIES.filter(({ id }) => airDryingDays(id) !== ANY_WOOD).length).toBe(37);
  });
});

describe('weighed quantiles', () => {
  it('are the least value that so much of the weight does not exceed', () => {
    const values = [9, 1, 2].map((value) => ({ value, weight: 1 }));
    expect(quantilesOf(values, [0, 0.5, 1])).toEqual([1, 2, 9]);
    expect(quantilesOf([], [0.5])[0]).toBeNaN();
    expect(quantilesOf([...values, { value: Number.POSITIVE_INFINITY, weight: 7 }], [0.5])[0]).toBe(
      Number.POSITIVE_INFINITY,
    );
  });
});
