import { describe, expect, it } from 'vitest';
import { sayLeftOf } from '@/app/(shop)/_parts/stock/say-left-of';
import { microlitres, milligrams, pieces } from '@/shared/units/stock-unit';

describe('what is left of a container', () => {
  it('names pieces once, behind the whole', () => {
    expect(sayLeftOf({ left: pieces(25), size: pieces(50), unit: 'piece' }, 'metric')).toEqual({
      left: '25',
      size: '50 pieces',
    });
    expect(sayLeftOf({ left: pieces(1), size: pieces(1), unit: 'piece' }, 'metric')).toEqual({
      left: '1',
      size: '1 piece',
    });
  });

  it('gives a measure its unit on both sides, and never says more than is left', () => {
    expect(sayLeftOf({ left: milligrams(1_849_999), size: milligrams(2_500_000), unit: 'mg' }, 'metric')).toEqual({
      left: '1.84 kg',
      size: '2.5 kg',
    });
    expect(sayLeftOf({ left: microlitres(700_000), size: microlitres(1_000_000), unit: 'uL' }, 'metric')).toEqual({
      left: '700 mL',
      size: '1 L',
    });
  });
});
