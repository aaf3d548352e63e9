import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { minorUnits } from '@/shared/units/minor-units';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { measurePack } from '@/shared/wood/measure-pack';
import { packFigures, sayBoardFeet, sayPackSize } from '@/shared/wood/pack-figures';
import { QUARTER_THICKNESSES } from '@/shared/wood/quarter-thickness';
import { sayBoardSize } from '@/shared/wood/say-board-size';
import { shareAmongBoards } from '@/shared/wood/share-among-boards';
import { soldAs } from '@/shared/wood/sold-as';

const inch = (count: number): Nanometres => nanometres(Math.round(count * 64) * 396_875);
const foot = (count: number): Nanometres => inch(count * 12);
const board = (width: number, length: number) => ({ width: inch(width), length: foot(length) });
const anyBoards = fc.array(
  fc
    .record({ width: fc.integer({ min: 128, max: 1280 }), length: fc.integer({ min: 768, max: 12_288 }) })
    .map((one) => ({
      width: nanometres(one.width * 396_875),
      length: nanometres(one.length * 396_875),
      taken: one.width % 3 === 0,
    })),
  { minLength: 1, maxLength: 60 },
);

// NHLA rules as the American Hardwood Export Council states them: width with its fraction times whole feet, over 12, to
// the nearest whole foot, exact halves up and down in turn; times the thickness in inches.
describe('a tally measured as a pack', () => {
  it('gives each board its surface measure times the thickness, exact halves up and down in turn', () => {
    const boards = [board(6.25, 8), board(6.75, 8), board(6.75, 8), board(7, 10.9)];
    // 50/12 = 4.17 → 4; 54/12 = 4.5 → 5, then → 4; 70/12 = 5.83 → 6, the part of a foot dropped.
    expect(measurePack(boards, inch(2), 8)).toMatchObject({
      boardFeet: [8, 10, 8, 12],
      tally: { surfaceTotal: 19, boardFeet: { value: 38 } },
    });
  });

  it('counts what is thinner than an inch as an inch, and five quarters by the quarter', () => {
    expect(measurePack([board(6, 8)], inch(0.75), 3).tally.boardFeet.value).toBe(4);
    expect(measurePack([board(6, 8)], inch(1.25), 5).tally.boardFeet.value).toBe(5);
  });

  it('is the same both ways where nothing is rounded', () => {
    const { tally, trueBoardFeet } = measurePack([board(6, 8), board(9, 8)], inch(1), 4);
    expect(tally.boardFeet.value).toBe(10);
    expect(trueBoardFeet).toBeCloseTo(10, 9);
  });
});

describe('a pack that boards are taken out of', () => {
  const pack = { thicknessNm: inch(2), quarters: 8, surfacing: 'rough' };

  it('has what is left and what was taken adding up to the tally of the whole', () => {
    fc.assert(
      fc.property(anyBoards, (boards) => {
        const { all, left, boardFeet } = packFigures({ ...pack, boards });
        const taken = boards.reduce((sum, one, nr) => (one.taken ? sum + (boardFeet[nr] ?? 0) : sum), 0);
        expect(left.boardFeet + taken).toBe(all.boardFeet);
        expect(left.count).toBe(boards.filter((one) => !one.taken).length);
      }),
    );
  });

  it('is said by its boards, its board feet and its quarters', () => {
    const boards = [6, 6, 9].map((width, nr) => ({ ...board(width, 8), taken: nr === 2 }));
    expect(sayPackSize(packFigures({ ...pack, boards }))).toBe('2 of 3 boards, 16 board feet left, 8/4');
    expect(sayPackSize(packFigures({ ...pack, boards: boards.slice(0, 2) }))).toBe('2 boards, 16 board feet, 8/4');
    expect(sayBoardFeet(1)).toBe('1 board foot');
    expect(sayBoardFeet(1234.75)).toBe('1,234.75 board feet');
  });

  it('shares its cost among its boards so that the shares add up exactly, none off by a whole minor unit', () => {
    fc.assert(
      fc.property(anyBoards, fc.integer({ min: 0, max: 10_000_000 }), (boards, cost) => {
        const shares = shareAmongBoards(minorUnits(cost), boards);
        expect(shares.reduce((sum: number, share) => sum + share, 0)).toBe(cost);
        const faces = boards.map((one) => (one.width / 1e6) * (one.length / 1e6));
        const whole = faces.reduce((sum, face) => sum + face, 0);
        for (const [nr, share] of shares.entries()) {
          expect(Math.abs(share - (cost * (faces[nr] ?? 0)) / whole)).toBeLessThan(1);
        }
      }),
    );
  });
});

describe('a board of a tally in words', () => {
  it('has its width first, and its unit once where both are in millimetres', () => {
    expect(sayBoardSize(board(6.25, 8), 'imperial')).toBe(`6 1/4" × 8'`);
    expect(sayBoardSize({ width: nanometres(150e6), length: nanometres(2440e6) }, 'metric')).toBe('150 × 2,440 mm');
  });
});

// NHLA rules book and Wood Handbook chapter 6, as public size charts print them.
describe('what a thickness is sold as', () => {
  it('is every published thickness by its own name, rough and surfaced, 4/4 at least', () => {
    for (const { quarters, rough, surfacedTwo } of QUARTER_THICKNESSES) {
      expect(soldAs(rough)).toBe(Math.max(4, quarters));
      expect(soldAs(surfacedTwo, true)).toBe(Math.max(4, quarters));
    }
  });

  it('is the thickest size it still holds', () => {
    expect(soldAs(inch(2.2))).toBe(8);
    expect(soldAs(inch(1.75))).toBe(7);
    expect(soldAs(inch(1.75), true)).toBe(8);
    expect(soldAs(inch(0.5))).toBe(4);
  });
});
