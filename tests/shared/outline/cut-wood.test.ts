import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CutLine } from '@/shared/outline/cut-line';
import { cutWood } from '@/shared/outline/cut-wood';
import { findCrossing } from '@/shared/outline/find-crossing';
import { ringsOf } from '@/shared/outline/outline';
import { outlineArea, twiceArea } from '@/shared/outline/outline-area';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { shareCost, shareWood } from '@/shared/outline/share-wood';
import { unwrap } from '@/shared/result/result';
import { minorUnits } from '@/shared/units/minor-units';
import { anyLine, anySlab } from './any-cut';
import { outlineOf, rectangle, ringOf } from './shapes-of-wood';

const at = (x: number, y: number) => ({ x: Math.round(x * 1000), y: Math.round(y * 1000) });
const through = (kerf: number, ...points: [number, number][]): CutLine => ({
  points: points.map(([x, y]) => at(x, y)),
  kerf: kerf * 1000,
});
const across = (x: number, kerf = 4) => through(kerf, [x, 0], [x, 10]);
const areas = (cut: ReturnType<typeof cutWood>) => unwrap(cut).map(outlineArea);

describe('cutting wood along lines', () => {
  it('takes half the kerf to either side, and the pieces lie where they lay', () => {
    const cut = unwrap(cutWood(rectangle(2000, 500), [across(800)]));
    expect(cut.map(outlineArea)).toEqual([798 * 500, 1198 * 500]);
    expect(cut.map(({ ring }) => boundsOf(ring).left)).toEqual([0, 802_000]);
  });

  it('runs a short line on to the edges, and a bent one round its corners', () => {
    // Drawn from 100 mm left to 90 mm right of the chalk line, with a corner 100 mm out.
    const bent = cutWood(rectangle(2000, 500), [through(0, [800, -100], [900, 0], [780, 100])]);
    // By hand: to the left of the line lie 900 × 500 less two triangles of 250 mm, 1 : 1 and 1.2 : 1.
    expect(areas(bent)[0]).toBeCloseTo(900 * 500 - (250 * 250) / 2 - (250 * 300) / 2, 3);
  });

  it('takes nothing where the wood breaks', () => {
    const slab = rectangle(2000, 500);
    const parts = unwrap(cutWood(slab, [across(800, 0)]));
    expect(shareWood(slab, parts, false)).toEqual({
      parts: [2 * 800_000 * 500_000, 2 * 1_200_000 * 500_000],
      sawdust: 0,
    });
  });

  it('goes through one piece alone where it is told to', () => {
    const rip = { ...through(3, [0, 0], [10, 0]), within: at(100, 100) };
    const cut = unwrap(cutWood(rectangle(2000, 500), [across(800), rip]));
    expect(cut.map(outlineArea)).toEqual([798 * 248.5, 798 * 248.5, 1198 * 500]);
    // Of two that begin at one place the left comes first.
    expect(cut.map(({ ring }) => boundsOf(ring).top > 0)).toEqual([true, false, true]);
  });

  it('cuts a fork into its arms, and opens a gap that it runs through', () => {
    const fork = outlineOf(ringOf([0, -200], [1000, -200], [1000, -50], [500, 0], [1000, 50], [1000, 200], [0, 200]));
    expect(unwrap(cutWood(fork, [across(750)]))).toHaveLength(3);
    const gap = (x: number) => ringOf([x, -50], [x + 100, -50], [x + 100, 50], [x, 50]);
    const slab = outlineOf(ringOf([0, -250], [2000, -250], [2000, 250], [0, 250]), gap(450), gap(1500));
    expect(unwrap(cutWood(slab, [across(500)])).map(({ holes }) => holes.length)).toEqual([0, 1]);
  });

  it('drops what is smaller than a square centimetre', () => {
    const slab = rectangle(2000, 500);
    // Half a kerf short of the end: 0.1 mm of wood are left beyond it.
    const [piece, ...others] = unwrap(cutWood(slab, [across(1997.9)]));
    expect(others).toEqual([]);
    expect(piece && outlineArea(piece)).toBe(1995.9 * 500);
  });

  it('refuses, naming the line, what has no direction, meets itself, or misses the wood', () => {
    const slab = rectangle(2000, 500);
    const refused = (...lines: CutLine[]) => cutWood(slab, lines);
    expect(refused(across(500), through(4, [700, 0], [700, 0]))).toMatchObject({
      error: { code: 'line-has-no-direction', line: 1 },
    });
    expect(refused(across(2100))).toMatchObject({ error: { code: 'line-misses-the-wood', line: 0 } });
    expect(refused(across(0, 0))).toMatchObject({ error: { code: 'line-misses-the-wood', line: 0 } });
    const loop = through(4, [500, -100], [900, 100], [500, 100], [900, -100]);
    expect(refused(loop)).toMatchObject({ error: { code: 'line-crosses-itself', line: 0 } });
    expect(refused(through(2 * 2000, [1000, 0], [1000, 10]))).toMatchObject({ error: { code: 'nothing-is-left' } });
  });
});

describe('whatever is cut', () => {
  it('is shared exactly: pieces and sawdust are the slab, costs are the cost, to the last unit', () => {
    let cuts = 0;
    fc.assert(
      fc.property(
        anySlab,
        fc.array(anyLine, { minLength: 1, maxLength: 3 }),
        fc.integer({ min: 0, max: 10_000_000 }),
        (slab, lines, cost) => {
          const cut = cutWood(slab, lines);
          if (!cut.ok) return;
          cuts += 1;
          const shared = shareWood(
            slab,
            cut.value,
            lines.some(({ kerf }) => kerf > 0),
          );
          expect(shared.parts.reduce((sum, part) => sum + part, shared.sawdust)).toBe(twiceArea(slab));
          expect(shared.sawdust).toBeGreaterThanOrEqual(0);
          const costs = shareCost(minorUnits(cost), shared.parts);
          expect(costs.reduce((sum, share) => sum + share, 0)).toBe(cost);
          const whole = shared.parts.reduce((sum, part) => sum + part, 0);
          costs.forEach((share, nr) => {
            expect(Math.abs(share - (cost * (shared.parts[nr] ?? 0)) / whole)).toBeLessThan(1.001);
          });
        },
      ),
      { numRuns: 300 },
    );
    expect(cuts).toBeGreaterThan(100);
  });

  it('is simple pieces that keep clear of each other by the kerf', () => {
    fc.assert(
      fc.property(anySlab, anyLine, (slab, line) => {
        const cut = cutWood(slab, [line]);
        if (!cut.ok) return;
        for (const piece of cut.value) {
          expect(findCrossing(ringsOf(piece))).toBeUndefined();
          expect(twiceArea(piece)).toBeGreaterThan(0);
        }
        if (line.kerf === 0) return;
        expect(findCrossing(cut.value.flatMap(ringsOf))).toBeUndefined();
      }),
      { numRuns: 200 },
    );
  });
});
