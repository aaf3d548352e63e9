import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { twiceRingArea } from '@/shared/outline/ring-area';
import { thickLine } from '@/shared/outline/thick-line';

const at = (x: number, y: number) => ({ x, y });

describe('a crack', () => {
  it('along a straight line is a rectangle as wide as the crack', () => {
    expect(thickLine([at(0, 0), at(1000, 0)], 100)).toEqual([at(0, -50), at(1000, -50), at(1000, 50), at(0, 50)]);
  });

  it('round a right angle is mitred: its area is its width by the length of its middle line', () => {
    const ring = thickLine([at(0, 0), at(10_000, 0), at(10_000, 10_000)], 1000) ?? [];
    expect(ring).toContainEqual(at(10_500, -500));
    expect(Number(twiceRingArea(ring)) / 2).toBe(20_000 * 1000);
  });

  it('needs two different points and a width', () => {
    expect(thickLine([at(5, 5), at(5, 5)], 100)).toBeUndefined();
    expect(thickLine([at(0, 0), at(5, 5)], 0)).toBeUndefined();
  });

  it('runs counter-clockwise, whatever way a straight one is drawn', () => {
    const place = fc.integer({ min: -1_000_000, max: 1_000_000 });
    fc.assert(
      fc.property(place, place, place, place, (a, b, c, d) => {
        fc.pre(Math.hypot(a - c, b - d) > 100);
        const ring = thickLine([at(a, b), at(c, d)], 5000) ?? [];
        return twiceRingArea(ring) > 0n;
      }),
    );
  });
});
