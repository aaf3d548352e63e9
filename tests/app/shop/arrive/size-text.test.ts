import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readAnyQuantity, sizeText } from '@/app/(shop)/arrive/size-text';

describe('an amount as a field shows it', () => {
  it('reads back to the very same amount in every unit and both ways of counting', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1_000_000 }),
        fc.constantFrom('mg' as const, 'uL' as const, 'piece' as const),
        fc.constantFrom('metric' as const, 'imperial' as const),
        (amount, unit, prefer) => {
          const read = readAnyQuantity(sizeText(amount, unit, prefer), prefer);
          expect(read).toEqual({ ok: true, value: { unit, amount } });
        },
      ),
    );
  });

  it('is as the shop likes to read it where nothing is lost', () => {
    expect(sizeText(2_500_000, 'mg', 'metric')).toBe('2.5 kg');
    expect(sizeText(946_353, 'uL', 'imperial')).toBe('1 qt');
    expect(sizeText(500_001, 'uL', 'imperial')).toBe('500.001 mL');
  });
});
