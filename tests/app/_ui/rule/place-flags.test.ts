import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Flag, placeFlags, type Spot } from '@/app/_ui/rule/place-flags';
import { roomFor } from '@/app/_ui/rule/rule-ticks';

const WIDTH = 290;
const span = ({ at, words, side }: Flag & Spot): [number, number] =>
  side === 'right' ? [at * WIDTH, at * WIDTH + roomFor(words)] : [at * WIDTH - roomFor(words), at * WIDTH];

describe('placeFlags', () => {
  it('uses one row when the flags stand apart', () => {
    const placed = placeFlags(
      [
        { at: 0.1, words: 'today' },
        { at: 0.6, words: 'lift 3' },
      ],
      WIDTH,
    );
    expect(placed.map(({ row, side }) => [row, side])).toEqual([
      [0, 'right'],
      [0, 'right'],
    ]);
  });

  it('turns a flag at the end of the rule to the left', () => {
    expect(placeFlags([{ at: 0.97, words: 'lift 3' }], WIDTH)[0]).toMatchObject({ side: 'left', row: 0 });
  });

  it('gives two flags on the same day a side each', () => {
    const placed = placeFlags(
      [
        { at: 0.5, words: 'today' },
        { at: 0.5, words: 'lift 1' },
      ],
      WIDTH,
    );
    expect(new Set(placed.map(({ side }) => side)).size).toBe(2);
  });

  it('never lays words over words, nor a line through words, wherever three flags stand', () => {
    const place = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(place, place, place, (a, b, c) => {
        const placed = placeFlags(
          [
            { at: a, words: 'opened' },
            { at: b, words: 'today' },
            { at: c, words: 'lift 3' },
          ],
          WIDTH,
        );
        for (const one of placed) {
          const [start, end] = span(one);
          expect(start).toBeGreaterThanOrEqual(0);
          expect(end).toBeLessThanOrEqual(WIDTH);
          for (const other of placed) {
            if (other === one) continue;
            const [otherStart, otherEnd] = span(other);
            const overlap = Math.min(end, otherEnd) - Math.max(start, otherStart);
            if (other.row === one.row) expect(overlap).toBeLessThanOrEqual(0);
            const line = other.at * WIDTH;
            if (other.row > one.row) expect(line > start && line < end).toBe(false);
          }
        }
      }),
      { numRuns: 200 },
    );
  });
});
