import { describe, expect, it } from 'vitest';
import { mod37Check } from '@/shared/scan-codes/iso-7064-mod-37-2';
import { mod97 } from '@/shared/scan-codes/iso-7064-mod-97-10';

// Sources: ISO/IEC 7064:2003 as exercised by arthurdejong/python-stdnum 006192e, doctests of stdnum.iso7064.
describe('ISO/IEC 7064', () => {
  it('MOD 37-2 gives the published check character', () => {
    expect(mod37Check('G123489654321')).toBe('Y');
  });

  it('MOD 37-2 gives the same character for the sum written out by its definition', () => {
    const characters = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*';
    for (const text of ['0', 'A', 'C4V9T', 'G123489654321', 'ZZZZZZ', 'S00000']) {
      const sum = [...text].reduce((total, character, index) => {
        const weight = 2 ** (text.length - index);
        return total + characters.indexOf(character) * weight;
      }, 0);
      const check = [...characters].find((_, value) => (sum + value) % 37 === 1);
      expect(mod37Check(text)).toBe(check);
    }
  });

  it('MOD 97-10 leaves 1 over a text with its published check digits', () => {
    expect(mod97('79444')).toBe(1);
    expect(mod97('79445')).not.toBe(1);
  });
});
