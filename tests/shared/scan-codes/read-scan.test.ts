import { describe, expect, it } from 'vitest';
import { readScan } from '@/shared/scan-codes/read-scan';
import { TODAY } from '@/tests/support/scan-codes/today';

const GS = '\u001d';
const read = (text: string, symbology?: string) =>
  readScan({ text, ...(symbology && { symbology }) }, { today: TODAY });

describe('what a message says', () => {
  it('draws product, lot, serial number, dates, measures and count out of a tin of resin', () => {
    const text = `]C1010952012345678811260115152712001728010010LOT-7${GS}21S9${GS}3103001500${GS}3152000750${GS}3006`;
    expect(read(text)).toMatchObject({
      kind: 'gs1',
      via: 'element-string',
      gtin: '09520123456788',
      canonical: '09520123456788',
      lot: 'LOT-7',
      serial: 'S9',
      dates: {
        madeOn: { date: '2026-01-15', precision: 'day' },
        bestBefore: { date: '2027-12-31', precision: 'month' },
        useBy: { date: '2028-01-31', precision: 'month' },
      },
      measures: [
        { ai: '3103', quantity: 'netMass', of: 'goods', unit: 'kg', decimal: '1.500' },
        { ai: '3152', quantity: 'netVolume', of: 'goods', unit: 'L', decimal: '7.50' },
      ],
      count: 6,
      pairing: [],
    });
  });

  it('takes the day from an expiry or production time where no plain date is given', () => {
    const text = `]d201095201234567887003${'2703311530'}${GS}8008${'26020314'}`;
    expect(read(text)).toMatchObject({
      dates: { useBy: { date: '2027-03-31', precision: 'day' }, madeOn: { date: '2026-02-03', precision: 'day' } },
    });
  });

  // GS1 Barcode Syntax Dictionary: the last digit of the AI is the number of decimals.
  it.each([
    ['3103000195', 'kg', '0.195'],
    ['3100123456', 'kg', '123456'],
    ['3152001000', 'L', '10.00'],
    ['3105000000', 'kg', '0.00000'],
    ['3203000195', 'lb', '0.195'],
    ['3612000100', 'gal', '1.00'],
    ['3305123456', 'kg', '1.23456'],
  ])('%s is so many %s: %s', (element, unit, decimal) => {
    expect(read(`]C10109520123456788${element}`)).toMatchObject({ measures: [{ unit, decimal }] });
  });

  it('keeps the measure of a packed unit apart from that of the goods', () => {
    expect(read(']C101095201234567883302001250')).toMatchObject({
      measures: [{ quantity: 'grossMass', of: 'package', unit: 'kg', decimal: '12.50' }],
    });
    expect(read(']C100376104250021234569' + '3312001250')).toMatchObject({
      canonical: '(00)376104250021234569',
      measures: [{ quantity: 'length', of: 'package', unit: 'm', decimal: '12.50' }],
    });
  });

  it('reads mass over area, which is no measure of one quantity, as an element only', () => {
    expect(read(']C101095201234567883372001250')).toMatchObject({ measures: [] });
  });

  it('a symbol with only lot and date is read, says what it lacks, and has no code to look up', () => {
    const reading = read(`]C110LOT7${GS}17270331`);
    expect(reading).toMatchObject({
      kind: 'gs1',
      lot: 'LOT7',
      dates: { useBy: { date: '2027-03-31' } },
      pairing: [
        { code: 'needs', ai: '10', anyOf: [['01'], ['02'], ['03'], ['8006'], ['8026']] },
        { code: 'needs', ai: '17' },
      ],
    });
    expect(reading).not.toHaveProperty('canonical');
  });

  it('elements that exclude one another are read and noted', () => {
    expect(read(`]C10109520123456788${'37'}12${GS}0209520123456788`)).toMatchObject({
      kind: 'gs1',
      pairing: expect.arrayContaining([
        { code: 'excludes', ai: '01', other: '37' },
        { code: 'excludes', ai: '02', other: '01' },
      ]),
    });
    expect(read(']C10109520123456788' + '3103001500' + '3102000150')).toMatchObject({
      pairing: [
        { code: 'excludes', ai: '3103', other: '3102' },
        { code: 'excludes', ai: '3102', other: '3103' },
      ],
    });
  });

  it('an association of AIs that must stand together is met only by all of them', () => {
    const needs = (text: string) => {
      const reading = read(text);
      return reading.kind === 'gs1' && reading.pairing.some(({ code, ai }) => code === 'needs' && ai === '250');
    };
    expect(needs(`]C10109520123456788250X`)).toBe(true);
    expect(needs(`]C10109520123456788250X${GS}21Y`)).toBe(false);
  });

  it('the same element twice is one element, with another value it is refused', () => {
    expect(read(`]C1010952012345678810A${GS}10A`)).toMatchObject({ kind: 'gs1', lot: 'A' });
    expect(read(`]C1010952012345678810A${GS}10B`)).toMatchObject({
      kind: 'unknown',
      malformed: { code: 'repeated-differently', at: 23, params: { ai: '10', title: 'BATCH/LOT' } },
    });
  });
});

describe('how texts arrive', () => {
  const good = { kind: 'gs1', gtin: '09520123456788', lot: 'ABC' };

  it.each([
    ['the identifier in the text', `]C1010952012345678810ABC`, undefined],
    ['the identifier apart', `010952012345678810ABC`, ']C1'],
    ['both', `]C1010952012345678810ABC`, ']C1'],
    ['FNC1 in front', `${GS}010952012345678810ABC`, undefined],
    ['FNC1 in front behind an identifier', `]d2${GS}010952012345678810ABC`, undefined],
    ['FNC1 written ^', '^010952012345678810ABC', undefined],
    ['FNC1 drawn as a picture', '\u241d010952012345678810ABC', undefined],
    ['a wedge scanner with CR LF', '010952012345678810ABC\r\n', undefined],
    ['a tab behind and STX ETX around', '\u0002010952012345678810ABC\u0003\t', undefined],
    ['an FNC1 too many at the end', `]C1010952012345678810ABC${GS}`, undefined],
    ['brackets', '(01)09520123456788(10)ABC', undefined],
    ['brackets with spaces', ' (01) 0952 0123456788 (10) ABC ', undefined],
    ['full-width brackets', '\uff0801\uff0909520123456788(10)ABC', undefined],
    ['brackets in a plain symbol', '(01)09520123456788(10)ABC', ']Q1'],
    ['a Digital Link in a plain symbol', 'https://example.com/x/01/09520123456788/10/ABC', ']Q1'],
  ])('%s', (_, text, symbology) => {
    expect(read(text, symbology)).toMatchObject(good);
  });

  it('places are those of the text as given', () => {
    const reading = read('\u0002 ]C1010952012345678810ABC\r\n');
    expect(reading).toMatchObject({
      elements: [
        { ai: '01', at: 5 },
        { ai: '10', at: 21 },
      ],
    });
    expect(read('  (01) 09520123456788 (17) 991332')).toMatchObject({
      malformed: { looksLike: 'gs1', code: 'bad-month', at: 29, params: { ai: '17', title: 'USE BY or EXPIRY' } },
    });
    expect(read(' ^0112345678901234')).toMatchObject({
      malformed: { code: 'check-digit', at: 17, params: { expected: '1' } },
    });
  });

  it('digits that merely begin like a key are not half a GS1 message', () => {
    expect(read('0112345678901234567')).toEqual({ kind: 'unknown', code: '0112345678901234567' });
    expect(read('01095201234567889')).toMatchObject({ kind: 'unknown', malformed: { code: 'unknown-ai', at: 16 } });
  });

  it('a GTIN may be typed with spaces and hyphens', () => {
    expect(read('4 006381 333931')).toEqual({ kind: 'gtin', form: 'GTIN-13', gtin14: '04006381333931' });
    expect(read('4006381-333931').kind).toBe('gtin');
    expect(read('4006381333932')).toMatchObject({ malformed: { looksLike: 'gtin', code: 'check-digit', at: 12 } });
  });

  it('digits in a plain symbol are no GTIN, and an add-on alone is no product', () => {
    expect(read('4006381333931', ']C0')).toEqual({ kind: 'unknown', code: '4006381333931' });
    expect(read('50599', ']E2')).toEqual({ kind: 'unknown', code: '50599' });
  });

  it.each([
    ['40063813', ']E0', 'wrong-length'],
    ['4006381333931', ']E4', 'wrong-length'],
    ['40063813', ']E4', 'check-digit'],
    ['24012345678906', ']I1', 'check-digit'],
    ['4006381', ']E0', 'wrong-length'],
    ['400638133393X', ']E0', 'not-digits'],
  ])('%s behind %s is refused: %s', (text, symbology, code) => {
    expect(read(text, symbology)).toMatchObject({ kind: 'unknown', malformed: { looksLike: 'gtin', code } });
  });

  it('an Interleaved 2 of 5 of another length is no GTIN, and none that is nearly one', () => {
    expect(read('123456', ']I1')).toEqual({ kind: 'unknown', code: '123456' });
  });

  it('a 29 February that the century rule puts in a year without one is refused', () => {
    // In 2060, 00 is 2100 (General Specifications 7.12), which is no leap year.
    const today = '2060-06-15' as typeof TODAY;
    expect(readScan({ text: ']C1' + '0109520123456788' + '17000229' }, { today })).toMatchObject({
      kind: 'unknown',
      malformed: { looksLike: 'gs1', code: 'no-such-day', at: 19, params: { ai: '17' } },
    });
  });
});

describe('who wins', () => {
  const meanings: Record<string, string> = {
    'SKU-77': 'wax',
    '4006381333931': 'taught over a GTIN',
    C4V9TN3: 'taught over a label',
    C4U9TN3: 'taught over a look-alike',
    '010952012345678810ABC': 'taught over GS1',
    '^01bad': 'taught over a broken message',
    'https://example.com/x': 'a leaflet',
  };
  const taught = (code: string) => meanings[code];
  const kindOf = (text: string, symbology?: string) =>
    readScan({ text, ...(symbology && { symbology }) }, { today: TODAY, taught }).kind;

  it.each([
    ['SKU-77', 'taught'],
    [' SKU-77\r\n', 'taught'],
    ['4006381333931', 'taught'],
    ['C4V9TN3', 'own'],
    ['C4U9TN3', 'taught'],
    ['010952012345678810ABC', 'gs1'],
    ['^01bad', 'taught'],
    ['https://example.com/x', 'taught'],
    ['sku-77', 'unknown'],
  ])('%j is %s', (text, kind) => {
    expect(kindOf(text)).toBe(kind);
  });

  it('a taught code brings its meaning', () => {
    expect(readScan({ text: 'SKU-77', symbology: ']A0' }, { today: TODAY, taught })).toEqual({
      kind: 'taught',
      code: 'SKU-77',
      meaning: 'wax',
    });
  });

  it('what a broken message is called when asked for is what it is taught by', () => {
    expect(read(`]C101bad${GS}x`)).toMatchObject({ kind: 'unknown', code: '01bad^x' });
  });
});

describe('nothing and too much', () => {
  it.each(['', '   ', '\r\n', '\u0000\u200b'])('%j is nothing', (text) => {
    expect(read(text)).toEqual({
      kind: 'unknown',
      code: '',
      malformed: { looksLike: 'nothing', code: 'empty', at: 0, params: {} },
    });
  });

  it('4,096 characters are read, one more is too long', () => {
    expect(read('A'.repeat(4096))).toEqual({ kind: 'unknown', code: 'A'.repeat(4096) });
    expect(read('A'.repeat(4097))).toEqual({
      kind: 'unknown',
      code: 'A'.repeat(80),
      malformed: { looksLike: 'nothing', code: 'too-long', at: 4096, params: { limit: '4096' } },
    });
  });
});
