import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Outline } from '@/shared/outline/outline';
import { outlineArea, twiceArea } from '@/shared/outline/outline-area';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { outlineCentroid } from '@/shared/outline/outline-centroid';
import { outlineVolume } from '@/shared/outline/outline-volume';
import { placeOfPoint } from '@/shared/outline/place-of-point';
import { usableWidths } from '@/shared/outline/usable-widths';
import { widthAt } from '@/shared/outline/width-at';
import { woodRunsAt } from '@/shared/outline/wood-runs-at';
import { mm, outlineOf, polygonRound, rectangle, ringOf } from './shapes-of-wood';

const fork = outlineOf(ringOf([0, -200], [1000, -200], [1000, -50], [500, 0], [1000, 50], [1000, 200], [0, 200]));

describe('exact shapes', () => {
  it('a rectangle', () => {
    const slab = rectangle(2000, 500);
    expect(outlineArea(slab)).toBe(1_000_000);
    expect(outlineVolume(slab, mm(50))).toBe(50_000_000);
    expect(outlineCentroid(slab)).toEqual({ x: 1_000_000, y: 0 });
    expect(boundsOf(slab.ring)).toEqual({ left: 0, right: 2_000_000, bottom: -250_000, top: 250_000 });
    expect(usableWidths(slab)).toEqual({ narrowest: { width: 500_000, at: 0 }, widest: { width: 500_000, at: 0 } });
  });

  it('a triangle balances at a third of its height', () => {
    const { x, y } = outlineCentroid(outlineOf(ringOf([0, 0], [300, 0], [0, 600])));
    expect(x).toBeCloseTo(100_000, 6);
    expect(y).toBeCloseTo(200_000, 6);
  });

  it('a polygon of many sides comes to the circle round it: n/2 r² sin(2π/n)', () => {
    const outline = outlineOf(polygonRound(360, 500));
    expect(outlineArea(outline)).toBeCloseTo(180 * 500 ** 2 * Math.sin(Math.PI / 180), 0);
  });

  it('a gap is left out of area, centroid and width', () => {
    const slab = outlineOf(
      ringOf([0, 0], [400, 0], [400, 200], [0, 200]),
      ringOf([200, 50], [400 - 1, 50], [400 - 1, 150], [200, 150]),
    );
    expect(outlineArea(slab)).toBe(80_000 - 199 * 100);
    expect(outlineCentroid(slab).x).toBeCloseTo((80_000 * 200_000 - 19_900 * 299_500) / 60_100, 6);
    expect(widthAt(slab, 300_000)).toBe(50_000);
    expect(woodRunsAt(slab, 300_000)).toEqual([
      { from: 0, to: 50_000 },
      { from: 150_000, to: 200_000 },
    ]);
  });

  it('the usable width of a fork is its wider arm, and is narrowest where the arms are equal', () => {
    const uneven = outlineOf(
      ringOf([0, -200], [1000, -200], [1000, -50], [400, 0], [1000, 120], [1000, 200], [0, 200]),
    );
    expect(widthAt(uneven, 1_000_000)).toBe(150_000);
    expect(widthAt(fork, 750_000)).toBe(175_000);
    expect(widthAt(fork, 1_000_001)).toBe(0);
  });

  it('finds the narrowest place between stations, where two arms cross in width', () => {
    // The lower arm narrows from 200 to 100 while the upper widens from 100 to 200: 150 where they are equal.
    const crossing = outlineOf(ringOf([0, 0], [1000, 0], [1000, 100], [0, 200]));
    const two = {
      ring: crossing.ring,
      holes: [],
    } satisfies Outline;
    expect(usableWidths(two)?.narrowest).toEqual({ width: 100_000, at: 1_000_000 });
    const split = outlineOf(
      ringOf([-100, 0], [1100, 0], [1100, 400], [-100, 400]),
      ringOf([0, 200], [1000, 100], [1000, 200], [0, 300]),
    );
    const { narrowest } = usableWidths(split, { from: 0, to: 1_000_000 }) ?? { narrowest: undefined };
    expect(narrowest?.width).toBeCloseTo(150_000, 6);
    expect(narrowest?.at).toBeCloseTo(500_000, 6);
  });
});

const blob = fc
  .tuple(fc.array(fc.integer({ min: 50, max: 900 }), { minLength: 5, maxLength: 24 }), fc.integer({ min: 0, max: 359 }))
  .map(([radii, turn]) =>
    radii.map((radius, nr) => {
      const angle = ((nr / radii.length) * 360 + turn) * (Math.PI / 180);
      return { x: Math.round(radius * 1000 * Math.cos(angle)), y: Math.round(radius * 1000 * Math.sin(angle)) };
    }),
  )
  .map((ring): Outline => ({ ring, holes: [] }));

describe('properties of any outline', () => {
  it('moving it, turning it by a right angle or beginning elsewhere changes no area', () => {
    fc.assert(
      fc.property(blob, fc.integer({ min: -5_000_000, max: 5_000_000 }), fc.nat(23), ({ ring, holes }, by, first) => {
        const area = twiceArea({ ring, holes });
        expect(twiceArea({ ring: ring.map(({ x, y }) => ({ x: x + by, y: y - by })), holes })).toBe(area);
        expect(twiceArea({ ring: ring.map(({ x, y }) => ({ x: -y, y: x })), holes })).toBe(area);
        const at = first % ring.length;
        expect(twiceArea({ ring: [...ring.slice(at), ...ring.slice(0, at)], holes })).toBe(area);
      }),
    );
  });

  it('turning it by any angle changes the area by no more than rounding its points', () => {
    fc.assert(
      fc.property(blob, fc.double({ min: 0, max: Math.PI, noNaN: true }), ({ ring, holes }, angle) => {
        const [c, s] = [Math.cos(angle), Math.sin(angle)];
        const turned = ring.map(({ x, y }) => ({ x: Math.round(x * c - y * s), y: Math.round(x * s + y * c) }));
        const around = ring.reduce((sum, { x, y }) => sum + Math.abs(x) + Math.abs(y), 0);
        expect(Math.abs(twiceArea({ ring: turned, holes }) - twiceArea({ ring, holes }))).toBeLessThan(4 * around);
      }),
    );
  });

  it('the width across, summed along, is the area', () => {
    fc.assert(
      fc.property(blob, (outline) => {
        const { left, right } = boundsOf(outline.ring);
        let sum = 0;
        for (let nr = 0; nr < 2000; nr += 1) {
          const x = left + ((right - left) * (nr + 0.5)) / 2000;
          for (const { from, to } of woodRunsAt(outline, x)) sum += ((to - from) * (right - left)) / 2000;
        }
        expect(sum / (twiceArea(outline) / 2)).toBeCloseTo(1, 2);
      }),
      { numRuns: 40 },
    );
  });

  it('a place in a run is inside the wood, and one beyond it is not', () => {
    fc.assert(
      fc.property(blob, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (outline, part) => {
        const { left, right, top } = boundsOf(outline.ring);
        const x = Math.round(left + (right - left) * part);
        for (const { from, to } of woodRunsAt(outline, x)) {
          if (to - from > 10) expect(placeOfPoint(outline, { x, y: Math.round((from + to) / 2) })).toBe('inside');
        }
        expect(placeOfPoint(outline, { x, y: top + 1 })).toBe('outside');
      }),
    );
  });
});
