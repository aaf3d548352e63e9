import { describe, expect, it } from 'vitest';
import type { FitCondition } from '@/app/_server/fits/conditions-of-piece';
import { fitPiece } from '@/app/_server/fits/fit-piece';
import { fitView } from '@/app/(shop)/on-hand/fits/fit-view';
import { onTheRule } from '@/app/(shop)/on-hand/fits/on-the-rule';
import { readQuestion } from '@/app/(shop)/on-hand/fits/question';
import { sayCondition, sayOnWood, sayRank, sayWouldGive } from '@/app/(shop)/on-hand/fits/say-fit';
import { sayLooked, sayQuestion } from '@/app/(shop)/on-hand/fits/say-question';
import { firstQuestion } from '@/app/(shop)/on-hand/fits/typed-question';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { readRequest } from '@/shared/fit/fit-request';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { outlineFromStations } from '@/shared/outline/outline-from-stations';
import { unwrap } from '@/shared/result/result';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { pieceLineOfATest } from '../../../support/piece-line-of-a-test';

const inches = (count: number) => nanometres(count * 25_400_000);
const imperial = { prefer: 'imperial' } as const;
const DATES = { today: '2026-11-25' as CalendarDate, order: 'day-first' } as const;
const METRIC = { prefer: 'metric', ...DATES } as const;

/** A board of 100 in, so wide at its ends and in the middle, asked for a top of 78 in with nothing lost. */
function judged(ends: number, middle: number, width: number) {
  const station = (at: number, wide: number) => ({ at: inches(at), left: inches(wide / 2), right: inches(wide / 2) });
  const outline = unwrap(
    outlineFromStations({ stations: [station(0, ends), station(50, middle), station(100, ends)] }),
  );
  const request = unwrap(
    readRequest({
      shape: { kind: 'rectangle', length: inches(78), width: inches(width), cornerRadius: inches(0) },
      grainWindow: 5,
      edgeAllowance: inches(0),
      trims: { start: inches(0), end: inches(0) },
      filling: true,
    }),
  );
  const slab = { id: 'board', outline, defects: [], endChecks: [] };
  return { line: pieceLineOfATest(), outline, sizes: request.sizes, judged: fitPiece(slab, request) };
}

describe('a length to the mark of a tape', () => {
  it.each([
    [57_200_000, 'down', 'imperial', '2 1/4 in'],
    [57_200_000, 'up', 'imperial', '2 5/16 in'],
    [57_900_000, 'down', 'metric', '57 mm'],
    [57_100_000, 'up', 'metric', '58 mm'],
    [25_400_000, 'up', 'imperial', '1 in'],
  ] as const)('%i nm goes %s in %s to %s', (length, way, prefer, says) => {
    expect(onTheRule(nanometres(length), way, prefer)).toBe(says);
  });
});

describe('the words on a drawing', () => {
  it('say what there is to spare where a top fits', () => {
    const fit = judged(40, 40, 36);
    // 40 in of straight board less 36 in of top.
    expect(sayOnWood({ ...fit, conditions: [] }, imperial)).toBe('fits, 4 in to spare');
    expect(fitView({ ...fit, conditions: [] }, fit.sizes)?.line).toBe('solid');
  });

  it('say that it just fits where the board is as wide as the top', () => {
    expect(sayOnWood({ ...judged(36, 36, 36), conditions: [] }, imperial)).toBe('fits, just');
  });

  it('name the weightiest condition and count the rest, and the line is dashed', () => {
    const fit = judged(40, 40, 36);
    const conditions: FitCondition[] = [
      { code: 'promised-elsewhere', weight: 'stop', job: 'Rowan table' },
      { code: 'strapped', weight: 'care' },
    ];
    expect(sayOnWood({ ...fit, conditions }, imperial)).toBe('fits, but promised to Rowan table (and 1 more)');
    expect(fitView({ ...fit, conditions }, fit.sizes)?.line).toBe('dashed');
  });

  it('say how much too narrow it is and where, rounded against the maker, and mark the waist', () => {
    // The waist of 33 in stands at 50 in; 36 in is asked there.
    const fit = judged(44, 33, 36);
    expect(sayOnWood({ ...fit, conditions: [] }, imperial)).toMatch(
      /^nearly: 3( 1\/16)? in too narrow at (50|49 15\/16) in$/,
    );
    const view = fitView({ ...fit, conditions: [] }, fit.sizes);
    expect(view?.line).toBe('dotted');
    // 50 in along, half of 33 in to either side, in micrometres.
    expect(view?.tight.map(({ x, y }) => [x, y])).toEqual([
      [1_270_000, 419_100],
      [1_270_000, -419_100],
    ]);
  });

  it('name no place where a straight board is too narrow all along', () => {
    const fit = { ...judged(33, 33, 36), conditions: [] };
    expect(sayOnWood(fit, imperial)).toMatch(/^nearly: 3( 1\/16)? in too narrow$/);
    expect(fitView(fit, fit.sizes)?.tight).toEqual([]);
  });

  it('names only tops that are no larger than what was found', () => {
    const { fit } = judged(44, 33, 36).judged;
    if (fit.answer !== 'nearly') throw new Error(fit.answer);
    expect(sayWouldGive(fit.missing, imperial)).toMatch(/^Would give a top of 78 in × 3[23]/);
  });

  it('draw nothing for a no', () => {
    const fit = judged(12, 12, 36);
    expect(sayOnWood({ ...fit, conditions: [] }, imperial)).toBe('does not fit');
    expect(fitView({ ...fit, conditions: [] }, fit.sizes)).toBeUndefined();
  });
});

describe('the drawing', () => {
  it('is the very outline that was judged, with the top inside it and the bark on its live edges', () => {
    const fit = judged(40, 40, 36);
    const line = pieceLineOfATest({
      facts: { inStock: true, hold: 'free', flags: ['live-edge-left'], readings: [], form: 'slab' },
    });
    const view = fitView({ ...fit, line, conditions: [] }, fit.sizes);
    expect(view?.outline).toEqual(fit.outline);
    expect(view?.live).toEqual({ left: true, right: false });
    const { left, right, bottom, top } = boundsOf(view?.top ?? []);
    // 78 × 36 in, in micrometres.
    expect([right - left, top - bottom]).toEqual([1_981_200, 914_400]);
    const wood = boundsOf(fit.outline.ring);
    expect(left >= wood.left && right <= wood.right && bottom >= wood.bottom && top <= wood.top).toBe(true);
  });
});

describe('waste', () => {
  it('is what is neither top nor the offcut kept at one end, as parts of the whole', () => {
    const { waste = 0, offcut = 0 } = judged(40, 40, 36).judged;
    // The top, 78 × 36 of 100 × 40 in, pushed to one end, leaves 22 × 40 in whole: 22 %; 78 × 4 in are lost: 7.8 %.
    expect(offcut).toBeCloseTo(0.22, 3);
    expect(waste).toBeCloseTo(0.078, 3);
  });
});

describe('a condition as a sentence', () => {
  it('says how thin, rounded against the maker', () => {
    const condition: FitCondition = { code: 'too-thin', by: 3_300_000 as Nanometres, left: 38_000_000 as Nanometres };
    expect(sayCondition(condition, { prefer: 'metric', ...DATES })).toBe('Flattened it leaves 38 mm: 4 mm too thin.');
  });
});

describe('why a piece stands where it does', () => {
  it('says nothing of moisture where none was asked for', () => {
    const reasons = [{ about: 'dry', standing: 'for' }] as const;
    expect(sayRank(reasons, { moisture: false, prefer: 'metric' })).toEqual([]);
    expect(sayRank(reasons, { moisture: true, prefer: 'metric' })).toEqual(['It is dry enough.']);
  });
});

describe('the question', () => {
  const ask = { shape: 'rectangle', l: `6' 6"`, w: '36 1/2', r: '4', thick: '8/4', mc: '8,5 %', free: 'yes' };

  it('is read from the address to the nanometre, in the units of the workshop', () => {
    const { asked, read } = readQuestion(ask, { prefer: 'imperial', ...DATES });
    expect(asked).toBe(true);
    expect(read).toMatchObject({
      ok: true,
      value: {
        request: {
          shape: { kind: 'rectangle', length: 1_981_200_000, width: 927_100_000, cornerRadius: 101_600_000 },
          grainWindow: 5,
          edgeAllowance: 12_700_000,
          trims: { start: 50_800_000, end: 50_800_000 },
        },
        thickness: 50_800_000,
        mostTenths: 85,
        freeOnly: true,
      },
    });
  });

  it('asks nothing before a length is given', () => {
    expect(readQuestion({}, METRIC)).toMatchObject({ asked: false, typed: firstQuestion('metric') });
  });

  it('names every field that does not read at once and keeps all that was typed', () => {
    const bad = { l: '61/2', w: '', r: 'x', edge: '?', trim: '-1', grain: '90', thick: '0', mc: '900' };
    const { typed, read } = readQuestion(bad, { prefer: 'imperial', ...DATES });
    expect(typed).toMatchObject(bad);
    if (read.ok) throw new Error('It was read.');
    expect(Object.keys(read.error).sort()).toEqual(['edge', 'grain', 'l', 'mc', 'r', 'thick', 'trim', 'w']);
    expect(read.error.l).toContain('Put a space');
  });

  it('does not read what its shape does not have', () => {
    const { read } = readQuestion({ shape: 'round', l: '900', w: 'x', r: 'x', n: 'x' }, METRIC);
    expect(read).toMatchObject({ ok: true, value: { request: { shape: { kind: 'round', diameter: 900_000_000 } } } });
  });

  it.each([
    [{ l: '900', w: '500', r: '251' }, 'r'],
    [{ l: '16 m', w: '500' }, 'l'],
    [{ l: '900', w: '0' }, 'w'],
    [{ shape: 'superellipse', l: '900', w: '500', n: '1.4' }, 'n'],
  ])('refuses %o beside the field %s', (params, field) => {
    const { read } = readQuestion(params, METRIC);
    if (read.ok) throw new Error('It was read.');
    expect(Object.keys(read.error)).toEqual([field]);
  });

  it('is said back in chips', () => {
    const { read } = readQuestion(ask, { prefer: 'imperial', ...DATES });
    if (!read.ok) throw new Error('It was not read.');
    expect(
      sayQuestion(read.value, { prefer: 'imperial', ...DATES }).map(({ term, says }) => `${term} ${says}`),
    ).toEqual([
      'top 78 in × 36 1/2 in, corners 4 in',
      'finished 2 in',
      'moisture 8.5 % or less',
      'marked to fill kept out',
      'edges less 1/2 in',
      'ends less 2 in',
      'grain along, ±5°',
      'wood any species, free only',
    ]);
  });
});

describe('how much was looked at', () => {
  const none = {
    sizes: { a: 1, b: 1, curve: 'power', n: 2 },
    ranked: [],
    noes: [],
    together: [],
    togetherNoes: 0,
    unmeasured: [],
    packs: 0,
  } as const;

  it('says when pieces were left out, and what to do', () => {
    expect(sayLooked({ ...none, looked: 1, total: 1 })).toBe('1 piece was looked at: none fits.');
    expect(sayLooked({ ...none, looked: 400, total: 1500, cut: 'most' })).toContain('1,100 smaller ones were left out');
    expect(sayLooked({ ...none, looked: 12, total: 40, cut: 'time' })).toBe('12 pieces were looked at: none fits.');
    expect(sayLooked({ ...none, looked: 12, total: 40, cut: 'stopped' })).toContain('stopped with 28 left');
    expect(sayLooked({ ...none, looked: 2, total: 2 }, { of: 'pair' })).toBe('2 pairings were looked at: none fits.');
  });
});

describe('a question of two pieces', () => {
  const river = { l: '2100', w: '900', thick: '40', make: 'river', gap: '80', back: '60' };

  it('asks for a river with its least width and the wood at the backs', () => {
    expect(readQuestion(river, METRIC).read).toMatchObject({
      ok: true,
      value: { make: { of: 'river', river: { least: 80_000_000, leastWood: 60_000_000, thickness: 40_000_000 } } },
    });
  });

  it('needs a thickness for a river, a moisture for a day and a thickness for a weight', () => {
    const wrong = (params: Record<string, string>) => {
      const { read } = readQuestion({ l: '900', w: '500', ...params }, METRIC);
      return read.ok ? [] : Object.keys(read.error);
    };
    expect(wrong({ make: 'river' })).toEqual(['thick']);
    expect(wrong({ by: '1 Mar 2027', mc: '' })).toEqual(['mc']);
    expect(wrong({ by: '1 Mar 2026' })).toEqual(['by']);
    expect(wrong({ weight: '40 kg' })).toEqual(['thick']);
    expect(wrong({ weight: '40 kg', thick: '40', by: '1 Mar 2027' })).toEqual([]);
  });

  it('keeps every tick and choice of the address', () => {
    const { typed } = readQuestion({ ...river, fill: 'yes', heart: 'yes', best: 'figure' }, METRIC);
    expect(typed).toMatchObject({ make: 'river', fill: true, heart: true, free: false, best: 'figure' });
    expect(readQuestion({}, METRIC).typed).toMatchObject({ make: 'one', fill: true, heart: false, best: 'balanced' });
  });
});
