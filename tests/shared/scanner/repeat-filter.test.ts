import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GONE_MS, NOTHING_IN_VIEW, SWAPPED_MS, seeCode } from '@/app/_ui/scanner/repeat-filter';

/** The codes told, from sightings of `[code, time]`. */
function told(sightings: readonly (readonly [string, number])[]): string[] {
  let inView = NOTHING_IN_VIEW;
  return sightings.flatMap(([name, now]) => {
    const seen = seeCode(name, now, inView);
    inView = seen.inView;
    return seen.isNew ? [`${name}@${now}`] : [];
  });
}

describe('the same label is told once while it stays in view', () => {
  it('however long that is', () => {
    expect(told(Array.from({ length: 100 }, (_, at) => ['A', at * 100] as const))).toEqual(['A@0']);
  });

  it('and again when it was away for the whole wait', () => {
    expect(
      told([
        ['A', 0],
        ['A', GONE_MS - 1],
      ]),
    ).toEqual(['A@0']);
    expect(
      told([
        ['A', 0],
        ['A', GONE_MS],
      ]),
    ).toEqual(['A@0', `A@${GONE_MS}`]);
  });

  it('and sooner when another code came between', () => {
    expect(
      told([
        ['A', 0],
        ['B', 300],
        ['A', SWAPPED_MS],
      ]),
    ).toEqual(['A@0', 'B@300', `A@${SWAPPED_MS}`]);
    expect(
      told([
        ['A', 0],
        ['B', 300],
        ['A', SWAPPED_MS - 1],
      ]),
    ).toEqual(['A@0', 'B@300']);
  });

  it('and two labels on one tin, seen in turn frame by frame, are told once each', () => {
    expect(told(Array.from({ length: 200 }, (_, at) => [at % 2 ? 'B' : 'A', at * 60] as const))).toEqual([
      'A@0',
      'B@60',
    ]);
  });

  it('and a code is never told twice within the shorter wait', () => {
    const sighting = fc.tuple(fc.constantFrom('A', 'B', 'C'), fc.integer({ min: 0, max: 700 }));
    fc.assert(
      fc.property(fc.array(sighting, { maxLength: 80 }), (steps) => {
        const last = new Map<string, number>();
        const times = steps.map((_, at) => steps.slice(0, at + 1).reduce((sum, [, gap]) => sum + gap, 0));
        for (const entry of told(steps.map(([name], at) => [name, times[at] ?? 0] as const))) {
          const [name = '', at = ''] = entry.split('@');
          expect(Number(at) - (last.get(name) ?? Number.NEGATIVE_INFINITY)).toBeGreaterThanOrEqual(SWAPPED_MS);
          last.set(name, Number(at));
        }
      }),
    );
  });
});
