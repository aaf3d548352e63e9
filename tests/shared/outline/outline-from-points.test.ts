import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findCrossing } from '@/shared/outline/find-crossing';
import { outlineFromPoints } from '@/shared/outline/outline-from-points';
import { segmentsMeet } from '@/shared/outline/segments-meet';
import { ringOf } from './shapes-of-wood';

const square = ringOf([0, 0], [100, 0], [100, 100], [0, 100]);

describe('an outline from tapped points', () => {
  it('is turned counter-clockwise, its gaps clockwise, whichever way they were tapped', () => {
    const gap = ringOf([10, 10], [20, 10], [20, 20]);
    for (const edge of [square, [...square].reverse()]) {
      for (const hole of [gap, [...gap].reverse()]) {
        const made = outlineFromPoints({ edge, gaps: [hole] });
        expect(made).toMatchObject({ ok: true });
        if (made.ok) expect(new Set(made.value.holes[0])).toEqual(new Set(gap));
      }
    }
  });

  it.each([
    [
      'a bow-tie',
      { edge: ringOf([0, 0], [4, 4], [4, 0], [0, 4]) },
      { code: 'sides-cross', point: 0, other: { point: 2 } },
    ],
    ['two points', { edge: ringOf([0, 0], [4, 4]) }, { code: 'too-few-points', point: 1 }],
    ['a point twice in a row', { edge: ringOf([0, 0], [4, 0], [4, 0], [0, 4]) }, { code: 'repeated-point', point: 2 }],
    [
      'the first point again at the end',
      { edge: ringOf([0, 0], [4, 0], [0, 4], [0, 0]) },
      { code: 'repeated-point', point: 3 },
    ],
    [
      'a point on another side',
      { edge: ringOf([0, 0], [4, 0], [4, 4], [2, 0], [0, 4]) },
      { code: 'sides-cross', point: 0 },
    ],
    ['a spike that folds back', { edge: ringOf([0, 0], [4, 0], [8, 0], [6, 0], [0, 4]) }, { code: 'sides-cross' }],
    ['a line', { edge: ringOf([0, 0], [4, 0], [8, 0]) }, { code: 'sides-cross' }],
    ['half a micrometre', { edge: [...square, { x: 0.5, y: 50_000 }] }, { code: 'out-of-range', point: 4 }],
    ['no number', { edge: [...square, { x: Number.NaN, y: 0 }] }, { code: 'out-of-range', point: 4 }],
    ['a gap outside', { edge: square, gaps: [ringOf([200, 0], [210, 0], [210, 10])] }, { code: 'gap-outside', gap: 0 }],
    [
      'a gap across the edge',
      { edge: square, gaps: [ringOf([90, 10], [110, 10], [110, 20])] },
      { code: 'sides-cross', point: 1, other: { gap: 0 } },
    ],
    [
      'a gap in a gap',
      { edge: square, gaps: [ringOf([10, 10], [90, 10], [90, 90], [10, 90]), ringOf([40, 40], [60, 40], [60, 60])] },
      { code: 'gap-in-gap', gap: 1, other: { gap: 0 } },
    ],
  ])('refuses %s, naming the point', (_, entered, fault) => {
    const made = outlineFromPoints(entered);
    expect(made).toMatchObject({ ok: false, error: fault });
    expect(made.ok ? undefined : made.error.entered).toBe(entered);
  });

  it('finds a crossing exactly when two sides that are no neighbours meet, on any ring', () => {
    const point = fc.record({ x: fc.integer({ min: 0, max: 12 }), y: fc.integer({ min: 0, max: 12 }) });
    fc.assert(
      fc.property(
        fc.uniqueArray(point, { minLength: 4, maxLength: 9, selector: ({ x, y }) => `${x} ${y}` }),
        (ring) => {
          let meets = false;
          ring.forEach((a, i) => {
            const b = ring[(i + 1) % ring.length] ?? a;
            ring.forEach((c, j) => {
              const d = ring[(j + 1) % ring.length] ?? c;
              const apart = Math.min(Math.abs(i - j), ring.length - Math.abs(i - j));
              if (apart >= 2) meets ||= segmentsMeet(a, b, c, d);
              // Neighbours meet wrongly when one's far end lies on the other.
              if (apart === 1 && j === (i + 1) % ring.length)
                meets ||= segmentsMeet(a, b, d, d) || segmentsMeet(c, d, a, a);
            });
          });
          expect(findCrossing([ring]) !== undefined).toBe(meets);
        },
      ),
      { numRuns: 1500 },
    );
  });
});
