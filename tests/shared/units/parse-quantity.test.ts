import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseQuantity } from '@/shared/units/parse-quantity';
import type { StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

const metric = (text: string, unit: StockUnit = 'mg') => parseQuantity(text, { unit, prefer: 'metric' });
const imperial = (text: string, unit: StockUnit = 'mg') => parseQuantity(text, { unit, prefer: 'imperial' });

describe('what a maker writes', () => {
  it.each([
    ['2.5 kg', 2_500_000],
    ['2,5 kg', 2_500_000],
    ['2.500 kg', 2_500_000],
    ['0,500 kg', 500_000],
    ['750 g', 750_000],
    ['750g', 750_000],
    ['  750  G ', 750_000],
    ['.5 kg', 500_000],
    ['1/2 kg', 500_000],
    ['½ kg', 500_000],
    ['2 kg 500 g', 2_500_000],
    ['250 mg', 250],
    ['0 g', 0],
    ['12 oz', 340_194],
    ['12 oz.', 340_194],
    ['1 lb', 453_592],
    ['1 lb 4 oz', 566_990],
    ['1 lb 4 1/2 oz', 581_165],
    ['1 1/2 lb', 680_389],
    ['1-1/2 lbs', 680_389],
    ['1½ lb', 680_389],
    ['100 lb', 45_359_237],
    ['1.234,5 g', 1_234_500],
    ['1,234.5 g', 1_234_500],
    ['1\u202f234,5 g', 1_234_500],
    ['1000 kg', 1_000_000_000],
  ])('%s is a mass', (text, amount) => {
    expect(metric(text)).toEqual({ ok: true, value: amount });
  });

  it.each([
    ['1 L', 1_000_000],
    ['500 ml', 500_000],
    ['75 cl', 750_000],
    ['30 cc', 30_000],
    ['250 µL', 250],
    ['1 gal', 3_785_412],
    ['1/2 gal', 1_892_706],
    ['1 gal 2 qt', 5_678_118],
    ['1 qt', 946_353],
    ['1 pt', 473_176],
    ['8 fl oz', 236_588],
    ['8 fl. oz.', 236_588],
    ['8floz', 236_588],
    ['16 Fluid Ounces', 473_176],
    ['1000 gal', undefined],
  ])('%s is a volume', (text, amount) => {
    if (amount === undefined) expect(metric(text, 'uL')).toMatchObject({ ok: false, error: { code: 'absurd' } });
    else expect(metric(text, 'uL')).toEqual({ ok: true, value: amount });
  });

  it.each(['3', '3 pcs', '3 pc.', '3 pieces', '3 ea', '3 each', '3.0 pcs'])('%s is three pieces', (text) => {
    expect(metric(text, 'piece')).toEqual({ ok: true, value: 3 });
  });

  it('a bare number takes the unit given for it, and only then', () => {
    expect(parseQuantity('750', { unit: 'mg', prefer: 'metric', bareUnit: 'g' })).toEqual({ ok: true, value: 750_000 });
    expect(parseQuantity('1/2', { unit: 'uL', prefer: 'imperial', bareUnit: 'gal' })).toEqual({
      ok: true,
      value: 1_892_706,
    });
    expect(metric('750')).toEqual({ ok: false, error: { code: 'needs-a-unit', at: 3 } });
    expect(parseQuantity('1 lb 4', { unit: 'mg', prefer: 'metric', bareUnit: 'g' })).toEqual({
      ok: false,
      error: { code: 'needs-a-unit', at: 6 },
    });
  });
});

describe('a comma before three digits', () => {
  it('groups thousands where imperial is preferred and for pieces', () => {
    expect(imperial('2,500 g')).toEqual({ ok: true, value: 2_500_000 });
    expect(metric('1,000 pcs', 'piece')).toEqual({ ok: true, value: 1000 });
  });

  it('is asked about elsewhere, with both readings', () => {
    expect(metric('2,500 kg')).toEqual({
      ok: false,
      error: { code: 'two-readings', at: 0, decimal: 2_500_000n, grouped: 2_500_000_000n },
    });
  });

  it('groups without doubt when it comes twice, Indian grouping as well', () => {
    expect(metric('1,000,000 mg')).toEqual({ ok: true, value: 1_000_000 });
    expect(metric('1,50,000 mg')).toEqual({ ok: true, value: 150_000 });
  });
});

describe('what is refused, and where', () => {
  it.each([
    ['', { code: 'empty' }],
    ['   ', { code: 'empty' }],
    ['-5 g', { code: 'negative', at: 0 }],
    [' −½ g', { code: 'negative', at: 1 }],
    ['--5 g', { code: 'not-a-number', at: 0 }],
    ['some', { code: 'not-a-number', at: 0 }],
    ['5 g!', { code: 'not-a-number', at: 3 }],
    ['1,23,4 g', { code: 'not-a-number', at: 0 }],
    ['1/0 kg', { code: 'not-a-number', at: 0 }],
    ['1 kg - 200 g', { code: 'not-a-number', at: 5 }],
    ['3 500 g', { code: 'needs-a-unit', at: 1 }],
    ['5 blobs', { code: 'unknown-unit', at: 2, written: 'blobs' }],
    ['1 L', { code: 'unit-does-not-fit', at: 2, written: 'l', wanted: 'mg', found: 'uL' }],
    ['3 pcs', { code: 'unit-does-not-fit', at: 2, written: 'pcs', wanted: 'mg', found: 'piece' }],
    ['11/2 lb', { code: 'improper-fraction', at: 0 }],
    ['4 oz 1 lb', { code: 'parts-do-not-follow', at: 5 }],
    ['1 lb 20 oz', { code: 'parts-do-not-follow', at: 5 }],
    ['1 lb 16 oz', { code: 'parts-do-not-follow', at: 5 }],
    ['1.5 lb 4 oz', { code: 'parts-do-not-follow', at: 7 }],
    ['1 kg 4 oz', { code: 'parts-do-not-follow', at: 5 }],
    ['0.0005 g', { code: 'finer-than-the-book', at: 0 }],
    ['1.0000001 kg', { code: 'finer-than-the-book', at: 0 }],
    ['0.00001 oz', { code: 'finer-than-the-book', at: 0 }],
    ['1000.000001 kg', { code: 'absurd', at: 0, most: 1_000_000_000 }],
  ])('%j', (text, error) => {
    expect(metric(text)).toEqual({ ok: false, error });
  });

  it('an ounce of weight is not taken for a fluid ounce', () => {
    expect(imperial('8 oz', 'uL')).toEqual({
      ok: false,
      error: { code: 'unit-does-not-fit', at: 2, written: 'oz', wanted: 'uL', found: 'mg' },
    });
  });

  it('pieces are whole, and no more than a million', () => {
    expect(metric('2.5 pcs', 'piece')).toEqual({ ok: false, error: { code: 'finer-than-the-book', at: 0 } });
    expect(metric('1/2', 'piece')).toEqual({ ok: false, error: { code: 'finer-than-the-book', at: 0 } });
    expect(metric('1000000', 'piece')).toEqual({ ok: true, value: 1_000_000 });
    expect(metric('1000001', 'piece')).toMatchObject({ ok: false, error: { code: 'absurd' } });
  });

  it('text past sixty characters is refused where it grows too long', () => {
    expect(metric('9'.repeat(5000))).toEqual({ ok: false, error: { code: 'not-a-number', at: 60 } });
  });
});

const typedRubbish = fc.oneof(
  fc.string(),
  fc.string({ unit: 'binary' }),
  fc
    .array(fc.constantFrom(...'0123456789.,/- \'"½⅝″µ−fl oz lb kg g mL gal pcs in ft'.split('')), { maxLength: 30 })
    .map((characters) => characters.join('')),
);

describe('for any text at all', () => {
  it('never throws, and answers a safe integer from zero to the cap or an error that points into the text', () => {
    fc.assert(
      fc.property(
        typedRubbish,
        fc.constantFrom<StockUnit>('mg', 'uL', 'piece'),
        fc.constantFrom<UnitSystem>('metric', 'imperial'),
        (text, unit, prefer) => {
          const read = parseQuantity(text, { unit, prefer });
          if (read.ok) {
            expect(Number.isSafeInteger(read.value)).toBe(true);
            expect(read.value).toBeGreaterThanOrEqual(0);
            expect(read.value).toBeLessThanOrEqual(unit === 'piece' ? 1e6 : 1e9);
          } else if ('at' in read.error) {
            expect(read.error.at).toBeGreaterThanOrEqual(0);
            expect(read.error.at).toBeLessThanOrEqual(text.length);
          }
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('pounds and ounces are within half a milligram of the definition', () => {
    fc.assert(
      fc.property(fc.nat({ max: 2000 }), fc.integer({ min: 0, max: 159 }), (pounds, tenths) => {
        const read = imperial(`${pounds} lb ${tenths / 10} oz`);
        if (!read.ok) throw new Error(read.error.code);
        const exact = BigInt(pounds * 160 + tenths) * 28_349_523_125n;
        const off = BigInt(read.value) * 10_000_000n - exact;
        expect(off < 0n ? -off : off).toBeLessThanOrEqual(5_000_000n);
      }),
    );
  });
});
