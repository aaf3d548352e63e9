import { describe, expect, it } from 'vitest';
import { nanometres } from '@/shared/units/nanometres';
import { sayPieceFace, sayPieceSize, sayWidths } from '@/shared/wood/say-piece-size';

const INCH = 25_400_000;
const slab = {
  lengthNm: nanometres(89 * INCH),
  widthStartNm: nanometres(30 * INCH),
  widthMiddleNm: nanometres(23.125 * INCH),
  widthEndNm: nanometres(26 * INCH),
  thicknessNm: nanometres(2 * INCH),
};

describe('how large a piece is said to be', () => {
  it('gives every measure its word, the width from the narrowest to the widest', () => {
    expect(sayPieceSize(slab, { prefer: 'imperial' })).toBe('7\' 5" long, 23 1/8" to 30" wide, 2" thick');
    expect(sayPieceFace(slab, { prefer: 'imperial' })).toBe('7\' 5" × 23 1/8" to 30"');
  });

  it('says the unit of millimetres once', () => {
    const mm = (count: number) => nanometres(count * 1_000_000);
    const board = { ...slab, lengthNm: mm(2600), widthStartNm: mm(650), widthMiddleNm: mm(720), widthEndNm: mm(700) };
    expect(sayWidths(board, { prefer: 'metric' })).toBe('650 to 720 mm');
    expect(sayPieceFace(board, { prefer: 'metric' })).toBe('2,600 mm × 650 to 720 mm');
  });

  it('says one width where they print the same', () => {
    const even = { ...slab, widthStartNm: slab.widthMiddleNm, widthEndNm: slab.widthMiddleNm };
    expect(sayWidths(even, { prefer: 'imperial' })).toBe('23 1/8"');
  });
});
