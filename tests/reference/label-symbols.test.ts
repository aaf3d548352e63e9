import { describe, expect, it } from 'vitest';
import { symbolBars } from '@/app/_server/labels/symbol-bars';
import { LABEL_FORMATS } from '@/shared/labels/label-formats';
import { LABEL_SYMBOLS, type Symbology } from '@/shared/labels/label-symbols';

const CODE = 'C-4K7QM2';

function grid(symbology: Symbology): boolean[][] {
  const { modules } = LABEL_SYMBOLS[symbology];
  const rows = Array.from({ length: modules }, () => Array.from({ length: modules }, () => false));
  for (const bar of symbolBars(CODE, symbology)) rows[bar.y]?.fill(true, bar.x, bar.x + bar.length);
  return rows;
}

/** ISO/IEC 16022:2006 (Data Matrix ECC 200), figures quoted from memory of the standard. */
describe('ISO/IEC 16022:2006, Data Matrix', () => {
  it('asks for a quiet zone of one module on all four sides; ours is wider', () => {
    expect(LABEL_SYMBOLS['data-matrix'].quiet).toBeGreaterThanOrEqual(1);
  });

  it('has a square symbol of 14 modules (table 7: 8 data and 10 error codewords)', () => {
    expect(LABEL_SYMBOLS['data-matrix'].modules).toBe(14);
  });

  it('has a solid finder at left and bottom, and alternating modules at top and right', () => {
    const rows = grid('data-matrix');
    expect(rows.every((row) => row[0])).toBe(true);
    expect(rows.at(-1)?.every(Boolean)).toBe(true);
    expect(rows[0]).toEqual(Array.from({ length: 14 }, (_, index) => index % 2 === 0));
    expect(rows.map((row) => row[13])).toEqual(Array.from({ length: 14 }, (_, index) => index % 2 === 1));
  });
});

/** ISO/IEC 18004:2015 (QR Code), figures quoted from memory of the standard. */
describe('ISO/IEC 18004:2015, QR Code', () => {
  it('asks for a quiet zone of four modules on all four sides', () => {
    expect(LABEL_SYMBOLS.qr.quiet).toBeGreaterThanOrEqual(4);
  });

  it('has 17 + 4 × version modules a side; ours is version 1', () => {
    expect(LABEL_SYMBOLS.qr.modules).toBe(17 + 4 * 1);
  });

  it('has 7 by 7 finder patterns in three corners', () => {
    const rows = grid('qr');
    const finder = ['#######', '#.....#', '#.###.#', '#.###.#', '#.###.#', '#.....#', '#######'];
    for (const [x, y] of [
      [0, 0],
      [14, 0],
      [0, 14],
    ] as const) {
      const corner = rows.slice(y, y + 7).map((row) =>
        row
          .slice(x, x + 7)
          .map((dark) => (dark ? '#' : '.'))
          .join(''),
      );
      expect(corner).toEqual(finder);
    }
  });

  it('carries error correction level H in its format information (table 12: level H is 10, mask 101010000010010)', () => {
    const rows = grid('qr');
    const bits = [rows[8]?.[0], rows[8]?.[1]].map((dark) => (dark ? 1 : 0));
    expect([(bits[0] ?? 0) ^ 1, (bits[1] ?? 0) ^ 0]).toEqual([1, 0]);
  });
});

describe('paper sizes', () => {
  it('A4 is 210 × 297 mm (ISO 216:2007, table 1)', () => {
    for (const id of ['a4-3x8', 'a4-2x7'] as const) {
      expect(LABEL_FORMATS[id]).toMatchObject({ page: { width: 210, height: 297 } });
    }
  });

  it('US Letter is 8 1/2 × 11 in, an inch being 25.4 mm (ANSI/ASME Y14.1, size A)', () => {
    const format = LABEL_FORMATS['letter-3x10'];
    const paper = format.kind === 'sheet' ? format.page : format.label;
    expect(paper.width).toBeCloseTo(8.5 * 25.4, 9);
    expect(paper.height).toBeCloseTo(11 * 25.4, 9);
  });
});
