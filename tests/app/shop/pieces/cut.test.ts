import { describe, expect, it } from 'vitest';
import { isBelowHouse, likelyForm } from '@/app/(shop)/pieces/[label]/cut/become';
import { planCut } from '@/app/(shop)/pieces/[label]/cut/plan-cut';
import { tapLine } from '@/app/(shop)/pieces/[label]/cut/tap-line';
import { newLine, readKerf, readLines, type TypedLine } from '@/app/(shop)/pieces/[label]/cut/typed-cut';
import { pairChoices } from '@/app/(shop)/pieces/pair-choices';
import { cutWood } from '@/shared/outline/cut-wood';
import { unwrap } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';
import { rectangle } from '@/tests/shared/outline/shapes-of-wood';
import { pieceLineOfATest } from '@/tests/support/piece-line-of-a-test';

const slab = rectangle(2000, 500);
const line = (more: Partial<TypedLine>): TypedLine => ({ ...newLine(more.way ?? 'cross'), ...more });
const house = { lengthNm: nanometres(300_000_000), widthNm: nanometres(100_000_000), kerfNm: nanometres(3_200_000) };
const old = {
  form: 'slab' as const,
  flags: ['live-edge-left' as const, 'live-edge-right' as const],
  outline: slab,
};
const read = (typed: TypedLine[], strict = false) => readLines(typed, '3.2', slab, 'metric', strict);

describe('a cut as it is typed', () => {
  it('is a distance from an end, from the chalk line, or in from an edge', () => {
    const points = (more: Partial<TypedLine>) => read([line(more)]).lines[0]?.line.points;
    expect(points({ distance: '800' })?.map(({ x }) => x)).toEqual([800_000, 800_000]);
    expect(points({ from: 'end', distance: '800' })?.map(({ x }) => x)).toEqual([1_200_000, 1_200_000]);
    expect(points({ way: 'rip', from: 'line', distance: '-50' })?.map(({ y }) => y)).toEqual([-50_000, -50_000]);
    expect(points({ way: 'rip', from: 'left', distance: '50' })?.map(({ y }) => y)).toEqual([200_000, 200_000]);
    expect(points({ way: 'rip', from: 'right', distance: '4 in' })?.map(({ y }) => y)).toEqual([-148_400, -148_400]);
  });

  it('takes the kerf with every line but a break', () => {
    const both = read([line({ distance: '800' }), line({ way: 'break', points: '900; -250\n950; 250' })]);
    expect(both.lines.map((each) => each.line.kerf)).toEqual([3200, 0]);
    const broken = readLines([line({ way: 'break', points: '900; -250\n950; 250' })], '', slab, 'metric', true);
    expect(broken.problems).toEqual({});
  });

  it('says nothing of what is not typed yet, until it is sent', () => {
    const typed = [line({}), line({ way: 'free', points: '1; 2' })];
    expect(read(typed)).toMatchObject({ lines: [], problems: {} });
    expect(Object.keys(read(typed, true).problems)).toEqual(['lines.0.distance', 'lines.1.points']);
    expect(read([line({ distance: '2000' })]).problems).toEqual({
      'lines.0.distance': 'That is beyond the end of the piece.',
    });
    expect(read([line({ distance: 'long' })]).problems['lines.0.distance']).toBeTruthy();
    expect(read([line({ way: 'free', points: 'here' })]).problems['lines.0.points']).toMatch(/Line 1 is no point/);
  });

  it('has a kerf that a saw can take', () => {
    expect(readKerf('3.2', 'metric')).toBe(3200);
    expect(readKerf('1/8', 'imperial')).toBe(3175);
    for (const text of ['', '0', '60', 'thin']) expect(typeof readKerf(text, 'metric')).toBe('string');
  });
});

describe('a tap on the drawing', () => {
  const at = { x: 750_400, y: 120_000 };

  it('sets the distance of the line in hand, however that is counted', () => {
    const tapped = (more: Partial<TypedLine>) => tapLine(line(more), at, slab, 'metric').distance;
    expect(tapped({})).toBe('750 mm');
    expect(tapped({ from: 'end' })).toBe('1250 mm');
    expect(tapped({ way: 'rip', from: 'line' })).toBe('120 mm');
    expect(tapped({ way: 'rip', from: 'left' })).toBe('130 mm');
    expect(tapped({ way: 'rip', from: 'right' })).toBe('370 mm');
  });

  it('adds a point to a drawn line', () => {
    const one = tapLine(line({ way: 'break' }), at, slab, 'metric');
    expect(tapLine(one, { x: 1_000_000, y: -90_000 }, slab, 'metric').points).toBe('750 mm; 120 mm\n1000 mm; -90 mm');
  });
});

describe('what a piece most likely becomes', () => {
  it('is an offcut below the house size, a board when ripped of its edges, else what it was', () => {
    const cut = unwrap(
      cutWood(slab, [
        {
          points: [
            { x: 250_000, y: 0 },
            { x: 250_000, y: 1 },
          ],
          kerf: 3200,
        },
        {
          points: [
            { x: 0, y: 100_000 },
            { x: 1, y: 100_000 },
          ],
          kerf: 3200,
          within: { x: 1_000_000, y: 0 },
        },
        {
          points: [
            { x: 0, y: -100_000 },
            { x: 1, y: -100_000 },
          ],
          kerf: 3200,
          within: { x: 1_000_000, y: 0 },
        },
      ]),
    );
    expect(cut.map((part) => likelyForm(old, slab, part, house))).toEqual(['offcut', 'slab', 'board', 'slab']);
    expect(cut.map((part) => isBelowHouse(part, house))).toEqual([true, false, false, false]);
    expect(likelyForm({ form: 'sheet', flags: [] }, slab, cut[1] ?? slab, house)).toBe('sheet');
  });

  it('is said with its size and its part of the wood, and can be chosen otherwise', () => {
    const plan = planCut(old, read([line({ distance: '500' })]).lines, house, 'metric', { 1: 'scrap' });
    expect(plan).toMatchObject({
      rows: [
        { size: '498.4 mm × 500 mm', share: '24.9 % of the wood', as: 'slab' },
        { size: '1,498.4 mm × 500 mm', share: '74.9 % of the wood', as: 'scrap' },
      ],
      lost: '0.2 % sawdust',
      fault: undefined,
    });
    const miss = read([line({ distance: '500' }), line({ way: 'rip', from: 'line', distance: '400' })]).lines;
    expect(planCut(old, miss, house, 'metric', {}).fault).toBe('Cut 2 misses the wood.');
    expect(planCut(old, [], house, 'metric', {})).toMatchObject({ rows: [], fault: undefined });
  });
});

describe('the other half of a bookmatch', () => {
  const sister = (stockId: number, flitchNumber: number | null, more: object = {}) => ({
    ...pieceLineOfATest(),
    stockId,
    label: `S00000${stockId}` as never,
    flitch: 'A',
    flitchNumber,
    ...more,
  });

  it('is looked for among the neighbours in the log, then the nearest, of those that are free', () => {
    const me = sister(1, 3);
    const taken = { stockId: 9, label: 'S000009' as never, inStock: true };
    const flitch = [me, sister(2, 7), sister(3, 4), sister(4, 2, { pairedWith: taken }), sister(5, 5), sister(6, null)];
    expect(pairChoices(me, flitch).map(({ label }) => label)).toEqual(['S000003', 'S000005', 'S000002', 'S000006']);
    expect(pairChoices(me, flitch)[0]?.words).toMatch(/no\. 4, its neighbour$/);
  });
});
