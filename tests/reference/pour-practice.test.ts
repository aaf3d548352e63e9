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

describe('pot life by temperature (rule of thumb printed by several makers, a rate doubled per 10 °C; common practice)', () => {
  it.each([
    [25, 10],
    [35, 5],
    [45, 2],
  ])('ten minutes at 25 °C: at %i °C %i whole minutes', (degrees, minutes) => {
    const sheet = { minutes: 10, mass: milligrams(100_000), at: tenthsCelsius(250) };
    const here = potLifeAt(sheet, { room: tenthsCelsius(degrees * 10), mass: milligrams(100_000) });
    expect(here.minutes).toBe(minutes);
  });

  it('halves per 18 °F as well, which is the same step', () => {
    const sheet = { minutes: 40, mass: milligrams(100_000), at: tenthsCelsius(222) };
    const warmer = tenthsCelsius(222 + 100);
    expect(potLifeAt(sheet, { room: warmer, mass: milligrams(100_000) }).minutes).toBe(20);
  });

  it('is quoted for 100 g, and a larger mass is cautioned, not reckoned', () => {
    const sheet = { minutes: 40, mass: milligrams(100_000), at: tenthsCelsius(230) };
    const here = potLifeAt(sheet, { room: tenthsCelsius(230), mass: milligrams(2_000_000) });
    expect(here).toEqual({ minutes: 40, cautions: ['more-than-the-sheet'] });
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
