import { describe, expect, it } from 'vitest';
import { parseLength } from '@/shared/units/parse-length';
import { parseQuantity } from '@/shared/units/parse-quantity';

// International yard and pound agreement, in force 1 July 1959 ("Refinement of Values for the Yard and the Pound",
// Federal Register, 24 FR 5348, 1 July 1959). Values from memory; the notice itself was not opened.
const lengthOf = (text: string) => parseLength(text, { prefer: 'metric' });
const massOf = (text: string) => parseQuantity(text, { unit: 'mg', prefer: 'metric' });

describe('the agreement fixes the yard at 0.9144 m', () => {
  it.each([
    ['1 yd', '0.9144 m', 914_400_000],
    ['1 ft', '0.3048 m', 304_800_000],
    ['1 in', '25.4 mm', 25_400_000],
    ['1/2 in', '12.7 mm', 12_700_000],
    ['1/16 in', '1.5875 mm', 1_587_500],
    ['1/64 in', '0.396875 mm', 396_875],
    ['100 yd', '91.44 m', 91_440_000_000],
  ])('%s is %s exactly', (customary, metric, nanometres) => {
    expect(lengthOf(customary)).toEqual({ ok: true, value: nanometres });
    expect(lengthOf(metric)).toEqual({ ok: true, value: nanometres });
  });
});

describe('the agreement fixes the pound at 0.453 592 37 kg', () => {
  it.each([
    ['100 lb', '45.359237 kg', 45_359_237],
    ['1000 lb', '453.59237 kg', 453_592_370],
    ['2000 lb', '907.18474 kg', 907_184_740],
    ['1600 oz', '45.359237 kg', 45_359_237],
    ['12 lb 8 oz', '5.669905 kg', 5_669_905],
  ])('%s is %s', (customary, metric, milligrams) => {
    expect(massOf(customary)).toEqual({ ok: true, value: milligrams });
    expect(massOf(metric)).toEqual({ ok: true, value: milligrams });
  });
});
