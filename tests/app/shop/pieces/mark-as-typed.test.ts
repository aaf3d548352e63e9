import { describe, expect, it } from 'vitest';
import { marksOffTheWood } from '@/app/_server/shapes/off-the-wood';
import { markAsTyped } from '@/app/(shop)/pieces/[label]/marks/mark-as-typed';
import { sayMarks } from '@/app/(shop)/pieces/[label]/marks/say-marks';
import { readMark } from '@/app/(shop)/pieces/[label]/marks/typed-mark';
import type { PieceMarks } from '@/shared/outline/piece-marks';
import { mm, rectangle } from '../../../shared/outline/shapes-of-wood';

const SLAB = rectangle(2000, 600);
const MARKS: PieceMarks = {
  defects: [
    {
      id: 1,
      note: 'Sound',
      kind: 'knot',
      place: { shape: 'circle', centre: { x: 900_250, y: -85_100 }, radius: 40_000 },
      depth: { face: 'B', depth: mm(12) },
      decision: 'fill',
    },
    {
      id: 3,
      note: '',
      kind: 'split',
      place: {
        shape: 'polygon',
        ring: [
          { x: 1_200_000, y: -3_175 },
          { x: 1_700_000, y: -3_175 },
          { x: 1_700_000, y: 3_175 },
        ],
      },
      depth: { face: 'through' },
      decision: 'keep-out',
    },
  ],
  endChecks: [{ id: 2, note: '', end: 'end', depth: mm(150) }],
  straps: [
    { id: 4, note: '', from: { x: 400_000, y: -300_000 }, to: { x: 400_000, y: 300_000 } },
    { id: 5, note: '', from: { x: 1_500_000, y: -300_000 }, to: { x: 1_480_000, y: 300_000 } },
  ],
};

describe('a mark that is to be changed', () => {
  it.each(['metric', 'imperial'] as const)('is typed so that it reads as it was, to the micrometre: %s', (prefer) => {
    for (const id of [1, 2, 3, 4, 5]) {
      const typed = markAsTyped(MARKS, id, prefer);
      if (!typed) throw new Error(`No mark ${id}`);
      const { mark, problems } = readMark(typed, SLAB, prefer, true);
      expect(problems).toEqual({});
      const was = [...MARKS.defects, ...MARKS.endChecks, ...MARKS.straps].find((each) => each.id === id);
      expect({ id, ...mark, is: undefined }).toEqual({ ...was, is: undefined });
    }
  });

  it('is none where it was taken off meanwhile', () => {
    expect(markAsTyped(MARKS, 9, 'metric')).toBeUndefined();
  });
});

describe('the marks of a piece in words', () => {
  it('say what, what is done with it and where, in the order they were made', () => {
    expect(sayMarks(MARKS, 'metric').map(({ title, where }) => `${title}: ${where}`)).toEqual([
      'Knot, filled with resin: 80 mm across, 900 mm along, 85 mm right of the line; 12 mm deep from face B',
      'End check at the end: 150 mm in: that much is trimmed',
      'Split, kept out: from 1,200 mm to 1,700 mm along, on the line; right through',
      'Strap: 400 mm along',
      'Strap: from 1,480 mm to 1,500 mm along',
    ]);
  });

  it('name those that lie off the wood since it was measured shorter', () => {
    expect(marksOffTheWood(SLAB, MARKS)).toEqual([]);
    expect(marksOffTheWood(rectangle(1000, 600), MARKS)).toEqual([3, 5]);
  });
});
