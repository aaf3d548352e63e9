import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineAcross, pieceOutline } from '@/app/_ui/piece/piece-outline';

const width = fc.integer({ min: 200, max: 1500 });

describe('pieceOutline', () => {
  it('is as wide as measured at the start, the middle and the end, bark or no bark', () => {
    fc.assert(
      fc.property(
        width,
        width,
        width,
        fc.boolean(),
        fc.boolean(),
        fc.string(),
        (start, middle, end, left, right, name) => {
          const outline = pieceOutline(
            { lengthMm: 2400, widthsMm: { start, middle, end }, liveEdges: { left, right } },
            name,
          );
          [start, middle, end].forEach((measured, index) => {
            const step = index * 24;
            expect((outline.right[step]?.y ?? 0) - (outline.left[step]?.y ?? 0)).toBeCloseTo(measured, 6);
          });
        },
      ),
    );
  });

  it('draws the same piece the same way each time, and another piece otherwise', () => {
    const shape = {
      lengthMm: 2400,
      widthsMm: { start: 900, middle: 900, end: 900 },
      liveEdges: { left: true, right: true },
    };
    expect(pieceOutline(shape, 'S-1')).toEqual(pieceOutline(shape, 'S-1'));
    expect(pieceOutline(shape, 'S-1')).not.toEqual(pieceOutline(shape, 'S-2'));
  });

  it('leaves a sawn edge straight where the widths are equal', () => {
    const { left } = pieceOutline(
      { lengthMm: 2400, widthsMm: { start: 900, middle: 900, end: 900 }, liveEdges: { left: false, right: true } },
      'S-1',
    );
    for (const { y } of left) expect(y).toBeCloseTo(-450, 6);
  });

  it('runs a line across half way along the middle of the piece', () => {
    const outline = pieceOutline(
      { lengthMm: 2400, widthsMm: { start: 600, middle: 800, end: 700 }, liveEdges: { left: false, right: false } },
      'S-1',
    );
    for (const { y } of lineAcross(outline, 0.5)) expect(y).toBeCloseTo(0, 6);
  });
});
