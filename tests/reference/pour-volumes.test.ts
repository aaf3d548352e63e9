import { describe, expect, it } from 'vitest';
import { sectionVolume } from '@/shared/pour/section-volume';
import { solidVolume } from '@/shared/pour/solid';
import { unwrap } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';

const mm = (length: number) => nanometres(Math.round(length * 1e6));
const inch = (length: number) => nanometres(Math.round(length * 25_400_000));
/** One cubic foot in microlitres: 0.3048³ m³ (international foot, 1959 agreement). */
const CUBIC_FOOT = 28_316_846.592;

describe('log volumes by sections (University of Missouri forestry formulas: 16 ft, 10 in and 12 in ends)', () => {
  const area = (diameter: number) => (Math.PI / 4) * (diameter * 25.4) ** 2;
  const log = (...diameters: number[]) =>
    unwrap(
      sectionVolume(
        diameters.map((diameter, nr) => ({ at: inch((nr * 16 * 12) / (diameters.length - 1)), area: area(diameter) })),
      ),
    );

  it('by Smalian, the mean of its end areas, 10.647 cubic feet', () => {
    const { volume, rules } = log(10, 12);
    expect(rules).toEqual(['end-areas']);
    expect(volume / CUBIC_FOOT).toBeCloseTo(10.647, 3);
  });

  it('by Newton with a straight taper, 10.588 cubic feet, as the cone frustum has', () => {
    const { volume, rules } = log(10, 11, 12);
    expect(rules).toEqual(['prismoidal']);
    expect(volume / CUBIC_FOOT).toBeCloseTo(10.588, 3);
    const cone = solidVolume({
      shape: 'cone-frustum',
      topDiameter: inch(12),
      bottomDiameter: inch(10),
      depth: inch(16 * 12),
    });
    expect(unwrap(cone) / CUBIC_FOOT).toBeCloseTo(10.588, 3);
  });
});

describe('a strip by Simpson and a trapezoid (surveying worked examples restated in the project notes: d = 4 and d = 25)', () => {
  const strip = (step: number, offsets: number[]) =>
    unwrap(sectionVolume(offsets.map((area, nr) => ({ at: mm(nr * step), area: area * 1000 })))).volume / 1000;

  it('of offsets 1.4, 3, 1.8, 1.7, 1.5, 2.4 and 0 at 4 is 48.533', () => {
    expect(strip(4, [1.4, 3, 1.8, 1.7, 1.5, 2.4, 0])).toBeCloseTo(48.533, 3);
  });

  it('of offsets 19.4 and 39.6 at 25 is 737.5', () => {
    expect(strip(25, [19.4, 39.6])).toBeCloseTo(737.5, 3);
  });
});

describe('solids of elementary geometry (mensuration formulas, from memory)', () => {
  it.each([
    ['a box', { shape: 'box', length: mm(1000), width: mm(100), depth: mm(40) }, 4_000_000],
    ['a cylinder', { shape: 'cylinder', diameter: mm(200), depth: mm(50) }, Math.PI * 100 ** 2 * 50],
    ['an ellipse', { shape: 'ellipse', length: mm(400), width: mm(300), depth: mm(20) }, Math.PI * 200 * 150 * 20],
    [
      'a cone',
      { shape: 'cone-frustum', topDiameter: mm(120), bottomDiameter: mm(0), depth: mm(100) },
      (Math.PI * 60 ** 2 * 100) / 3,
    ],
    [
      'a pyramid on its point',
      {
        shape: 'sloped-tray',
        topLength: mm(300),
        topWidth: mm(300),
        bottomLength: mm(0),
        bottomWidth: mm(0),
        depth: mm(90),
      },
      (300 * 300 * 90) / 3,
    ],
    [
      'a wedge on its line',
      {
        shape: 'sloped-tray',
        topLength: mm(300),
        topWidth: mm(100),
        bottomLength: mm(300),
        bottomWidth: mm(0),
        depth: mm(50),
      },
      (300 * 100 * 50) / 2,
    ],
    ['a V groove', { shape: 'v-groove', length: mm(800), width: mm(30), depth: mm(20) }, (800 * 30 * 20) / 2],
  ] as const)('%s', (_, solid, exact) => {
    expect(unwrap(solidVolume(solid))).toBe(Math.round(exact));
  });

  it('have no measure of nothing, but for a face that may come to a point', () => {
    expect(solidVolume({ shape: 'box', length: mm(0), width: mm(1), depth: mm(1) })).toEqual({
      ok: false,
      error: { code: 'not-above-zero', measure: 'length' },
    });
    expect(sectionVolume([{ at: mm(0), area: 5 }])).toMatchObject({ ok: false, error: { code: 'too-few-sections' } });
    expect(
      sectionVolume([
        { at: mm(5), area: 5 },
        { at: mm(5), area: 5 },
      ]),
    ).toMatchObject({
      ok: false,
      error: { code: 'sections-out-of-order', section: 1 },
    });
  });
});
