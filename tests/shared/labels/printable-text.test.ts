import { describe, expect, it } from 'vitest';
import { printableText } from '@/shared/labels/printable-text';

const latin = { draws: (character: string) => (character.codePointAt(0) ?? 0) < 0x250 };

describe('printableText', () => {
  it('leaves out pictographs, with their joiners and skin tones', () => {
    expect(printableText('Oil 🛢️\tsatin 👩🏽‍🔧 🇩🇰', latin)).toBe('Oil satin');
  });

  it('shows a letter the typeface lacks as a question mark', () => {
    expect(printableText('漆 urushi', latin)).toBe('? urushi');
  });

  it('joins a letter and its mark into one, and drops marks no letter absorbs', () => {
    expect(printableText('Ka\u0308the g\u0331\u0323', latin)).toBe('Käthe g');
  });

  it('makes one blank of line ends, tabs and unusual blanks', () => {
    expect(printableText(' a\r\n\u00a0\u2003b ', latin)).toBe('a b');
  });

  it('drops half surrogates and direction marks', () => {
    expect(printableText('a\ud800\u202eb', latin)).toBe('ab');
  });
});
