import { describe, expect, it } from 'vitest';
import { gtinCheckDigit } from '@/shared/scan-codes/gtin-check-digit';
import { toGtin14 } from '@/shared/scan-codes/to-gtin14';

describe('GS1 check digit', () => {
  it.each([
    // GS1 Barcode Syntax Dictionary, unit tests of lint_csum.c.
    ['0234567', 3],
    ['41600033610', 8],
    ['123456789012', 8],
    ['1234567890123', 1],
    // GS1 General Specifications 7.9 worked examples as widely reprinted, recomputed.
    ['629104150021', 3],
    ['400638133393', 1],
    ['37610425002123456', 9],
  ])('of %s is %i', (digits, expected) => {
    expect(gtinCheckDigit(digits)).toBe(expected);
  });

  // GS1 Barcode Syntax Engine 50657db, scandata.c test_scandata_validateParity.
  it.each([
    ['24012345678905', 'GTIN-14', '24012345678905'],
    ['2112233789657', 'GTIN-13', '02112233789657'],
    ['416000336108', 'GTIN-12', '00416000336108'],
    ['02345680', 'GTIN-8', '00000002345680'],
  ])('%s is a %s', (digits, form, gtin14) => {
    expect(toGtin14(digits)).toEqual({ ok: true, value: { form, gtin14 } });
  });

  it.each([
    ['24012345678909', '5'],
    ['2112233789658', '7'],
    ['416000336107', '8'],
    ['02345689', '0'],
  ])('%s should end in %s', (digits, expected) => {
    expect(toGtin14(digits)).toMatchObject({
      ok: false,
      error: { code: 'check-digit', at: digits.length - 1, expected },
    });
  });
});
