import { describe, expect, it } from 'vitest';
import { unwrap } from '@/shared/result/result';
import { begunOwnLabel } from '@/shared/scan-codes/begun-own-label';
import { mintOwnLabel } from '@/shared/scan-codes/mint-own-label';

describe('the beginning of a label of ours', () => {
  it.each([
    ['c4', 'C4'],
    ['C-4K', 'C4K'],
    ['c 4k7', 'C4K7'],
    ['ｃ４ｋ', 'C4K'],
    ['c-o4v', 'C04V'],
    ['s4o', 'S40'],
    ['p—l', 'P1'],
  ])('%s begins %s', (typed, begun) => {
    expect(begunOwnLabel(typed)).toBe(begun);
  });

  it.each(['', 'c', 'c-', 'oak', 'cold', 'sol', 'film', '4k7', 'C4K7VMXX', 'c4é', 'c4e', '🪵'])(
    'no label begins with %j',
    (typed) => {
      expect(begunOwnLabel(typed)).toBeUndefined();
    },
  );

  it('every label begins with each of its beginnings, zeros typed as O or not', () => {
    for (let serial = 0; serial < 500; serial += 1) {
      const { code } = unwrap(mintOwnLabel('container', serial));
      expect(begunOwnLabel(code.replaceAll('0', 'O'))).toBe(code);
      for (let length = 2; length < code.length; length += 1) {
        expect(begunOwnLabel(`C-${code.slice(1, length).replaceAll('0', 'o')}`)).toBe(code.slice(0, length));
      }
    }
  });
});
