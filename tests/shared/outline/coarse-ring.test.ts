import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coarseRing } from '@/shared/outline/coarse-ring';
import { sidesOf } from '@/shared/outline/outline';
import { distanceToSegment } from '@/shared/outline/segment-distance';

const point = (x: number, y: number) => ({ x, y });

describe('a ring drawn coarsely', () => {
  it('leaves out what lies on its sides and keeps its corners', () => {
    const square = [
      point(0, 0),
      point(50, 0),
      point(100, 0),
      point(100, 50),
      point(100, 100),
      point(0, 100),
      point(0, 40),
    ];
    expect(coarseRing(square, 1)).toEqual([point(0, 0), point(100, 0), point(100, 100), point(0, 100)]);
  });

  it('is never farther from any point it leaves out than it is allowed', () => {
    const wavy = fc.array(fc.integer({ min: -8000, max: 8000 }), { minLength: 8, maxLength: 200 });
    fc.assert(
      fc.property(wavy, fc.integer({ min: 0, max: 5000 }), (waves, tolerance) => {
        const ring = waves.map((wave, nr) => {
          const angle = (nr / waves.length) * 2 * Math.PI;
          return point(Math.round(Math.cos(angle) * (300_000 + wave)), Math.round(Math.sin(angle) * (100_000 + wave)));
        });
        const sides = sidesOf(coarseRing(ring, tolerance));
        for (const one of ring) {
          expect(Math.min(...sides.map(([a, b]) => distanceToSegment(one, a, b)))).toBeLessThanOrEqual(
            tolerance + 1e-6,
          );
        }
      }),
    );
  });

  it('stays as it is where there is nothing to leave out', () => {
    const triangle = [point(0, 0), point(10, 0), point(0, 10)];
    expect(coarseRing(triangle, 1000)).toBe(triangle);
    const thin = [point(0, 0), point(50, 1), point(100, 0), point(50, -1)];
    expect(coarseRing(thin, 1000).length).toBeGreaterThanOrEqual(3);
  });
});
