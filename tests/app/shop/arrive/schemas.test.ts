import { describe, expect, it } from 'vitest';
import { newProduct, withKind } from '@/app/(shop)/arrive/new-product';
import { arrivalSchema, type TypedArrival } from '@/app/(shop)/arrive/schema';
import { meaningSchema, productSchema } from '@/app/(shop)/arrive/teach-schema';
import { type TypedWood, woodSchema } from '@/app/(shop)/arrive/wood/schema';
import { NO_TALLY } from '@/app/(shop)/arrive/wood/tally';
import { unwrap } from '@/shared/result/result';
import { mintOwnLabel } from '@/shared/scan-codes/mint-own-label';
import { GTIN, saysOf, TYPING } from './card-of-a-test';

const NO_DATE = { text: '', confirmed: false };
const ARRIVAL: TypedArrival = {
  productId: 7,
  unit: 'mg',
  lot: ' K26-114 ',
  dates: { useBy: { text: 'Jan 2027', confirmed: false }, bestBefore: NO_DATE, madeOn: NO_DATE },
  count: '2',
  size: '2.5 kg',
  cost: '48.50',
  placeLabel: '',
  receivedOn: '',
  isOpened: false,
  openedOn: '',
  sureness: 'known',
  left: '',
  conditions: [],
  openedLifeCount: '',
  openedLifeUnit: 'month',
  quarantine: false,
  reference: '',
};
const WOOD: TypedWood = {
  form: 'slab',
  species: 'Walnut',
  count: '1',
  length: '101 1/2 in',
  widths: 'three',
  width: '',
  widthStart: '31 in',
  widthMiddle: '26 in',
  widthEnd: '29 in',
  thickness: '8/4',
  flags: [],
  flitch: '',
  flitchNumber: '',
  cost: '',
  receivedOn: '',
  placeLabel: '',
  note: '',
  origin: '',
  sapwood: '',
  quarters: '',
  surfacing: '',
  grain: '',
  faceA: '',
  faceB: '',
  tally: NO_TALLY,
  moisture: '11,4 %',
  meter: '',
  spot: '',
};

const fieldsOf = (parsed: { success: boolean; error?: { issues: { path: PropertyKey[] }[] } }) =>
  (parsed.error?.issues ?? []).map((issue) => String(issue.path[0])).sort();

describe('the arrival card where it is written', () => {
  it('reads every field again into what the command takes', () => {
    expect(arrivalSchema(TYPING).parse(ARRIVAL)).toMatchObject({
      lotCode: 'K26-114',
      dates: { useBy: { date: '2027-01-31', precision: 'month', confirmed: false } },
      count: 2,
      size: 2_500_000,
      costMinor: 4850,
      receivedOn: '2026-11-25',
      hold: 'free',
    });
  });

  it('takes no lot and no date', () => {
    const read = arrivalSchema(TYPING).parse({
      ...ARRIVAL,
      lot: ' ',
      dates: { useBy: NO_DATE, bestBefore: NO_DATE, madeOn: NO_DATE },
    });
    expect(read).toMatchObject({ lotCode: null, dates: {} });
  });

  it('marks everything that is wrong at once', () => {
    const parsed = arrivalSchema(TYPING).safeParse({
      ...ARRIVAL,
      count: '0',
      size: '2.5 L',
      cost: '12 abc',
      openedOn: 'last summer',
      dates: { ...ARRIVAL.dates, useBy: { text: '3/4/2027', confirmed: true } },
    });
    expect(fieldsOf(parsed)).toEqual(['cost', 'count', 'openedOn', 'size', 'useBy']);
  });
});

describe('a product as it is taught', () => {
  const typed = {
    ...withKind(newProduct(GTIN, undefined), 'resin-b', 'metric'),
    name: 'Hardener',
    size: '1 kg',
    systemName: 'Tarn deep pour',
  };

  it('starts from the defaults of its kind, with their basis said', () => {
    expect(productSchema(TYPING).parse(typed)).toMatchObject({
      unit: 'mg',
      packageSize: 1_000_000,
      statedLife: { count: 12, unit: 'month' },
      statedLifeBasis: 'house-default',
      storageLeastTenthsC: 150,
      storageMostTenthsC: 270,
      system: { name: 'Tarn deep pour', part: 'B' },
    });
  });

  it('counts by what its size was typed in', () => {
    expect(productSchema(TYPING).parse({ ...typed, size: '750 mL' }).unit).toBe('uL');
    expect(productSchema(TYPING).parse({ ...typed, size: '10 pcs' })).toMatchObject({ unit: 'piece', packageSize: 10 });
    expect(fieldsOf(productSchema(TYPING).safeParse({ ...typed, size: '12' }))).toEqual(['size']);
  });

  it('keeps no life where it keeps', () => {
    expect(productSchema(TYPING).parse({ ...typed, policyKind: 'keeps' }).statedLife).toBeUndefined();
  });

  it('takes only a web address for the safety data sheet', () => {
    expect(fieldsOf(productSchema(TYPING).safeParse({ ...typed, safetySheet: 'javascript:alert(1)' }))).toEqual([
      'safetySheet',
    ]);
    expect(productSchema(TYPING).parse({ ...typed, safetySheet: 'https://example.org/sds.pdf' }).safetySheet).toContain(
      'example.org',
    );
  });

  it('takes the density of its data sheet in whole grams a litre, or none', () => {
    expect(productSchema(TYPING).parse({ ...typed, density: ' 1100 ' }).densityGramsPerLitre).toBe(1100);
    expect(productSchema(TYPING).parse({ ...typed, density: '' }).densityGramsPerLitre).toBeUndefined();
    for (const density of ['1.1', '100', 'heavy', '-1000']) {
      expect(fieldsOf(productSchema(TYPING).safeParse({ ...typed, density })), density).toEqual(['density']);
    }
  });

  it('marks everything that is missing at once', () => {
    expect(fieldsOf(productSchema(TYPING).safeParse(newProduct(undefined, undefined)))).toEqual([
      'kind',
      'name',
      'size',
    ]);
  });

  it('takes the size a label states', () => {
    expect(newProduct(GTIN, saysOf(`(01)${GTIN}(3103)002500`)).size).toBe('2.5 kg');
  });
});

describe('what a code shall mean', () => {
  it('reads our own label with its look-alikes, and never a place by it', () => {
    const { code } = unwrap(mintOwnLabel('container', 41));
    const own = `${code.charAt(0)}-${code.slice(1)}`.toLowerCase();
    expect(meaningSchema(TYPING).parse({ code: 'X', means: { ownLabel: own } }).means).toEqual({ stockLabel: code });
    const place = unwrap(mintOwnLabel('place', 41)).code;
    expect(meaningSchema(TYPING).safeParse({ code: 'X', means: { ownLabel: place } }).success).toBe(false);
  });
});

describe('wood where it is written', () => {
  it('reads lengths exactly: an inch is 25.4 mm (international yard and pound agreement, 1959) and 8/4 two inches', () => {
    expect(woodSchema(TYPING).parse(WOOD)).toMatchObject({
      lengthNm: 2_578_100_000,
      widthStartNm: 787_400_000,
      widthMiddleNm: 660_400_000,
      widthEndNm: 736_600_000,
      thicknessNm: 50_800_000,
      reading: { mcTenths: 114 },
    });
  });

  it('takes one width for all three places', () => {
    const read = woodSchema(TYPING).parse({
      ...WOOD,
      widths: 'one',
      width: '300',
      widthStart: '',
      widthMiddle: '',
      widthEnd: '',
    });
    expect([read.widthStartNm, read.widthMiddleNm, read.widthEndNm]).toEqual([300_000_000, 300_000_000, 300_000_000]);
  });

  it('marks everything that is missing at once', () => {
    const parsed = woodSchema(TYPING).safeParse({
      ...WOOD,
      species: '',
      length: '',
      widthMiddle: '',
      thickness: '0',
      moisture: 'wet',
    });
    expect(fieldsOf(parsed)).toEqual(['length', 'moisture', 'species', 'thickness', 'widthMiddle']);
  });
});
