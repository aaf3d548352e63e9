import { describe, expect, it } from 'vitest';
import { parseCalendarDate } from '@/shared/calendar/calendar-date';
import { massRatio } from '@/shared/pour/check-ratio';
import { potLifeAt } from '@/shared/pour/pot-life-at';
import { schedulePour } from '@/shared/pour/schedule-pour';
import { sectionVolume } from '@/shared/pour/section-volume';
import { solidVolume } from '@/shared/pour/solid';
import { measureVoid } from '@/shared/pour/void-volume';
import { unwrap } from '@/shared/result/result';
import { gramsPerLitre } from '@/shared/units/density';
import { massToVolume } from '@/shared/units/mass-to-volume';
import { nanometres } from '@/shared/units/nanometres';
import { parseQuantity } from '@/shared/units/parse-quantity';
import { microlitres, milligrams } from '@/shared/units/stock-unit';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';

const inch = (length: number) => nanometres(Math.round(length * 25_400_000));
const mm = (length: number) => nanometres(Math.round(length * 1e6));
const read = (text: string, unit: 'mg' | 'uL') => Number(unwrap(parseQuantity(text, { unit, prefer: 'imperial' })));

describe('conversions of mass and volume (NIST Handbook 44, Appendix C, and NIST SP 811, Appendix B; exact by definition, from memory)', () => {
  it.each([
    // 1 lb = 0.453 592 37 kg exactly; an ounce is a sixteenth of it.
    ['1 lb', 'mg', 453_592.37],
    ['1 oz', 'mg', 28_349.523_125],
    ['10 lb', 'mg', 4_535_923.7],
    // 1 US gallon = 231 cubic inches = 3.785 411 784 L exactly; a quart a fourth, a pint an eighth of it.
    ['1 gal', 'uL', 3_785_411.784],
    ['1 qt', 'uL', 946_352.946],
    ['1 pt', 'uL', 473_176.473],
    // 1 US fluid ounce = 29.573 529 562 5 mL exactly.
    ['1 fl oz', 'uL', 29_573.529_562_5],
  ] as const)('%s, to the nearest small unit', (text, unit, exact) => {
    expect(read(text, unit)).toBe(Math.round(exact));
  });

  it('1 lb/gal (US) is 119.826 4 kg/m³: a gallon of resin of that many times ten weighs ten pounds (SP 811, B.8)', () => {
    const density = unwrap(gramsPerLitre(Math.round(1198.264)));
    const gallon = massToVolume(milligrams(4_535_924), density).amount;
    // The book keeps whole grams a litre, so it holds to three parts in ten thousand.
    expect(gallon / 3_785_411.784).toBeCloseTo(1, 3);
  });

  it('1 in³ is 16.387 064 cm³ and 1 ft³ 0.028 316 846 592 m³, exactly (SP 811, B.8): boxes of that size', () => {
    const box = (side: number) =>
      unwrap(solidVolume({ shape: 'box', length: inch(side), width: inch(side), depth: inch(side) }));
    expect(box(1)).toBe(Math.round(16_387.064));
    expect(box(12)).toBe(Math.round(28_316_846.592));
  });
});

describe('volumes by the prismoidal formula', () => {
  it('of a sphere is exact, 4/3 π r³: ends of nothing and a middle of π r² (Newton; CRC mensuration formulas, from memory)', () => {
    const r = 60;
    const sections = [0, r, 2 * r].map((at) => ({ at: mm(at), area: Math.PI * (r * r - (at - r) ** 2) }));
    expect(unwrap(sectionVolume(sections)).volume).toBe(Math.round((4 / 3) * Math.PI * r ** 3));
  });

  it('of a square frustum of 4 and 2 on a height of 6 is 56 (Moscow papyrus, problem 14)', () => {
    const frustum = {
      shape: 'sloped-tray' as const,
      topLength: mm(40),
      topWidth: mm(40),
      bottomLength: mm(20),
      bottomWidth: mm(20),
      depth: mm(60),
    };
    expect(unwrap(solidVolume(frustum))).toBe(56_000);
    const filled = unwrap(measureVoid({ from: 'solid', solid: frustum, wood: microlitres(0) }));
    expect(filled.below(mm(60))).toBe(56_000);
    // Below half of it lies the frustum of 2 and 3 on 3: 3/3 (4 + 6 + 9) = 19.
    expect(filled.below(mm(30))).toBe(19_000);
  });

  it('of a river by stations is Simpson’s: widths 0, 3, 4, 3 and 0 at steps of 1 make 10 + 2/3 (a parabola, 2/3 of its box; Archimedes)', () => {
    const widths = [0, 30, 40, 30, 0].map((width, nr) => ({ at: mm(nr * 10), width: mm(width) }));
    const river = unwrap(measureVoid({ from: 'stations', depth: mm(10), widths }));
    expect(river.holds).toBe(Math.round((2 / 3) * 40 * 40 * 10));
  });
});

describe('a river by stations with sloping banks (prismatoid: V = L/6·(first + 4·middle + last); CRC mensuration formulas, from memory)', () => {
  const station = (at: number, top: number, bottom: number, depth: number) => ({
    at: mm(at),
    width: mm(top),
    bottom: mm(bottom),
    depth: mm(depth),
  });
  const river = (...widths: ReturnType<typeof station>[]) =>
    unwrap(measureVoid({ from: 'stations', depth: mm(1), widths }));
  /** Widths and depth that run straight from end to end, integrated slice by slice. */
  const bySlices = (length: number, one: number[], two: number[], level = Number.POSITIVE_INFINITY) => {
    const count = 20_000;
    const deepest = Math.max(one[2] ?? 0, two[2] ?? 0);
    let volume = 0;
    for (let nr = 0; nr < count; nr += 1) {
      const along = (nr + 0.5) / count;
      const [top = 0, bottom = 0, depth = 0] = one.map((value, row) => value + ((two[row] ?? 0) - value) * along);
      const high = Math.max(0, Math.min(depth, level - (deepest - depth)));
      volume += ((high * (bottom + bottom + ((top - bottom) * high) / depth)) / 2) * (length / count);
    }
    return volume;
  };

  it.each([
    [[120, 120, 40], [80, 80, 40], 'straight banks'],
    [[120, 80, 40], [90, 40, 40], 'banks that slope in'],
    [[100, 130, 45], [60, 90, 45], 'banks that slope under'],
    [[120, 80, 50], [90, 40, 30], 'a floor that rises'],
    [[80, 0, 30], [40, 0, 10], 'a groove that runs out'],
  ])('between two is exact, %s', (one, two) => {
    const [a, b, d] = one as [number, number, number];
    const [e, f, h] = two as [number, number, number];
    const exact = bySlices(900, one, two);
    expect(river(station(0, a, b, d), station(900, e, f, h)).holds / exact).toBeCloseTo(1, 6);
    // And the same with a station in the middle, as far along as the others.
    const middle = station(450, (a + e) / 2, (b + f) / 2, (d + h) / 2);
    expect(river(station(0, a, b, d), middle, station(900, e, f, h)).holds / exact).toBeCloseTo(1, 6);
  });

  it('of 1 m that is 100 mm wide at the top, 60 mm at the bottom and 40 mm deep is 3.2 L', () => {
    const sloping = river(station(0, 100, 60, 40), station(1000, 100, 60, 40));
    expect(sloping.holds).toBe(3_200_000);
    // The lower half is 60 to 80 mm wide: 1.4 L of it.
    expect(sloping.below(mm(20))).toBe(1_400_000);
    expect([sloping.below(mm(0)), sloping.below(mm(40)), sloping.below(mm(90))]).toEqual([0, 3_200_000, 3_200_000]);
  });

  it('is level at the top: where it is shallower its floor lies higher, and lifts fill the deep end first', () => {
    const ends = [station(0, 100, 60, 50), station(500, 90, 55, 40), station(1000, 80, 50, 30)];
    const sloping = river(...ends);
    expect(sloping.depth).toBe(mm(50));
    expect(sloping.below(mm(50))).toBe(sloping.holds);
    // Above the highest floor the slices say it exactly.
    const upper = sloping.holds - sloping.below(mm(30));
    const exact = bySlices(1000, [100, 60, 50], [80, 50, 30]) - bySlices(1000, [100, 60, 50], [80, 50, 30], 30);
    expect(upper / exact).toBeCloseTo(1, 3);
  });

  it('takes one depth for every station that says none of its own', () => {
    const widths = [
      { at: mm(0), width: mm(100) },
      { at: mm(1000), width: mm(100), bottom: mm(50), depth: mm(20) },
    ];
    const mixed = unwrap(measureVoid({ from: 'stations', depth: mm(40), widths }));
    expect([mixed.depth, mixed.holds]).toEqual([mm(40), Math.round(bySlices(1000, [100, 100, 40], [100, 50, 20]))]);
  });
});

describe('pot life by temperature (rule of thumb printed by several makers, a rate doubled per 10 °C; common practice)', () => {
  it.each([
    [25, 10],
    [35, 5],
    [45, 2],
  ])('ten minutes at 25 °C: at %i °C %i whole minutes', (degrees, minutes) => {
    const sheet = { minutes: 10, mass: milligrams(100_000), at: tenthsCelsius(250) };
    const here = potLifeAt([sheet], { room: tenthsCelsius(degrees * 10), mass: milligrams(100_000) });
    expect(here?.minutes).toBe(minutes);
  });

  it('halves per 18 °F as well, which is the same step', () => {
    const sheet = { minutes: 40, mass: milligrams(100_000), at: tenthsCelsius(222) };
    const warmer = tenthsCelsius(222 + 100);
    expect(potLifeAt([sheet], { room: warmer, mass: milligrams(100_000) })?.minutes).toBe(20);
  });

  it('is stated with the mass it was measured with, and a larger one is cautioned, not reckoned (ISO 9514 and ASTM D2471 state the amount and the temperature; by name, from memory)', () => {
    const of = { minutes: 40, mass: milligrams(100_000), at: tenthsCelsius(230) };
    const here = potLifeAt([of], { room: tenthsCelsius(230), mass: milligrams(2_000_000) });
    expect(here).toEqual({ minutes: 40, of, cautions: ['more-than-the-sheet'] });
    const known = [of, { ...of, minutes: 22, mass: milligrams(2_000_000) }];
    expect(potLifeAt(known, { room: tenthsCelsius(230), mass: milligrams(2_000_000) })).toMatchObject({
      minutes: 22,
      cautions: [],
    });
  });
});

describe('what resin is said to do (trade press and makers’ bulletins; common practice)', () => {
  it('2 to 1 by volume can be 100 to 44 by mass, 1 to 1 can be 100 to 83', () => {
    expect(massRatio({ byMass: { a: 100, b: 44 }, byVolume: { a: 2, b: 1 }, densityA: 1130, densityB: 995 }).ok).toBe(
      true,
    );
    expect(massRatio({ byMass: { a: 100, b: 83 }, byVolume: { a: 1, b: 1 }, densityA: 1160, densityB: 963 }).ok).toBe(
      true,
    );
    // Taken for each other they contradict the densities.
    expect(massRatio({ byMass: { a: 2, b: 1 }, byVolume: { a: 1, b: 1 }, densityA: 1160, densityB: 963 }).ok).toBe(
      false,
    );
  });

  it('a gallon covers 12 square feet at an eighth of an inch, and 96 at a sixty-fourth', () => {
    const covers = (feet: number, thick: number) =>
      unwrap(solidVolume({ shape: 'box', length: inch(feet * 12), width: inch(12), depth: inch(thick) }));
    // 12 ft² × 1/8 in is 216 in³, 94 % of the 231 in a gallon: what is said is rounded down.
    expect(covers(12, 1 / 8) / 3_785_411.784).toBeCloseTo(216 / 231, 6);
    expect(covers(96, 1 / 64)).toBe(covers(12, 1 / 8));
  });

  it('a millimetre on a square metre is a litre', () => {
    expect(unwrap(solidVolume({ shape: 'box', length: mm(1000), width: mm(1000), depth: mm(1) }))).toBe(1_000_000);
  });

  it('one that is poured again from 12 to 24 hours is poured day after day while tacky, and sanded after a day off', () => {
    const day = (text: string) => unwrap(parseCalendarDate(text));
    const times = { againFromHours: 12, againToHours: 24 };
    const lifts = (closed: string) =>
      unwrap(schedulePour(2, day('2026-12-01'), times, (on) => on === closed)).lifts.map(({ joins }) => joins);
    expect(lifts('')).toEqual(['first', 'while-tacky']);
    expect(lifts('2026-12-02')).toEqual(['first', 'sand-first']);
  });
});
