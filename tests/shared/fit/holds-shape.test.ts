import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawnShape, WHOLE } from '@/shared/fit/drawn-shape';
import { holdsShape, marginOf } from '@/shared/fit/holds-shape';
import { topArea } from '@/shared/fit/top-area';
import type { HalfSizes } from '@/shared/fit/top-shape';
import type { Region } from '@/shared/outline/effective-region';
import type { Ring } from '@/shared/outline/outline';
import { outlineFromPoints } from '@/shared/outline/outline-from-points';
import { unwrap } from '@/shared/result/result';

const ring = (...points: readonly (readonly [number, number])[]): Ring =>
  points.map(([x, y]) => ({ x: x * 1000, y: y * 1000 }));
const regionOf = (edge: Ring, more: Partial<Region> = {}, gaps: readonly Ring[] = []): Region => ({
  outline: unwrap(outlineFromPoints({ edge, gaps })),
  clearance: 0,
  keepOut: [],
  ...more,
});
const square = ring([-100, -100], [100, -100], [100, 100], [-100, 100]);
const box = (a: number, b: number, r = 0): HalfSizes => ({ a: a * 1000, b: b * 1000, curve: 'corners', r: r * 1000 });
const round = (r: number): HalfSizes => ({ a: r * 1000, b: r * 1000, curve: 'power', n: 2 });
const at = (x: number, y: number, angle = 0) => ({ x: x * 1000, y: y * 1000, angle });

describe('whether a shape lies in the wood, judged afresh', () => {
  it('agrees to what just fits and refuses what is over by a hundredth of a millimetre', () => {
    expect(holdsShape(regionOf(square), box(100, 100), WHOLE, at(0, 0))).toBe(true);
    expect(holdsShape(regionOf(square), box(100, 100), WHOLE, at(0.01, 0))).toBe(false);
    expect(holdsShape(regionOf(square), box(100, 50), WHOLE, at(0, 0, 0.001))).toBe(false);
  });

  it('refuses a round that bulges between the corners of the wood it passes through', () => {
    const r = 100 * Math.SQRT2;
    expect(holdsShape(regionOf(square), round(r), WHOLE, at(0, 0))).toBe(false);
    expect(holdsShape(regionOf(square), round(r * 0.9), WHOLE, at(0, 0))).toBe(false);
    expect(holdsShape(regionOf(square), round(99.9), WHOLE, at(0, 0))).toBe(true);
  });

  it('refuses a shape round the wood, beside it, round a gap, in a gap, round a keep-out and in one', () => {
    const small = ring([-5, -5], [5, -5], [5, 5], [-5, 5]);
    expect(holdsShape(regionOf(small), box(50, 50), WHOLE, at(0, 0))).toBe(false);
    expect(holdsShape(regionOf(small), box(2, 2), WHOLE, at(50, 0))).toBe(false);
    expect(holdsShape(regionOf(square, {}, [small]), box(50, 50), WHOLE, at(0, 0))).toBe(false);
    expect(holdsShape(regionOf(square, {}, [small]), box(2, 2), WHOLE, at(0, 0))).toBe(false);
    for (const place of [
      { shape: 'polygon', ring: small },
      { shape: 'circle', centre: { x: 0, y: 0 }, radius: 6000 },
    ] as const) {
      expect(holdsShape(regionOf(square, { keepOut: [place] }), box(50, 50), WHOLE, at(0, 0))).toBe(false);
      expect(holdsShape(regionOf(square, { keepOut: [place] }), box(2, 2), WHOLE, at(0, 0))).toBe(false);
      expect(holdsShape(regionOf(square, { keepOut: [place] }), box(20, 20), WHOLE, at(50, 0))).toBe(true);
    }
  });

  it('keeps the clearance from edges, and only the trim at a trimmed end', () => {
    const region = regionOf(square, { clearance: 10_000, from: -80_000 });
    expect(holdsShape(region, box(50, 50), WHOLE, at(-30, 0))).toBe(true);
    expect(holdsShape(region, box(50, 50), WHOLE, at(-30.1, 0))).toBe(false);
    expect(holdsShape(region, box(50, 50), WHOLE, at(40, 0))).toBe(true);
    expect(holdsShape(region, box(50, 50), WHOLE, at(40.1, 0))).toBe(false);
  });

  it('names the tightest place', () => {
    const notched = regionOf(ring([-100, -100], [100, -100], [100, 100], [10, 100], [0, 60], [-10, 100], [-100, 100]));
    const { spare, at: where } = marginOf(notched, box(80, 50), WHOLE, at(0, 0));
    expect(spare / 1000).toBeCloseTo(10, 6);
    expect(where.x / 1000).toBeCloseTo(0, 0);
  });
});

describe('the drawn edge of a shape', () => {
  const sizes: fc.Arbitrary<HalfSizes> = fc
    .record({
      a: fc.integer({ min: 50, max: 1200 }),
      b: fc.integer({ min: 50, max: 600 }),
      n: fc.double({ min: 1.5, max: 20, noNaN: true }),
      part: fc.double({ min: 0, max: 1, noNaN: true }),
      corners: fc.boolean(),
    })
    .map(({ a, b, n, part, corners }) =>
      corners ? box(a, b, Math.min(a, b) * part) : { ...round(1), a: a * 1000, b: b * 1000, n },
    );

  it('encloses the area of the formula', () => {
    fc.assert(
      fc.property(sizes, fc.double({ min: -1, max: 1, noNaN: true }), (of, angle) => {
        const edge = drawnShape(of, WHOLE, { x: 1e6, y: -1e6, angle });
        let twice = 0;
        edge.forEach((p, nr) => {
          const q = edge[(nr + 1) % edge.length] ?? p;
          twice += (p.x - 1e6) * (q.y + 1e6) - (q.x - 1e6) * (p.y + 1e6);
        });
        expect(twice / 2 / topArea(of)).toBeCloseTo(1, 3);
      }),
    );
  });

  it('of a half, and of its other half turned over, is the whole', () => {
    fc.assert(
      fc.property(sizes, (of) => {
        const area = (over: boolean) => {
          const edge = drawnShape(of, { part: 'above', from: 0, over }, at(0, 0));
          return edge.reduce((sum, p, nr) => {
            const q = edge[(nr + 1) % edge.length] ?? p;
            return sum + (p.x * q.y - q.x * p.y) / 2;
          }, 0);
        };
        expect((area(false) + area(true)) / topArea(of)).toBeCloseTo(1, 3);
      }),
    );
  });
});
