import { describe, expect, it } from 'vitest';
import { nanometres } from '@/shared/units/nanometres';
import { exportTally } from '@/shared/wood/export-tally';
import { quarterThickness } from '@/shared/wood/quarter-thickness';
import { softwoodBoardFeet, softwoodSize } from '@/shared/wood/softwood-size';
import { surfaceMeasure } from '@/shared/wood/surface-measure';
import { tallyBoards } from '@/shared/wood/tally-boards';
import { BOARD_FOOT_M3, trueBoardFeet } from '@/shared/wood/true-board-feet';

const inches = (amount: number) => nanometres(amount * 25_400_000);
const feet = (amount: number) => inches(amount * 12);
const board = (width: number, length: number) => ({ width: inches(width), length: feet(length) });

// American Hardwood Export Council, measurement page, after the NHLA rules.
describe('American Hardwood Export Council, measurement', () => {
  it('6 1/4 in by 8 ft is 4 1/6, so a surface measure of 4', () => {
    expect(surfaceMeasure(inches(6.25), feet(8)).value).toBe(4);
  });
  it('at 2 in thick that is 8 board feet', () => expect(tallyBoards([board(6.25, 8)], 8).boardFeet.value).toBe(8));
  it('5 1/4 in by 8 1/2 ft is tallied 5 in and 8 ft for export', () => {
    expect(exportTally([board(5.25, 8.5)])).toEqual([{ widthInches: 5, lengthFeet: 8 }]);
  });
  it('widths on the half inch go up and down in turn', () => {
    const tally = exportTally([board(5.5, 8), board(6.75, 8), board(5.5, 8), board(7.5, 10.75)]);
    expect(tally.map(({ widthInches }) => widthInches)).toEqual([6, 7, 5, 8]);
  });
});

// Three examples of surface measure after the NHLA rules, on a lumber dealer's measurement page.
describe('surface measure examples after the NHLA rules', () => {
  it.each([
    [6.5, 8, 4],
    [8, 12, 8],
    [10, 13, 11],
  ])('%d in by %d ft is %d', (width, length, printed) => {
    expect(surfaceMeasure(inches(width), feet(length)).value).toBe(printed);
  });
});

// A wood technologist's advice on a sawmill forum: on an exact half go up the first time, down the next, and so on.
it('exact halves of a tally go up, down, up', () => {
  expect(tallyBoards([board(4.5, 12), board(4.5, 12), board(4.5, 12)], 4).surface).toEqual([5, 4, 5]);
});

// A woodworking tip sheet: 1 in by 9 in by 96 in is 6 board feet, at 1 1/2 in it is 9.
describe('board feet by volume', () => {
  const cubicMetres = (t: number, w: number, l: number) => t * w * l * 0.0254 ** 3;
  it('1 by 9 by 96 in is 6', () => expect(trueBoardFeet(cubicMetres(1, 9, 96)).value).toBeCloseTo(6, 9));
  it('1 1/2 by 9 by 96 in is 9', () => expect(trueBoardFeet(cubicMetres(1.5, 9, 96)).value).toBeCloseTo(9, 9));
  it('a cubic metre is 423.776 board feet', () => expect(1 / BOARD_FOOT_M3).toBeCloseTo(423.776, 3));
  // FAO document T0269E, Appendix II: 1000 board feet are 2.36 m³.
  it('a thousand board feet are 2.36 m³', () => expect(1000 * BOARD_FOOT_M3).toBeCloseTo(2.36, 2));
});

// Two public charts of hardwood sizes (an engineering reference site, a woodworking reference site) after NHLA: rough
// quarters, surfaced one side, surfaced two sides, in sixteenths of an inch. 10/4 is from memory.
describe('hardwood thickness rough and surfaced', () => {
  it.each([
    [3, 10, 9],
    [4, 14, 13],
    [5, 18, 17],
    [6, 22, 21],
    [7, null, 24],
    [8, 29, 28],
    [10, null, 36],
    [12, 45, 44],
    [14, null, 52],
    [16, 61, 60],
  ])('%d/4', (quarters, one, two) => {
    const found = quarterThickness(quarters);
    expect(found?.rough).toBe(quarters * 6_350_000);
    expect(found?.surfacedTwo).toBe(two * 1_587_500);
    expect(found?.surfacedOne ?? null).toBe(one === null ? null : one * 1_587_500);
  });
});

// American Softwood Lumber Standard PS 20, as a public size chart prints it; inches.
describe('PS 20 dressed sizes', () => {
  it.each([
    [1, 2, 0.75, 1.5],
    [1, 3, 0.75, 2.5],
    [1, 4, 0.75, 3.5],
    [1, 6, 0.75, 5.5],
    [1, 8, 0.75, 7.25],
    [1, 10, 0.75, 9.25],
    [1, 12, 0.75, 11.25],
    [2, 2, 1.5, 1.5],
    [2, 3, 1.5, 2.5],
    [2, 4, 1.5, 3.5],
    [2, 6, 1.5, 5.5],
    [2, 8, 1.5, 7.25],
    [2, 10, 1.5, 9.25],
    [2, 12, 1.5, 11.25],
    [2, 14, 1.5, 13.25],
    [3, 4, 2.5, 3.5],
    [4, 4, 3.5, 3.5],
    [4, 6, 3.5, 5.5],
  ])('%d by %d is %d by %d', (thickness, width, dressedThickness, dressedWidth) => {
    expect(softwoodSize(thickness, width)).toEqual({
      thickness: inches(dressedThickness),
      width: inches(dressedWidth),
    });
  });
  it('a 2 by 8 of 12 ft is 16 board feet by its nominal size', () => {
    expect(softwoodBoardFeet(2, 8, 12).value).toBe(16);
  });
});
