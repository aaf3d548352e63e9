import { describe, expect, it } from 'vitest';
import { beginSchema, countSchema, seenSchema } from '@/app/(shop)/stocktake/schema';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';
import { readCurrency } from '@/shared/units/currency';

const typing = {
  today: '2026-11-25' as CalendarDate,
  order: 'day-first' as const,
  prefer: 'metric' as const,
  currency: unwrap(readCurrency('GBP')),
};
const tin = { unit: 'mg' as const, tareMg: 180_000, densityGramsPerLitre: 1100 };
const read = (typed: Record<string, string>, thing: Parameters<typeof countSchema>[1] = tin) => {
  const parsed = countSchema(typing, thing).safeParse({
    stocktake: 7,
    stockId: 3,
    way: 'gross',
    gross: '',
    amount: '',
    ...typed,
  });
  if (parsed.success) return parsed.data;
  return Object.fromEntries(parsed.error.issues.map((issue) => [issue.path.join('.'), issue.message]));
};

describe('what is typed of a tin on the scale', () => {
  it('is what is in it: its weight less the empty container', () => {
    expect(read({ gross: '1.28 kg' })).toEqual({ stocktake: 7, stockId: 3, counted: 1_100_000, grossMg: 1_280_000 });
    expect(read({ gross: '180 g' })).toMatchObject({ counted: 0 });
  });

  it('is a volume by its density where the material is counted so', () => {
    expect(read({ gross: '1.28 kg' }, { ...tin, unit: 'uL' })).toMatchObject({
      counted: 1_000_000,
      grossMg: 1_280_000,
    });
  });

  it('is refused beside its field where it is lighter than the empty tin, no weight at all, or nothing', () => {
    expect(read({ gross: '100 g' })).toEqual({
      gross: 'That is less than the empty container weighs. Check both weights.',
    });
    expect(read({ gross: '' })).toEqual({ gross: 'Type the weight with the container.' });
    expect(read({ gross: '3 L' })).toHaveProperty('gross');
    expect(read({ gross: '1 kg' }, { ...tin, tareMg: null })).toEqual({
      gross: 'The book does not know what the empty container weighs. Give what is left in it.',
    });
    expect(read({ gross: '1 kg' }, { ...tin, unit: 'uL', densityGramsPerLitre: null })).toHaveProperty('gross');
  });

  it('can be the amount itself, 0 where it is empty, or nothing after all', () => {
    expect(read({ way: 'amount', amount: '450 g' })).toMatchObject({ counted: 450_000, grossMg: null });
    expect(read({ way: 'amount', amount: '0 g' })).toMatchObject({ counted: 0 });
    expect(read({ way: 'amount', amount: '' })).toEqual({
      amount: 'Type what is in it, with its unit; 0 when it is empty.',
    });
    expect(read({ way: 'amount', amount: '7' }, { ...tin, unit: 'piece' })).toMatchObject({ counted: 7 });
    expect(read({ way: 'none' })).toMatchObject({ counted: null, grossMg: null });
  });
});

describe('what begins and goes on a walk', () => {
  it('begins in a place, by its label with or without the dash', () => {
    const message = beginSchema.safeParse({ placeLabel: '' }).error?.issues[0]?.message;
    expect(message).toBe('Choose the place to walk, or scan its label.');
    expect(beginSchema.safeParse({ placeLabel: 'C4V9TN3' }).success).toBe(false);
  });

  it('takes any code but an empty one', () => {
    expect(seenSchema.safeParse({ stocktake: 7, text: 'LOOSE-LID' }).success).toBe(true);
    expect(seenSchema.safeParse({ stocktake: 7, text: '  ' }).error?.issues[0]?.message).toBe('Type the code first.');
  });
});
