import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CutPiece, cutOutline } from '@/shared/outline/cut-outline';
import { findCrossing } from '@/shared/outline/find-crossing';
import { ringsOf } from '@/shared/outline/outline';
import { outlineArea, twiceArea } from '@/shared/outline/outline-area';
import { unwrap } from '@/shared/result/result';
import { minorUnits } from '@/shared/units/minor-units';
import { outlineOf, rectangle, ringOf } from './shapes-of-wood';

const at = (x: number, y: number) => ({ x: x * 1000, y: y * 1000 });
const across = (x: number) => ({ from: at(x, -1000), to: at(x, 1000) });

describe('cutting a slab along a line', () => {
  it('shares area and cost by what falls to each side, left of the line first', () => {
    const cut = unwrap(cutOutline(rectangle(2000, 500), across(500), minorUnits(100_01)));
    expect(cut.map(({ side, outline }) => [side, outlineArea(outline)])).toEqual([
      ['left', 250_000],
      ['right', 750_000],
    ]);
    expect(cut.map(({ cost }) => cost)).toEqual([2500, 7501]);
  });

  it('gives three pieces where a fork is cut across its arms', () => {
    const fork = outlineOf(ringOf([0, -200], [1000, -200], [1000, -50], [500, 0], [1000, 50], [1000, 200], [0, 200]));
    const cut = unwrap(cutOutline(fork, across(750), minorUnits(0)));
    expect(cut.map(({ side, outline }) => [side, outlineArea(outline)])).toEqual([
      ['left', 750 * 400 - (250 * 50) / 2],
      ['right', expect.closeTo(40_625, 6)],
      ['right', expect.closeTo(40_625, 6)],
    ]);
  });

  it('opens a gap that the line runs through and keeps one that it misses', () => {
    const gap = (x: number) => ringOf([x, -50], [x + 100, -50], [x + 100, 50], [x, 50]);
    const slab = outlineOf(ringOf([0, -250], [2000, -250], [2000, 250], [0, 250]), gap(450), gap(1500));
    const cut = unwrap(cutOutline(slab, across(500), minorUnits(0)));
    expect(cut.map(({ outline }) => [outlineArea(outline), outline.holes.length])).toEqual([
      [250_000 - 5_000, 0],
      [750_000 - 15_000, 1],
    ]);
  });

  it('along the line down the middle rips a slab', () => {
    const cut = unwrap(cutOutline(rectangle(2000, 500), { from: at(0, 0), to: at(10, 0) }, minorUnits(3)));
    expect(cut.map(({ side, outline, cost }) => [side, outlineArea(outline), cost])).toEqual([
      ['left', 500_000, 2],
      ['right', 500_000, 1],
    ]);
  });

  it('refuses a line beside the wood, along its edge, or without direction', () => {
    const slab = rectangle(2000, 500);
    expect(cutOutline(slab, across(2100), minorUnits(1))).toMatchObject({ error: { code: 'line-misses-the-wood' } });
    expect(cutOutline(slab, across(2000), minorUnits(1))).toMatchObject({ error: { code: 'line-misses-the-wood' } });
    expect(cutOutline(slab, across(0), minorUnits(1))).toMatchObject({ error: { code: 'line-misses-the-wood' } });
    expect(cutOutline(slab, { from: at(1, 1), to: at(1, 1) }, minorUnits(1))).toMatchObject({
      error: { code: 'line-has-no-direction' },
    });
  });

  const blob = fc.array(fc.integer({ min: 40, max: 400 }), { minLength: 4, maxLength: 20 }).map((radii) => {
    const ring = radii.map((radius, nr) => {
      const angle = (2 * Math.PI * nr) / radii.length;
      return { x: Math.round(radius * 1000 * Math.cos(angle)), y: Math.round(radius * 1000 * Math.sin(angle)) };
    });
    return outlineOf(ring, ringOf([-10, -10], [10, -10], [10, 10], [-10, 10]));
  });
  const spot = fc.record({ x: fc.integer({ min: -400, max: 400 }), y: fc.integer({ min: -400, max: 400 }) });

  it('loses nothing: shares add up exactly, drawn pieces to within their rounded corners', () => {
    fc.assert(
      fc.property(blob, spot, spot, fc.integer({ min: 0, max: 1_000_000 }), (slab, p, q, cost) => {
        const cut = cutOutline(slab, { from: at(p.x, p.y), to: at(q.x, q.y) }, minorUnits(cost));
        if (!cut.ok) return;
        const sum = (of: (piece: CutPiece) => number) => cut.value.reduce((total, piece) => total + of(piece), 0);
        expect(sum(({ cost: share }) => share)).toBe(cost);
        expect(sum((piece) => piece.twiceArea)).toBe(twiceArea(slab));
        // Every new corner may move by half a micrometre, along sides no longer than a metre.
        expect(Math.abs(sum(({ outline }) => twiceArea(outline)) - twiceArea(slab))).toBeLessThan(5e7);
        for (const { outline } of cut.value) {
          expect(findCrossing(ringsOf(outline))).toBeUndefined();
          expect(twiceArea(outline)).toBeGreaterThan(0);
        }
      }),
      { numRuns: 400 },
    );
  });

  it('leaves every piece on its own side of the line', () => {
    fc.assert(
      fc.property(blob, spot, spot, (slab, p, q) => {
        const [from, to] = [at(p.x, p.y), at(q.x, q.y)];
        const cut = cutOutline(slab, { from, to }, minorUnits(0));
        if (!cut.ok) return;
        const length = Math.hypot(to.x - from.x, to.y - from.y);
        for (const { side, outline } of cut.value) {
          for (const { x, y } of outline.ring) {
            const off = ((to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x)) / length;
            expect(side === 'left' ? off : -off).toBeGreaterThan(-1);
          }
        }
      }),
      { numRuns: 200 },
    );
  });
});
