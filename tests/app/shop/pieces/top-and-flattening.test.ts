import { describe, expect, it } from 'vitest';
import { INPUT_WORDS, sayHow, saySource } from '@/app/(shop)/pieces/say-how';
import { sayTopTrouble } from '@/app/(shop)/pieces/say-trouble';
import { workOutBoardFeet } from '@/app/(shop)/pieces/work-out-board-feet';
import { workOutDrying } from '@/app/(shop)/pieces/work-out-drying';
import { weighFlattened, workOutFlattening } from '@/app/(shop)/pieces/work-out-flattening';
import { cutOf, workOutTop } from '@/app/(shop)/pieces/work-out-top';
import { workOutWeight } from '@/app/(shop)/pieces/work-out-weight';
import { unwrap } from '@/shared/result/result';
import { equilibriumMoisture } from '@/shared/wood/equilibrium-moisture';
import { USUAL_PASSES } from '@/shared/wood/flatten-piece';
import { SLAB_LIFT } from '@/shared/wood/lifting-caution';
import { recommendedWeight } from '@/shared/wood/recommended-weight';
import { day, mm, reading, slab, wood } from './piece-of-a-test';

const top = { width: mm(300), cut: 'flat' as const, fixedMc: 12, driestMc: 8, dampestMc: 12 };
const WARPED = { thickness: mm(60), width: mm(800), length: mm(2000), cup: mm(4), bow: mm(3), twist: mm(6) };

describe('a piece as a top', () => {
  it('moves as the handbook has it', () => {
    // Wood Handbook FPL-GTR-190 (2010), Equation 13-2 and Table 13-5: white oak C_T 0.00365, 300 mm over 4 points.
    const { shrinks, grows, slot } = unwrap(workOutTop(wood('white-oak'), top));
    expect(shrinks.value / 1e6).toBeCloseTo(-4.38, 2);
    expect(grows.value).toBe(0);
    expect(slot.inward.value / 1e6).toBeCloseTo(4.38 / 2 + 1, 2);
  });
  it('moves between flat and quarter where it is both, and the ends are the ends', () => {
    const moved = (quarter: number) =>
      -unwrap(workOutTop(wood('white-oak'), { ...top, cut: cutOf('mixed', quarter) })).shrinks.value;
    const quarterSawn = -unwrap(workOutTop(wood('white-oak'), { ...top, cut: 'quarter' })).shrinks.value;
    expect(moved(0)).toBe(-unwrap(workOutTop(wood('white-oak'), top)).shrinks.value);
    expect(moved(100)).toBe(quarterSawn);
    expect(moved(50)).toBeCloseTo((moved(0) + moved(100)) / 2, -1);
  });
  it('is not reckoned for a wood that is not settled or not published, and says what to do', () => {
    expect(workOutTop(null, top)).toMatchObject({ error: { code: 'which-wood' } });
    const elm = workOutTop(wood('wych-elm'), top);
    expect(elm).toMatchObject({ error: { code: 'unknown-movement', direction: 'tangential' } });
    if (!elm.ok) expect(sayTopTrouble(elm.error, 'Wych elm').says).toContain('Wych elm moves when flat sawn');
  });
  it('wants the dry season to be the drier', () => {
    expect(workOutTop(wood('white-oak'), { ...top, driestMc: 13 })).toMatchObject({
      error: { code: 'seasons-swapped' },
    });
  });
});

describe('flattening a piece', () => {
  it('leaves the thickness less its warp and what planing takes', () => {
    // 60 − 4 − 3 − 6/2 − 6, by hand.
    expect(workOutFlattening(WARPED).whole.value.left).toBe(mm(44));
    expect(workOutFlattening({ ...WARPED, passes: USUAL_PASSES }).whole.value.left).toBe(mm(44));
    expect(workOutFlattening({ ...WARPED, passes: [{ takes: mm(1.5), faces: 2 }] }).whole.value.left).toBe(mm(47));
  });
  it('leaves more where it is cut to size first', () => {
    // Half the width and half the length: cup and bow a quarter, twist a quarter; 60 − 1 − 0.75 − 0.75 − 6.
    const { cutFirst } = workOutFlattening({ ...WARPED, cutTo: { width: mm(400), length: mm(1000) } });
    expect(cutFirst?.value.left).toBe(mm(51.5));
  });
  it('says when nothing is left', () => {
    expect(workOutFlattening({ ...WARPED, thickness: mm(12) }).whole.value).toMatchObject({
      left: 0,
      nothingLeft: true,
    });
  });
  it('weighs less afterwards in proportion', () => {
    const weighed = weighFlattened(slab(), wood('black-walnut'), mm(60), mm(44));
    if (!weighed?.ok) throw new Error('not weighed');
    const { before, after } = weighed.value;
    expect(after.kilograms.value / before.kilograms.value).toBeCloseTo(44 / 60, 9);
    expect(weighFlattened(slab(), null, mm(60), mm(44))).toBeUndefined();
  });
});

describe('every number that is shown', () => {
  const readings = [reading('2026-10-01', 180), reading('2026-11-20', 130)];
  const piece = slab({ form: 'board', readings });
  const walnut = wood('black-walnut');
  const weight = unwrap(workOutWeight(piece, walnut, 2));
  const measure = workOutBoardFeet(piece, 8);
  const today = day('2026-11-25');
  const drying = workOutDrying(piece, { targetTenths: 80, emc: 6.5, speciesId: walnut.id, today });
  const narrow = unwrap(workOutTop(walnut, top));
  const wide = unwrap(workOutTop(walnut, { ...top, cut: cutOf('mixed', 40), driestMc: 4, dampestMc: 16 }));
  const flat = workOutFlattening({ ...WARPED, cutTo: { width: mm(400), length: mm(1000) } });
  const hows = [
    ...weight.steps,
    weight.dry.how,
    weight.lifting.how,
    recommendedWeight(SLAB_LIFT).how,
    measure.boardFeet.how,
    measure.sellers?.boardFeet.how,
    measure.sellers?.surface.how,
    drying.forecast?.ok ? drying.forecast.value.how : undefined,
    ...[narrow, wide].flatMap((each) => [
      each.shrinks.how,
      each.grows.how,
      each.slot.inward.how,
      each.slot.outward.how,
    ]),
    flat.whole.how,
    flat.cutFirst?.how,
    unwrap(equilibriumMoisture({ scale: 'C', degrees: 20 }, 45)).how,
    unwrap(equilibriumMoisture({ scale: 'F', degrees: 68 }, 45)).how,
  ];
  it('opens to its formula, its inputs in words with their units, and a source', () => {
    for (const how of hows) {
      if (!how) throw new Error('a number without how');
      const said = sayHow(how, 'metric');
      expect(said.written).not.toBe('');
      expect(said.sources.length).toBeGreaterThan(0);
      for (const name of Object.keys(how.inputs)) {
        if (!/source$/i.test(name)) expect(INPUT_WORDS, `${how.formula}: ${name}`).toHaveProperty([name]);
      }
      for (const { value } of said.inputs) expect(value).not.toMatch(/NaN|undefined|null/);
    }
  });
  it('names the source of a species’ figure beside that of the formula, once each', () => {
    const { sources } = sayHow(weight.now.how, 'metric');
    expect(sources).toHaveLength(new Set(sources).size);
    expect(sources.some((source) => source.includes('specific gravity on green volume'))).toBe(true);
  });
  it('says what was written down from memory and what no publication stands behind', () => {
    expect(saySource('table-5-3-memory')).toContain('from memory');
    expect(saySource('common-practice')).toContain('no publication stands behind it');
    expect(saySource('table-13-5')).not.toContain('memory');
    expect(saySource('geometry')).toMatch(/^Geometry: .*\.$/);
  });
  it('shows lengths in the workshop’s units', () => {
    const inInches = sayHow({ formula: 'flatten-full', inputs: { cupMm: 25.4 } }, 'imperial');
    expect(inInches.inputs).toEqual([{ term: 'Cup', value: '1"' }]);
  });
});
