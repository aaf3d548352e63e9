import { describe, expect, it } from 'vitest';
import { labelCodeOf, labelSymbolText } from '@/shared/labels/symbol-text';

describe('labelSymbolText', () => {
  it('leaves out the dash', () => {
    expect(labelSymbolText('C-4K7QM2')).toBe('C4K7QM2');
  });

  it('refuses what the fixed symbol could not hold', () => {
    for (const code of ['', 'C-4K7QM', 'C-4K7QM22', '4-4K7QM2', 'C-4K7Q M'])
      expect(() => labelSymbolText(code)).toThrow(/shape/);
  });
});

describe('labelCodeOf', () => {
  it('puts a code in capitals with its dash', () => {
    expect(labelCodeOf(' c4k7qm2 ')).toBe('C-4K7QM2');
    expect(labelCodeOf('C-4K7QM2')).toBe('C-4K7QM2');
  });

  it('knows another shape', () => {
    expect(labelCodeOf('C--4K7QM')).toBeUndefined();
  });
});
