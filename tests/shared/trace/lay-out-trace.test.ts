import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countCrossings } from '@/shared/trace/count-crossings';
import { layOutTrace } from '@/shared/trace/lay-out-trace';
import { rankTrace } from '@/shared/trace/rank-trace';
import { TRACE_KINDS, type TraceEdge, type TraceKey, traceKey } from '@/shared/trace/trace-graph';

const key = (text: string) => text as TraceKey;
const edge = (from: string, to: string): TraceEdge => ({ from: key(from), to: key(to) });

const anyKey = fc
  .tuple(fc.constantFrom(...TRACE_KINDS), fc.integer({ min: 1, max: 6 }))
  .map(([k, id]) => traceKey(k, id));
const anyGraph = fc.record({
  keys: fc.array(anyKey, { maxLength: 30 }),
  edges: fc.array(fc.record({ from: anyKey, to: anyKey }), { maxLength: 60 }),
});

/** Crossings counted pair by pair. */
function bare(columns: string[][], lines: [string, string][]): number {
  const at = new Map(columns.flatMap((slots, column) => slots.map((slot, row) => [slot, { column, row }] as const)));
  const real = lines.flatMap(([from, to]) => {
    const [a, b] = [at.get(from), at.get(to)];
    return a && b && b.column === a.column + 1 ? [{ column: a.column, left: a.row, right: b.row }] : [];
  });
  let crossings = 0;
  for (const [nr, one] of real.entries()) {
    for (const other of real.slice(nr + 1)) {
      if (one.column === other.column && (one.left - other.left) * (one.right - other.right) < 0) crossings += 1;
    }
  }
  return crossings;
}

describe('the columns of a trace', () => {
  it('run from lots by containers, lifts and jobs to pieces, faults last, none left empty', () => {
    const keys = ['fault:1', 'piece:1', 'job:1', 'lift:1', 'container:1', 'lot:1'].map(key);
    expect([...rankTrace(keys, []).values()]).toEqual([5, 4, 3, 2, 1, 0]);
    expect([...rankTrace([key('job:1'), key('lot:1')], []).values()]).toEqual([1, 0]);
  });

  it('put a kept sample beside the jobs, and a fault after it', () => {
    const keys = ['fault:1', 'sample:1', 'job:1', 'lift:1'].map(key);
    expect([...rankTrace(keys, []).values()]).toEqual([2, 1, 1, 0]);
    const lines = [edge('lift:1', 'sample:1'), edge('lift:1', 'job:1'), edge('job:1', 'fault:1')];
    const layout = layOutTrace(keys, lines);
    expect([layout.columns, layout.rows, layout.lines]).toMatchObject([3, 2, { length: 3 }]);
  });

  it('go on by one for each cut', () => {
    const keys = ['piece:3', 'piece:2', 'piece:1'].map(key);
    const ranks = rankTrace(keys, [edge('piece:1', 'piece:2'), edge('piece:2', 'piece:3')]);
    expect([...ranks]).toEqual([
      ['piece:3', 2],
      ['piece:2', 1],
      ['piece:1', 0],
    ]);
  });
});

describe('the picture of a trace', () => {
  it('is one row where one thing leads to the next', () => {
    const keys = ['lot:1', 'container:2', 'lift:3', 'job:4'].map(key);
    const layout = layOutTrace(keys, [
      edge('lot:1', 'container:2'),
      edge('container:2', 'lift:3'),
      edge('lift:3', 'job:4'),
    ]);
    expect(layout).toMatchObject({ columns: 4, rows: 1 });
    expect(layout.spots.map(({ column, row }) => [column, row])).toEqual([
      [0, 0],
      [1, 0],
      [2, 0],
      [3, 0],
    ]);
  });

  it('uncrosses what can be drawn without a crossing', () => {
    const keys = ['lot:1', 'lot:2', 'container:1', 'container:2', 'job:1', 'job:2'].map(key);
    const edges = [
      edge('lot:1', 'container:2'),
      edge('lot:2', 'container:1'),
      edge('container:1', 'job:2'),
      edge('container:2', 'job:1'),
    ];
    const { spots } = layOutTrace(keys, edges);
    const row = (name: string) => spots.find((spot) => spot.key === name)?.row;
    expect(row('container:2')).toBe(row('lot:1'));
    expect(row('container:1')).toBe(row('lot:2'));
    expect(row('job:1')).toBe(row('container:2'));
  });

  it('keeps a row free for a line that passes a column', () => {
    const keys = ['container:1', 'lift:1', 'job:1', 'job:2'].map(key);
    const layout = layOutTrace(keys, [
      edge('container:1', 'lift:1'),
      edge('lift:1', 'job:1'),
      edge('container:1', 'job:2'),
    ]);
    const past = layout.lines.find(({ to }) => to === 'job:2');
    expect(past?.through.map(({ column }) => column)).toEqual([0, 1, 2]);
    const lift = layout.spots.find((spot) => spot.key === 'lift:1');
    expect(past?.through[1]?.row).not.toBe(lift?.row);
    expect(layout.rows).toBe(2);
  });

  it('is nothing for nothing, and leaves out lines to what is not there', () => {
    expect(layOutTrace([], [edge('lot:1', 'job:1')])).toEqual({ spots: [], lines: [], columns: 0, rows: 0 });
    expect(layOutTrace([key('lot:1')], [edge('lot:1', 'job:1')]).lines).toEqual([]);
  });

  it('never puts two things in one spot, shows each once, and draws every line to the right', () => {
    fc.assert(
      fc.property(anyGraph, ({ keys, edges }) => {
        const layout = layOutTrace(keys, edges);
        expect(new Set(layout.spots.map((spot) => spot.key))).toEqual(new Set(keys));
        const passed = layout.lines.flatMap(({ through }) => through.slice(1, -1));
        const taken = [...layout.spots, ...passed].map(({ column, row }) => `${column}/${row}`);
        expect(new Set(taken).size).toBe(taken.length);
        for (const { through } of layout.lines) {
          for (const [nr, at] of through.entries()) expect(at.column).toBe((through[0]?.column ?? 0) + nr);
        }
        for (const { row, column } of layout.spots) {
          expect(row).toBeGreaterThanOrEqual(0);
          expect(row).toBeLessThanOrEqual(layout.rows - 1);
          expect(column).toBeLessThan(layout.columns);
        }
      }),
      { numRuns: 150 },
    );
  });

  it('is the same picture every time', () => {
    fc.assert(
      fc.property(anyGraph, ({ keys, edges }) => {
        expect(layOutTrace(keys, edges)).toEqual(layOutTrace([...keys], [...edges]));
      }),
      { numRuns: 50 },
    );
  });
});

describe('crossings', () => {
  it('are counted as the pairs that cross', () => {
    expect(
      countCrossings(
        [
          ['a', 'b'],
          ['c', 'd'],
        ],
        [
          ['a', 'd'],
          ['b', 'c'],
        ],
      ),
    ).toBe(1);
    // K3,3 in any order crosses nine times: (3 choose 2) squared.
    const all = ['a', 'b', 'c'].flatMap((from) => ['d', 'e', 'f'].map((to) => [from, to] as const));
    expect(
      countCrossings(
        [
          ['a', 'b', 'c'],
          ['d', 'e', 'f'],
        ],
        all,
      ),
    ).toBe(9);
  });

  it('are as many as counted pair by pair', () => {
    const slots = (side: string) => fc.integer({ min: 0, max: 7 }).map((nr) => `${side}${nr}`);
    const column = (side: string) => Array.from({ length: 8 }, (_, nr) => `${side}${nr}`);
    fc.assert(
      fc.property(fc.uniqueArray(fc.tuple(slots('l'), slots('r')), { selector: String, maxLength: 30 }), (lines) => {
        const columns = [column('l'), column('r')];
        expect(countCrossings(columns, lines)).toBe(bare(columns, lines));
      }),
    );
  });
});
