import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unwrap } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';
import { ALL_SPECIES } from '@/shared/wood/all-species';
import { exportTally } from '@/shared/wood/export-tally';
import { QUARTER_THICKNESSES, quarterThickness } from '@/shared/wood/quarter-thickness';
import { softwoodSize } from '@/shared/wood/softwood-size';
import { surfaceMeasure } from '@/shared/wood/surface-measure';
import { tallyBoards } from '@/shared/wood/tally-boards';
import { sellerDifference, trueBoardFeet } from '@/shared/wood/true-board-feet';
import { specificGravityAt, woodDensity } from '@/shared/wood/wood-density';
import { woodMass } from '@/shared/wood/wood-mass';
import { knownSpecies } from '@/tests/shared/wood/known-species';

const heavyEnough = ALL_SPECIES.filter((each) => each.gravityGreen || each.gravity12);
const inch = 25_400_000;

describe('density of wood', () => {
  it('gives both published figures back', () => {
    for (const species of heavyEnough) {
      if (species.gravityGreen) {
        expect(unwrap(specificGravityAt(species, 30)).value).toBeCloseTo(species.gravityGreen.value, 9);
        expect(unwrap(specificGravityAt(species, 80)).value).toBeCloseTo(species.gravityGreen.value, 9);
      }
      if (species.gravity12) {
        expect(unwrap(specificGravityAt(species, 12)).value).toBeCloseTo(species.gravity12.value, 9);
      }
    }
  });

  it('rises with moisture content for every species: water never makes wood lighter', () => {
    fc.assert(
      fc.property(fc.constantFrom(...heavyEnough), fc.double({ min: 0, max: 200, noNaN: true }), (species, mc) => {
        expect(unwrap(woodDensity(species, mc + 1)).value).toBeGreaterThan(unwrap(woodDensity(species, mc)).value);
      }),
    );
  });

  it('a piece that dries loses just the water: the ovendry mass stays', () => {
    const walnut = knownSpecies('black-walnut');
    for (const mc of [0, 6, 12, 25, 30, 60]) {
      const gravity = unwrap(specificGravityAt(walnut, mc)).value;
      // The same dry wood takes 1/G of room.
      expect(unwrap(woodMass(walnut, 1 / gravity / 1000, mc)).value).toBeCloseTo(1 + mc / 100, 9);
    }
  });

  it('refuses what is not published and what cannot be', () => {
    expect(woodDensity(knownSpecies('monkeypod'), 12)).toEqual({
      ok: false,
      error: { code: 'unknown-specific-gravity' },
    });
    expect(woodDensity(knownSpecies('teak'), 251)).toMatchObject({
      ok: false,
      error: { code: 'moisture-out-of-range' },
    });
    expect(() => woodMass(knownSpecies('teak'), -1, 12)).toThrow(RangeError);
  });
});

describe('board measure', () => {
  it('surface measure is within half a foot of the exact area of the whole feet', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2000 }), fc.integer({ min: 0, max: 20 * 48 }), (sixteenths, quarters) => {
        const width = nanometres((sixteenths * inch) / 16);
        const length = nanometres((quarters * inch) / 4);
        const exact = ((sixteenths / 16) * Math.floor(quarters / 48)) / 12;
        expect(Math.abs(surfaceMeasure(width, length).value - exact)).toBeLessThanOrEqual(0.5);
      }),
    );
  });

  it('a half goes up or down as told, and nothing else does', () => {
    const half = [nanometres(4.5 * inch), nanometres(144 * inch)] as const;
    expect(surfaceMeasure(...half, 'up').value).toBe(5);
    expect(surfaceMeasure(...half, 'down').value).toBe(4);
    expect(surfaceMeasure(nanometres(half[0] + 1), half[1], 'down').value).toBe(5);
  });

  it('a tally of exact halves is off by at most half a foot in all, however many', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(4.5, 5.5, 6.5, 8), { maxLength: 40 }), (widths) => {
        const boards = widths.map((width) => ({ width: nanometres(width * inch), length: nanometres(144 * inch) }));
        const exact = widths.reduce((sum, width) => sum + width, 0);
        expect(Math.abs(tallyBoards(boards, 4).surfaceTotal - exact)).toBeLessThanOrEqual(0.5);
      }),
    );
  });

  it('below 4/4 counts as 4/4, and 5/4 as a quarter more', () => {
    const boards = [{ width: nanometres(8 * inch), length: nanometres(144 * inch) }];
    expect([2, 3, 4, 5, 16].map((quarters) => tallyBoards(boards, quarters).boardFeet.value)).toEqual([
      8, 8, 8, 10, 32,
    ]);
    expect(() => tallyBoards(boards, 4.5)).toThrow(RangeError);
  });

  it('an export tally never lengthens a board and moves no width by more than half an inch', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e9 }), fc.integer({ min: 0, max: 6e9 }), (width, length) => {
        const [line] = exportTally([{ width: nanometres(width), length: nanometres(length) }]);
        expect(Math.abs((line?.widthInches ?? 0) * inch - width)).toBeLessThanOrEqual(inch / 2);
        expect((line?.lengthFeet ?? 0) * 12 * inch).toBeLessThanOrEqual(length);
      }),
    );
  });

  it('keeps the seller’s figure beside ours', () => {
    expect(sellerDifference(50, 40)).toEqual({ boardFeet: 10, share: 0.25 });
    expect(sellerDifference(5, 0)).toEqual({ boardFeet: 5, share: null });
    expect(() => trueBoardFeet(-1)).toThrow(RangeError);
  });

  it('surfacing two sides takes more than one, and always takes something', () => {
    for (const { rough, surfacedOne, surfacedTwo } of QUARTER_THICKNESSES) {
      expect(surfacedTwo).toBeLessThan(surfacedOne ?? rough);
      expect(surfacedOne ?? 0).toBeLessThan(rough);
    }
  });

  it('knows no size the trade does not have', () => {
    expect(quarterThickness(9)).toBeUndefined();
    expect(softwoodSize(6, 6)).toBeUndefined();
    expect(softwoodSize(2, 9)).toBeUndefined();
  });
});
