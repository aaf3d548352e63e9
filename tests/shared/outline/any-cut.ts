import fc from 'fast-check';
import type { CutLine } from '@/shared/outline/cut-line';
import type { Outline } from '@/shared/outline/outline';
import { outlineOf, ringOf } from './shapes-of-wood';

/** A wavy slab: stations with edges of random width on both sides, now and then with a gap in it. */
export const anySlab: fc.Arbitrary<Outline> = fc
  .record({
    widths: fc.array(fc.tuple(fc.integer({ min: 60, max: 400 }), fc.integer({ min: 60, max: 400 })), {
      minLength: 3,
      maxLength: 12,
    }),
    step: fc.integer({ min: 90, max: 400 }),
    gap: fc.boolean(),
  })
  .map(({ widths, step, gap }) => {
    const long = (widths.length - 1) * step;
    const right = widths.map(([, width], nr) => [nr * step, -width + 0.137 * nr] as const);
    const left = widths.map(([width], nr) => [nr * step, width - 0.291 * nr] as const).reverse();
    const hole = ringOf([long / 2 - 20, -25], [long / 2 + 20, -25], [long / 2 + 20, 30], [long / 2 - 20, 30]);
    return outlineOf(ringOf(...right, ...left), ...(gap ? [hole] : []));
  });

/** A place on or beside a slab, millimetres. */
const spot = fc.tuple(fc.integer({ min: -200, max: 4000 }), fc.integer({ min: -450, max: 450 }));
export const anyLine: fc.Arbitrary<CutLine> = fc
  .record({
    points: fc.array(spot, { minLength: 2, maxLength: 4 }),
    kerf: fc.constantFrom(0, 1.6, 3.175, 4),
  })
  .map(({ points, kerf }) => ({
    points: points.map(([x, y]) => ({ x: x * 1000, y: y * 1000 })),
    kerf: Math.round(kerf * 1000),
  }));
