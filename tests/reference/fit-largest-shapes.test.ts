import { describe, expect, it } from 'vitest';
import { fitOnePiece } from '@/shared/fit/fit-one-piece';
import { readRequest } from '@/shared/fit/fit-request';
import type { TopShape } from '@/shared/fit/top-shape';
import { outlineFromPoints } from '@/shared/outline/outline-from-points';
import { unwrap } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';

const mm = (millimetres: number) => nanometres(Math.round(millimetres * 1_000_000));
const answer = (edge: readonly (readonly [number, number])[], shape: TopShape, grainWindow = 0) =>
  fitOnePiece(
    {
      id: 'slab',
      outline: unwrap(
        outlineFromPoints({ edge: edge.map(([x, y]) => ({ x: Math.round(x * 1000), y: Math.round(y * 1000) })) }),
      ),
      defects: [],
      endChecks: [],
    },
    unwrap(
      readRequest({
        shape,
        grainWindow,
        edgeAllowance: mm(0),
        trims: { start: mm(0), end: mm(0) },
        filling: true,
        nearlyFrom: 1,
      }),
    ),
  ).answer;
const rectangle = (length: number, width: number): TopShape => ({
  kind: 'rectangle',
  length: mm(length),
  width: mm(width),
  cornerRadius: mm(0),
});
const polygon = (sides: number, a: number, b: number) =>
  Array.from({ length: sides }, (_, nr) => {
    const angle = (2 * Math.PI * nr) / sides;
    return [a * Math.cos(angle), b * Math.sin(angle)] as const;
  });

// Identities of elementary geometry, no numeric instances having been found in print. Each shape fits with a millimetre
// less than its identity allows and does not with a millimetre more (1.5 mm where the wood is a many-sided polygon).
describe('the largest shape in another, by identities', () => {
  it.each([
    [
      'a rectangle in a triangle on its base has half its area',
      [
        [0, 0],
        [1200, 0],
        [400, 800],
      ],
      (by: number) => rectangle(600 + by, 400 + by),
    ],
    [
      'a square in a circle has twice its radius squared',
      polygon(720, 500, 500),
      (by: number) => rectangle(500 * Math.SQRT2 + by * 1.5, 500 * Math.SQRT2 + by * 1.5),
    ],
    [
      'a rectangle in an ellipse has 2ab',
      polygon(720, 900, 400),
      (by: number) => rectangle(900 * Math.SQRT2 + by * 2, 400 * Math.SQRT2 + by * 2),
    ],
    [
      'a circle in a square has its side',
      [
        [0, 0],
        [700, 0],
        [700, 700],
        [0, 700],
      ],
      (by: number): TopShape => ({ kind: 'round', diameter: mm(700 + by) }),
    ],
    [
      'a circle in a triangle has radius 2 area / perimeter: 100 in 300-400-500',
      [
        [0, 0],
        [400, 0],
        [0, 300],
      ],
      (by: number): TopShape => ({ kind: 'round', diameter: mm(200 + by) }),
    ],
    [
      'a circle in a regular hexagon has √3/2 of its radius',
      polygon(6, 500, 500),
      (by: number): TopShape => ({ kind: 'round', diameter: mm(500 * Math.sqrt(3) + by) }),
    ],
    [
      'an ellipse in a rhombus: a²/p² + b²/q² = 1 for half diagonals p and q',
      [
        [-800, 0],
        [0, -500],
        [800, 0],
        [0, 500],
      ],
      (by: number): TopShape => ({ kind: 'oval', length: mm(2 * 800 * 0.6 + by), width: mm(2 * 500 * 0.8 + by) }),
    ],
    [
      'a superellipse of n in the box of its axes',
      [
        [0, 0],
        [900, 0],
        [900, 500],
        [0, 500],
      ],
      (by: number): TopShape => ({ kind: 'superellipse', length: mm(900 + by), width: mm(500 + by), exponent: 3 }),
    ],
    [
      'a rectangle of 5 × 2 under the histogram 2 1 5 6 2 3',
      [
        [0, 0],
        [600, 0],
        [600, 300],
        [500, 300],
        [500, 200],
        [400, 200],
        [400, 600],
        [300, 600],
        [300, 500],
        [200, 500],
        [200, 100],
        [100, 100],
        [100, 200],
        [0, 200],
      ],
      (by: number) => rectangle(200 + by, 500 + by),
    ],
  ] as const)('%s', (_, edge, shape) => {
    expect(answer(edge, shape(-1))).toBe('yes');
    expect(answer(edge, shape(1))).toBe('no');
  });

  // A rectangle p × q fits in one of a × b, p > a, only when b (p² + q²) ≥ 2pqa + (p² − q²) √(p² + q² − a²)
  // (Carver, solution to a problem of rectangles in rectangles, American Mathematical Monthly 64, 1957; from memory).
  it.each([
    [400, 300, 460, 40],
    [400, 300, 450, 60],
    [400, 350, 430, 120],
  ])('in %d × %d, %d long and about %d wide, askew: Carver’s condition', (a, b, p, least) => {
    const fits = (q: number) =>
      b * (p * p + q * q) >= 2 * p * q * a + (p * p - q * q) * Math.sqrt(p * p + q * q - a * a);
    let [low, high] = [0, b];
    for (let step = 0; step < 60; step += 1) {
      const middle = (low + high) / 2;
      if (fits(middle)) low = middle;
      else high = middle;
    }
    expect(low).toBeGreaterThan(least / 3);
    const box = [
      [0, 0],
      [a, 0],
      [a, b],
      [0, b],
    ] as const;
    expect(answer(box, rectangle(p - 2.1, low - 2.1), 45)).toBe('yes');
    expect(answer(box, rectangle(p, low + 0.2), 45)).toBe('no');
    expect(answer(box, rectangle(p, low - 1), 1)).toBe('no');
  });
});
