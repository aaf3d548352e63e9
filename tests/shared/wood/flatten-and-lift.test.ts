import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unwrap } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';
import { flattenCutFirst, flattenWhole, type RoughPiece, USUAL_PASSES } from '@/shared/wood/flatten-piece';
import { liftingCaution, SLAB_LIFT } from '@/shared/wood/lifting-caution';
import { recommendedWeight } from '@/shared/wood/recommended-weight';
import { weighBeforeAndAfter } from '@/shared/wood/weigh-before-and-after';
import { knownSpecies } from '@/tests/shared/wood/known-species';

const mm = (amount: number) => nanometres(Math.round(amount * 1_000_000));
const slab: RoughPiece = {
  thickness: mm(60),
  width: mm(900),
  length: mm(2400),
  warp: { cup: mm(4), bow: mm(3), twist: mm(6) },
};

describe('flattening', () => {
  it('60 mm with cup 4, bow 3, twist 6 and the usual passes leaves 44 mm', () => {
    expect(flattenWhole(slab).value).toEqual({
      left: mm(44),
      warpCosts: mm(10),
      passesCost: mm(6),
      nothingLeft: false,
    });
  });

  it('half the width leaves a quarter of the cup, half the length a quarter of the bow, both a quarter of the twist', () => {
    const half = flattenCutFirst(slab, { width: mm(450), length: mm(1200) }, []).value;
    expect(half.warpCosts).toBe(mm(1 + 0.75 + 0.75));
    expect(half.left).toBe(mm(57.5));
  });

  it('cutting to its own size changes nothing, nor does a size it does not have', () => {
    expect(flattenCutFirst(slab, slab).value).toEqual(flattenWhole(slab).value);
    expect(flattenCutFirst(slab, { width: mm(2000), length: mm(9000) }).value).toEqual(flattenWhole(slab).value);
  });

  it('cutting first never leaves less', () => {
    const length = fc.integer({ min: 1, max: 3000 });
    fc.assert(
      fc.property(length, length, (width, long) => {
        const first = flattenCutFirst(slab, { width: mm(width), length: mm(long) }).value;
        expect(first.left).toBeGreaterThanOrEqual(flattenWhole(slab).value.left);
      }),
    );
  });

  it('the square law never promises less cup than the true circular arc, and is within one part in fifty of it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 45 }), fc.integer({ min: 300, max: 899 }), (cup, width) => {
        const piece = { ...slab, warp: { cup: mm(cup), bow: mm(0), twist: mm(0) } };
        const ours = flattenCutFirst(piece, { width: mm(width), length: slab.length }, []).value.warpCosts / 1e6;
        const radius = (450 ** 2 + cup ** 2) / (2 * cup);
        const arc = radius - Math.sqrt(radius ** 2 - (width / 2) ** 2);
        expect(ours).toBeGreaterThanOrEqual(arc - 1e-6);
        expect(ours).toBeLessThanOrEqual(arc * 1.02 + 1e-5);
      }),
    );
  });

  it('passes take from the faces they name', () => {
    const flat = { ...slab, warp: { cup: mm(0), bow: mm(0), twist: mm(0) } };
    expect(
      flattenWhole(flat, [
        { takes: mm(2), faces: 1 },
        { takes: mm(1), faces: 2 },
      ]).value.left,
    ).toBe(mm(56));
    expect(flattenWhole(flat, []).value.left).toBe(mm(60));
    expect(USUAL_PASSES.reduce((sum, { takes, faces }) => sum + takes * faces, 0)).toBe(mm(6));
  });

  it('says when nothing is left, and never leaves less than nothing', () => {
    const gone = flattenWhole({ ...slab, thickness: mm(16) }).value;
    expect(gone).toMatchObject({ left: 0, nothingLeft: true });
    expect(flattenWhole({ ...slab, thickness: mm(17) }).value).toMatchObject({ left: mm(1), nothingLeft: false });
  });
});

describe('lifting', () => {
  const limit = recommendedWeight(SLAB_LIFT).value;

  it('at the limit it may be lifted, above it wants help, above three times a machine', () => {
    expect(liftingCaution(limit, 1).value.word).toBe('lift');
    expect(liftingCaution(limit * 1.01, 1).value.word).toBe('help');
    expect(liftingCaution(limit * 3.01, 1).value.word).toBe('machine');
  });

  it('two people lift half each, and the caution says that a team is not covered', () => {
    expect(liftingCaution(60, 2).value).toMatchObject({ word: 'help', kgEach: 30, teamLift: true });
    expect(liftingCaution(60, 1).value.teamLift).toBe(false);
  });

  it('a lift out of reach is for a machine at any weight', () => {
    expect(liftingCaution(1, 1, { ...SLAB_LIFT, reach: 70 }).value).toMatchObject({ word: 'machine', index: null });
  });

  it('refuses half a person and less than no weight', () => {
    expect(() => liftingCaution(10, 1.5)).toThrow(RangeError);
    expect(() => liftingCaution(-1, 1)).toThrow(RangeError);
  });

  it('a slab weighs less once it is flattened, each weight with its caution', () => {
    const asked = {
      species: knownSpecies('black-walnut'),
      mc: 12,
      squareMetres: 2,
      squareMetresAfter: 2,
      thickness: mm(60),
      thicknessAfter: mm(44),
      people: 2,
    };
    const { before, after } = unwrap(weighBeforeAndAfter(asked));
    expect(before.kilograms.value).toBeCloseTo(73.92, 6);
    expect(after.kilograms.value).toBeCloseTo(54.208, 6);
    expect(before.caution.value.kgEach).toBeCloseTo(36.96, 6);
    expect([before.caution.value.word, after.caution.value.word]).toEqual(['machine', 'help']);
    expect(weighBeforeAndAfter({ ...asked, species: knownSpecies('monkeypod') })).toMatchObject({
      error: { code: 'unknown-specific-gravity' },
    });
  });
});
