import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wrapText } from '@/shared/labels/wrap-text';

const letters = (text: string) => Array.from(text).length;

describe('wrapText', () => {
  it('breaks between words', () => {
    expect(wrapText('walnut slab', 7, 2, letters)).toEqual({ lines: ['walnut', 'slab'], broken: false, cut: false });
  });

  it('keeps a short number or letter with the word before it', () => {
    expect(wrapText('Deep-pour resin, part B', 22, 3, letters).lines).toEqual(['Deep-pour resin,', 'part B']);
    expect(wrapText('moisture content 9 %', 18, 3, letters).lines).toEqual(['moisture', 'content 9 %']);
  });

  it('keeps words in brackets together where they fit', () => {
    expect(wrapText('good to 12 Dec 2026 (best before)', 26, 3, letters).lines).toEqual([
      'good to 12 Dec 2026',
      '(best before)',
    ]);
  });

  it('says when words that belong together had to be parted', () => {
    expect(wrapText('Cabinet 2', 8, 2, letters)).toEqual({ lines: ['Cabinet', '2'], broken: true, cut: false });
  });

  it('breaks a word that is wider than a line, and says so', () => {
    expect(wrapText('abcdefgh', 3, 4, letters)).toEqual({ lines: ['abc', 'def', 'gh'], broken: true, cut: false });
  });

  it('ends in an ellipsis when the lines allowed do not hold the text', () => {
    expect(wrapText('oil for the long table', 8, 2, letters)).toEqual({
      lines: ['oil for', 'the lon…'],
      broken: false,
      cut: true,
    });
  });

  it('has no lines for an empty text', () => {
    expect(wrapText('', 5, 2, letters)).toEqual({ lines: [], broken: false, cut: false });
  });

  it('keeps every line within the width and, uncut, loses no letter', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 120 }),
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 1, max: 8 }),
        (text, width, most) => {
          const { lines, cut } = wrapText(text, width, most, letters);
          expect(lines.length).toBeLessThanOrEqual(most);
          for (const line of lines) expect(letters(line)).toBeLessThanOrEqual(width);
          if (!cut) expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
        },
      ),
    );
  });
});
