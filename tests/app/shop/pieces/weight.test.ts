import { describe, expect, it } from 'vitest';
import { figuredPiece } from '@/app/(shop)/pieces/figured-piece';
import { sayLifting } from '@/app/(shop)/pieces/say-lifting';
import { sayMass } from '@/app/(shop)/pieces/say-mass';
import { sayWeightTrouble } from '@/app/(shop)/pieces/say-trouble';
import { workOutBoardFeet } from '@/app/(shop)/pieces/work-out-board-feet';
import { weighFlattened } from '@/app/(shop)/pieces/work-out-flattening';
import { workOutWeight } from '@/app/(shop)/pieces/work-out-weight';
import { unwrap } from '@/shared/result/result';
import { ALL_SPECIES } from '@/shared/wood/all-species';
import { pieceLineOfATest } from '@/tests/support/piece-line-of-a-test';
import { mm, reading, slab, wood } from './piece-of-a-test';

const WALNUT = wood('black-walnut');

describe('what a piece weighs', () => {
  it('is its volume at its wettest newest reading', () => {
    // Wood Handbook FPL-GTR-190 (2010), Table 5-3: black walnut 0.55 at 12 %, so 616 kg/m³; times 0.06 m³.
    const piece = slab({
      readings: [reading('2026-11-20', 120), reading('2026-11-20', 96), reading('2026-11-01', 300)],
    });
    const weight = unwrap(workOutWeight(piece, WALNUT, 2));
    expect(weight).toMatchObject({ mc: 12, readOn: '2026-11-20' });
    expect(weight.now.value).toBeCloseTo(36.96, 2);
    expect(weight.dry.value).toBeCloseTo((36.96 * 1.08) / 1.12, 2);
    expect(weight.steps.map(({ formula }) => formula)).toEqual([
      'mass',
      'density',
      'specific-gravity',
      'plate-volume',
      'three-width-area',
    ]);
  });
  it('is the same before it is flattened as everywhere else', () => {
    const piece = slab({ readings: [reading('2026-11-20', 120)] });
    const flattened = weighFlattened(piece, WALNUT, piece.size.thickness, piece.size.thickness);
    expect(flattened && unwrap(flattened).before.kilograms.value).toBeCloseTo(
      unwrap(workOutWeight(piece, WALNUT, 1)).dry.value,
      9,
    );
  });
  it('is reckoned wet where it was never read, and says so', () => {
    const weight = unwrap(workOutWeight(slab(), WALNUT, 2));
    expect(weight).toMatchObject({ mc: 30, readOn: null });
    expect(weight.now.value).toBeGreaterThan(
      unwrap(workOutWeight(slab({ readings: [reading('2026-11-20', 120)] }), WALNUT, 2)).now.value,
    );
  });
  it('is not given for a sheet, a wood that is not settled, or one without a published gravity', () => {
    const unknown = ALL_SPECIES.find((each) => !each.gravityGreen && !each.gravity12);
    expect(workOutWeight(slab({ form: 'sheet' }), WALNUT, 2)).toMatchObject({ error: { code: 'made-sheet' } });
    expect(workOutWeight(slab(), null, 2)).toMatchObject({ error: { code: 'which-wood' } });
    expect(workOutWeight(slab(), unknown ?? null, 2)).toMatchObject({ error: { code: 'unknown-specific-gravity' } });
  });
  it('says what to do instead, each time', () => {
    for (const code of ['made-sheet', 'which-wood', 'unknown-specific-gravity'] as const) {
      expect(sayWeightTrouble({ code }, 'Ipe').todo).not.toBe('');
    }
    expect(sayWeightTrouble({ code: 'unknown-specific-gravity' }, 'Ipe').says).toContain('Ipe');
  });
  it('is said in the workshop’s units, no finer than it is known', () => {
    expect([sayMass(73.92, 'metric'), sayMass(8.24, 'metric'), sayMass(9.96, 'metric')]).toEqual([
      '74 kg',
      '8.2 kg',
      '10 kg',
    ]);
    // 1 lb is 0.45359237 kg (1959 agreement): 73.92 kg is 162.97 lb.
    expect(sayMass(73.92, 'imperial')).toBe('163 lb');
  });
});

describe('who may lift it', () => {
  const said = (kilograms: number, people: number) => {
    const scale = kilograms / unwrap(workOutWeight(slab(), WALNUT, people)).now.value;
    const { size } = slab();
    const piece = slab({ size: { ...size, thickness: mm(60 * scale) } });
    return sayLifting(unwrap(workOutWeight(piece, WALNUT, people)).lifting.value, people, 'metric');
  };
  it('goes from Use through Care to Stop as the load grows, by NIOSH 94-110 (1994)', () => {
    // A limit of about 11 kg each: 8, 20 and 50 kg a person.
    expect([said(16, 2), said(40, 2), said(100, 2)].map(({ word }) => word)).toEqual(['use', 'care', 'stop']);
    expect(said(40, 2).says).toBe('Too heavy for two: 20 kg each, and 11 kg is the limit for one.');
  });
  it('says of more than one that they never share it evenly', () => {
    expect(said(16, 2).todo).toContain('never share');
    expect(said(8, 1).todo).not.toContain('never share');
  });
});

describe('board feet', () => {
  const board = (thickness: number) =>
    slab({
      form: 'board',
      // 8 ft by 6 1/4 in.
      size: { length: mm(2438.4), start: mm(158.75), middle: mm(158.75), end: mm(158.75), thickness: mm(thickness) },
    });
  it('of a board are what is there, and what the seller counts beside it', () => {
    // 2 in × 6.25 in × 96 in is 1200 in³, 8.333 of 144; by the hardwood rule SM 4, times 2 in, is 8.
    const { boardFeet, sellers } = workOutBoardFeet(board(50.8), 8);
    expect(boardFeet.value).toBeCloseTo(1200 / 144, 9);
    expect(sellers?.boardFeet.value).toBe(8);
    expect(sellers?.difference.boardFeet).toBeCloseTo(8 - 1200 / 144, 9);
  });
  it('of a slab, a sheet and an offcut are never the seller’s', () => {
    for (const form of ['slab', 'sheet', 'offcut'] as const) {
      expect(workOutBoardFeet(slab({ form }), 8).sellers).toBeUndefined();
    }
  });
  it('begin at what the book says it is sold as, else at the traded thickness it still holds, surfaced or rough', () => {
    const sold = (thickness: number, more = {}) =>
      figuredPiece(pieceLineOfATest({ form: 'board', thicknessNm: mm(thickness), ...more }), 'imperial').soldAs;
    expect([20, 25.4, 27, 41, 50.8, 120].map((thickness) => sold(thickness))).toEqual([4, 4, 4, 6, 8, 16]);
    // 1 3/4 in surfaced two sides is 8/4 (NHLA Rules, S2S thicknesses: 8/4 to 1 3/4 in); rough it is 7/4.
    expect(sold(44.45, { surfacing: 'S2S' })).toBe(8);
    expect(sold(44.45)).toBe(7);
    expect(sold(44.45, { quarters: 8 })).toBe(8);
  });
});
