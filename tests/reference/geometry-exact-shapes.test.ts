import { describe, expect, it } from 'vitest';
import { topArea } from '@/shared/fit/top-area';
import type { Ring } from '@/shared/outline/outline';
import { outlineArea } from '@/shared/outline/outline-area';
import { outlineCentroid } from '@/shared/outline/outline-centroid';
import { outlineFromPoints } from '@/shared/outline/outline-from-points';
import { outlineFromStations } from '@/shared/outline/outline-from-stations';
import { outlineVolume } from '@/shared/outline/outline-volume';
import { unwrap } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';

const mm = (millimetres: number) => nanometres(Math.round(millimetres * 1_000_000));
const outlineOf = (...points: readonly (readonly [number, number])[]) =>
  unwrap(
    outlineFromPoints({ edge: points.map(([x, y]) => ({ x: Math.round(x * 1000), y: Math.round(y * 1000) })) as Ring }),
  );
/** A strip along a straight base, its other edge at these offsets, `apart` from one another. */
const strip = (apart: number, offsets: readonly number[]) =>
  unwrap(
    outlineFromStations({
      stations: offsets.map((offset, nr) => ({ at: mm(nr * apart), left: mm(offset), right: mm(0) })),
    }),
  );

// Worked examples of the shoelace formula in common teaching use: the pentagon (1,6) (3,1) (7,2) (4,4) (8,5) is the one in
// general encyclopedias, area 16.5; (3,4) (5,11) (12,8) (9,5) (5,6) is the other, area 30. Both from memory, both recomputed.
describe('published examples of the shoelace formula', () => {
  it.each([
    [
      16.5,
      [
        [1, 6],
        [3, 1],
        [7, 2],
        [4, 4],
        [8, 5],
      ],
    ],
    [
      30,
      [
        [3, 4],
        [5, 11],
        [12, 8],
        [9, 5],
        [5, 6],
      ],
    ],
  ] as const)('area %d', (area, points) => {
    expect(outlineArea(outlineOf(...points))).toBe(area);
    expect(outlineArea(outlineOf(...[...points].reverse()))).toBe(area);
  });
});

// Offsets of a survey: strips between a chain line and a boundary, as civil engineering texts work them. The trapezoidal
// rule joins offsets by straight lines, as stations are joined here; Simpson's rule puts parabolas through them.
describe('areas from offsets', () => {
  it('the trapezoidal rule: 25 apart, 19.4 and 39.6, gives 737.5 (a printed survey example)', () => {
    expect(outlineArea(strip(25, [19.4, 39.6]))).toBeCloseTo(737.5, 9);
  });

  it('the trapezoidal rule is d (first + last + 2 × the others) / 2', () => {
    const [d, offsets] = [4, [1.4, 3, 1.8, 1.7, 1.5, 2.4, 0]];
    const ends = (offsets[0] ?? 0) + (offsets.at(-1) ?? 0);
    const inner = offsets.slice(1, -1).reduce((sum, offset) => sum + offset, 0);
    expect(outlineArea(strip(d, offsets))).toBeCloseTo((d * (ends + 2 * inner)) / 2, 9);
  });

  it('Simpson’s rule on the same seven offsets is 48.533 (printed), and an outline through its parabolas comes to it', () => {
    const [d, offsets] = [4, [1.4, 3, 1.8, 1.7, 1.5, 2.4, 0]];
    const fine: number[] = [];
    for (let nr = 0; nr + 2 < offsets.length; nr += 2) {
      const [a = 0, b = 0, c = 0] = offsets.slice(nr, nr + 3);
      for (let part = 0; part < 200; part += 1) {
        const t = part / 100;
        fine.push(((t - 1) * (t - 2) * a) / 2 - t * (t - 2) * b + (t * (t - 1) * c) / 2);
      }
    }
    expect(outlineArea(strip(d / 100, [...fine, 0]))).toBeCloseTo(48.533, 2);
  });
});

// Elementary mensuration: formulas exact, in every handbook of geometry.
describe('areas of exact shapes', () => {
  it.each([
    ['a rectangle', { a: 500, b: 250, curve: 'corners', r: 0 }, 500_000],
    [
      'rounded corners take off (4 − π) r²',
      { a: 500, b: 250, curve: 'corners', r: 100 },
      500_000 - (4 - Math.PI) * 10_000,
    ],
    ['a stadium is a box and a circle', { a: 500, b: 250, curve: 'corners', r: 250 }, 500 * 500 + Math.PI * 62_500],
    ['a circle', { a: 500, b: 500, curve: 'power', n: 2 }, Math.PI * 250_000],
    ['an ellipse', { a: 500, b: 250, curve: 'power', n: 2 }, Math.PI * 125_000],
    // ∫ (1 − x⁴)^(1/4) dx from 0 to 1 is Γ(5/4)² / Γ(3/2) = 0.927037…: the squircle, 3.708149… in all (DLMF 5.12.1).
    ['a squircle', { a: 100, b: 100, curve: 'power', n: 4 }, 37_081.4935],
  ] as const)('%s', (_, sizes, area) => {
    expect(topArea(sizes) / area).toBeCloseTo(1, 8);
  });

  it.each([
    [
      'a trapezium: (a + c) h / 2, balanced (a + 2c) / (a + c) × h / 3 from its side a',
      [
        [0, 0],
        [0, 300],
        [600, 200],
        [600, 0],
      ],
      150_000,
      ((300 + 400) / 500) * 200,
    ],
    [
      'a triangle: half its base by its height',
      [
        [0, 0],
        [300, 0],
        [100, 400],
      ],
      60_000,
      400 / 3,
    ],
    [
      'a parallelogram: its base by its height',
      [
        [0, 0],
        [300, 0],
        [400, 200],
        [100, 200],
      ],
      60_000,
      200,
    ],
    [
      'an L: two rectangles',
      [
        [0, 0],
        [400, 0],
        [400, 100],
        [100, 100],
        [100, 300],
        [0, 300],
      ],
      60_000,
      (40_000 * 200 + 20_000 * 50) / 60_000,
    ],
    [
      'a kite: half the product of its diagonals',
      [
        [0, 0],
        [100, -100],
        [400, 0],
        [100, 100],
      ],
      40_000,
      500 / 3,
    ],
  ] as const)('%s', (_, points, area, balance) => {
    const outline = outlineOf(...points);
    expect(outlineArea(outline)).toBe(area);
    expect(outlineCentroid(outline).x / 1000).toBeCloseTo(balance, 6);
    expect(outlineVolume(outline, mm(50))).toBe(area * 50);
  });

  it.each([3, 4, 5, 6, 8, 12, 24, 60, 180])('a regular polygon of %d sides: n/2 r² sin(2π/n)', (sides) => {
    const outline = outlineOf(
      ...Array.from({ length: sides }, (_, nr) => {
        const angle = (2 * Math.PI * nr) / sides;
        return [800 * Math.cos(angle), 800 * Math.sin(angle)] as const;
      }),
    );
    expect(outlineArea(outline) / ((sides / 2) * 640_000 * Math.sin((2 * Math.PI) / sides))).toBeCloseTo(1, 5);
  });
});
