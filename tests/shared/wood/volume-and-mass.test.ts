import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nanometres } from '@/shared/units/nanometres';
import { WOOD_FORMULAS } from '@/shared/wood/formulas';
import { massAtMoisture } from '@/shared/wood/mass-at-moisture';
import { WOOD_SOURCES } from '@/shared/wood/sources';
import { threeWidthVolume } from '@/shared/wood/three-width-volume';

const mm = (size: number) => nanometres(size * 1_000_000);
const piece = (length: number, start: number, middle: number, end: number, thickness: number) =>
  threeWidthVolume({
    length: mm(length),
    start: mm(start),
    middle: mm(middle),
    end: mm(end),
    thickness: mm(thickness),
  });

describe('the volume of a piece known by three widths', () => {
  it('is that of two trapezoids', () => {
    // Worked by hand: 1 m of (0.4+0.5)/2 and 1 m of (0.5+0.7)/2 is 0.45 + 0.6 m².
    const { squareMetres, cubicMetres } = piece(2000, 400, 500, 700, 50);
    expect(squareMetres.value).toBeCloseTo(1.05, 12);
    expect(cubicMetres.value).toBeCloseTo(0.0525, 12);
  });
  it('is that of a box where the widths are one', () => {
    expect(piece(2440, 185, 185, 185, 27).cubicMetres.value).toBeCloseTo(2.44 * 0.185 * 0.027, 12);
  });
  it('is the same from either end', () => {
    fc.assert(
      fc.property(fc.nat(4000), fc.nat(900), fc.nat(900), fc.nat(900), (length, start, middle, end) => {
        const one = piece(length, start, middle, end, 50).cubicMetres.value;
        expect(piece(length, end, middle, start, 50).cubicMetres.value).toBeCloseTo(one, 12);
      }),
    );
  });
  it('throws for a size below zero', () => {
    expect(() => piece(-1, 1, 1, 1, 1)).toThrow(RangeError);
  });
});

describe('mass at another moisture content', () => {
  it('keeps the dry wood and changes the water', () => {
    // 50 kg of dry wood: 60 kg at 20 %, 54 kg at 8 %, 100 kg at 100 %.
    expect(massAtMoisture(60, 20, 8).value).toBeCloseTo(54, 12);
    expect(massAtMoisture(60, 20, 100).value).toBeCloseTo(100, 12);
    expect(massAtMoisture(60, 20, 0).value).toBeCloseTo(50, 12);
  });
  it('comes back when the moisture does', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 500, noNaN: true }), fc.nat(250), fc.nat(250), (mass, from, to) => {
        expect(massAtMoisture(massAtMoisture(mass, from, to).value, to, from).value).toBeCloseTo(mass, 8);
      }),
    );
  });
  it('opens to a formula with a source', () => {
    for (const { how } of [massAtMoisture(60, 20, 8), ...Object.values(piece(1, 1, 1, 1, 1))]) {
      expect(WOOD_SOURCES).toHaveProperty(WOOD_FORMULAS[how.formula].source);
    }
  });
});
