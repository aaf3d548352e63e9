import { describe, expect, it } from 'vitest';
import { typedProduct } from '@/app/(shop)/_parts/product/typed-product';
import { productSchema } from '@/app/(shop)/arrive/teach-schema';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';
import { readCurrency } from '@/shared/units/currency';
import { RESIN } from '@/tests/support/stock-of-a-test';

const TODAY = '2026-11-25' as CalendarDate;
const TYPING = {
  today: TODAY,
  order: 'day-first' as const,
  prefer: 'metric' as const,
  currency: unwrap(readCurrency('USD')),
};

describe('a product in its form', () => {
  it('is the same product when it is read back unchanged, in either system of units', () => {
    for (const prefer of ['metric', 'imperial'] as const) {
      const fields = {
        ...RESIN,
        storageLeastTenthsC: 153,
        storageMostTenthsC: 271,
        packageSize: 946_353,
        unit: 'uL' as const,
      };
      expect(productSchema({ ...TYPING, prefer }).parse(typedProduct(fields, prefer))).toEqual({
        ...fields,
        code: undefined,
      });
    }
  });
});
