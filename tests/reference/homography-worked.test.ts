import { describe, expect, it } from 'vitest';
import { homographyFrom, straightenPixel } from '@/shared/outline/homography';
import { unwrap } from '@/shared/result/result';

const marks = (...pairs: readonly (readonly [number, number, number, number])[]) =>
  pairs.map(([u, v, x, y]) => ({ pixel: { x: u, y: v }, place: { x, y } }));

// P. Heckbert, Fundamentals of Texture Mapping and Image Warping (1989), section 2.2.3: the unit square to a quadrangle
// (x0 y0) … (x3 y3) has g = det(Σx Δx2; Σy Δy2)/det(Δx1 Δx2; Δy1 Δy2), h likewise, a = x1 - x0 + g·x1, b = x3 - x0 + h·x3,
// c = x0, and so for y. The formula is from memory; the numbers are worked by it here.
describe('the map of the unit square to a quadrangle, in closed form', () => {
  it.each([
    [
      [0, 0],
      [4, 0],
      [3, 2],
      [1, 2],
    ],
    [
      [10, 20],
      [90, 15],
      [110, 95],
      [-5, 70],
    ],
    [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ],
  ] as const)('is the one that is solved for: %j %j %j %j', (p0, p1, p2, p3) => {
    const [dx1, dx2, sx] = [p1[0] - p2[0], p3[0] - p2[0], p0[0] - p1[0] + p2[0] - p3[0]];
    const [dy1, dy2, sy] = [p1[1] - p2[1], p3[1] - p2[1], p0[1] - p1[1] + p2[1] - p3[1]];
    const size = dx1 * dy2 - dx2 * dy1;
    const g = (sx * dy2 - dx2 * sy) / size;
    const h = (dx1 * sy - sx * dy1) / size;
    const map = unwrap(homographyFrom(marks([0, 0, ...p0], [1, 0, ...p1], [1, 1, ...p2], [0, 1, ...p3])));
    for (const [u, v] of [
      [0.5, 0.5],
      [0.25, 0.8],
      [0.9, 0.1],
    ] as const) {
      const w = g * u + h * v + 1;
      const put = straightenPixel(map, { x: u, y: v });
      expect(put?.x).toBeCloseTo(((p1[0] - p0[0] + g * p1[0]) * u + (p3[0] - p0[0] + h * p3[0]) * v + p0[0]) / w, 9);
      expect(put?.y).toBeCloseTo(((p1[1] - p0[1] + g * p1[1]) * u + (p3[1] - p0[1] + h * p3[1]) * v + p0[1]) / w, 9);
    }
  });
});

// Hartley and Zisserman, Multiple View Geometry, 2nd ed. 2004, section 2.1: a projectivity keeps the cross-ratio of four
// points of a line. From memory.
describe('a straightened line', () => {
  it('keeps the cross-ratio of four of its points', () => {
    const map = unwrap(
      homographyFrom(marks([310, 220, 0, 0], [1480, 260, 420, 0], [1390, 1010, 420, 297], [250, 900, 0, 297])),
    );
    const on = [0, 1, 2.5, 6].map((t) => straightenPixel(map, { x: 300 + 140 * t, y: 400 + 60 * t }));
    const far = (i: number, j: number) =>
      Math.hypot((on[i]?.x ?? 0) - (on[j]?.x ?? 0), (on[i]?.y ?? 0) - (on[j]?.y ?? 0));
    expect((far(0, 2) * far(1, 3)) / (far(1, 2) * far(0, 3))).toBeCloseTo((2.5 * 5) / (1.5 * 6), 9);
  });
});
