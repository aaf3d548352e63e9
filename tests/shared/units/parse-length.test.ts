import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseLength } from '@/shared/units/parse-length';
import { sayLengthError } from '@/shared/units/say-length-error';
import type { UnitSystem } from '@/shared/units/unit-system';

const IN = 25_400_000;
const MM = 1_000_000;
const imperial = (text: string) => parseLength(text, { prefer: 'imperial' });
const metric = (text: string) => parseLength(text, { prefer: 'metric' });

describe('what a maker writes', () => {
  it.each([
    ['1 3/4', 1.75 * IN],
    ['1-3/4"', 1.75 * IN],
    ['1¾"', 1.75 * IN],
    ['1 ¾', 1.75 * IN],
    ['⅝"', 0.625 * IN],
    ['1/64', 396_875],
    ['63/64"', 63 * 396_875],
    ['1⁄2 in', 0.5 * IN],
    ['5\' 6 1/2"', 66.5 * IN],
    ['5\'6-1/2"', 66.5 * IN],
    ['5\'-6 1/2"', 66.5 * IN],
    ["5' 6 1/2", 66.5 * IN],
    ['5′ 6½″', 66.5 * IN],
    ['5’ 6 1/2”', 66.5 * IN],
    ["5' 6 1/2''", 66.5 * IN],
    ['5 ft 6 1/2 in', 66.5 * IN],
    ['5 ft. 6.5 in.', 66.5 * IN],
    ['66.5 inches', 66.5 * IN],
    ["8'", 96 * IN],
    ["8 1/2'", 102 * IN],
    ['1 yd 2 ft 3 in', 63 * IN],
    ['2.5 m', 2500 * MM],
    ['2,5 m', 2500 * MM],
    ['2 m 50 cm', 2500 * MM],
    ['60 cm', 600 * MM],
    ['1830mm', 1830 * MM],
    ['1,690 mm', 1690 * MM],
    ['1,690.5 mm', 1690.5 * MM],
    ['1\u202f690 mm', 1690 * MM],
    ['0.000001 mm', 1],
    ['0', 0],
  ])('%s', (text, nm) => {
    expect(imperial(text)).toEqual({ ok: true, value: nm });
    expect(metric(text)).toEqual({ ok: true, value: nm });
  });

  it('a bare number is inches or millimetres as preferred', () => {
    expect(metric('600')).toEqual({ ok: true, value: 600 * MM });
    expect(imperial('24.5')).toEqual({ ok: true, value: 24.5 * IN });
  });
});

describe('thickness in quarters', () => {
  const thickness = (text: string) => parseLength(text, { prefer: 'metric', mode: 'thickness' });

  it.each([
    ['4/4', 1],
    ['5/4', 1.25],
    ['8/4', 2],
    ['8/4"', 2],
    ['16/4', 4],
    ['3/4', 0.75],
    ['13/16', 0.8125],
    ['1 1/4', 1.25],
  ])('%s is %d inches', (text, inches) => {
    expect(thickness(text)).toEqual({ ok: true, value: inches * IN });
  });

  it.each(['11/4', '13/4', '21/4', '23/4', '31/4', '16/8', '8/4 mm', '1 8/4'])('%s is no such thickness', (text) => {
    expect(thickness(text)).toEqual({ ok: false, error: { code: 'improper-fraction', at: 0 } });
  });

  it.each([
    ['9/4', '8/4 or 10/4?'],
    ['15/4"', '14/4 or 16/4?'],
    ['26/4', '24/4 is the most.'],
  ])('%s is not sold: %s', (text, sold) => {
    const read = thickness(text);
    expect(read).toMatchObject({ ok: false, error: { code: 'not-sold-in-quarters', at: 0 } });
    const said = read.ok ? '' : sayLengthError(read.error, { prefer: 'imperial' });
    expect(said).toBe(`${text.replace('"', '')} is not a thickness that is sold: ${sold}`);
  });

  it('is not a length', () => {
    expect(imperial('8/4')).toEqual({ ok: false, error: { code: 'improper-fraction', at: 0 } });
  });
});

describe('what is refused, and where', () => {
  it.each([
    ['', { code: 'empty' }],
    ['-3"', { code: 'negative', at: 0 }],
    ['about 3', { code: 'not-a-number', at: 0 }],
    ['5\' x 3"', { code: 'not-a-number', at: 3 }],
    ['5" - 3"', { code: 'not-a-number', at: 3 }],
    ['1/0"', { code: 'not-a-number', at: 0 }],
    ['5 cubits', { code: 'unknown-unit', at: 2, written: 'cubits' }],
    ['5 6 in', { code: 'needs-a-unit', at: 1 }],
    ['61/2"', { code: 'improper-fraction', at: 0 }],
    ['5\' 61/2"', { code: 'improper-fraction', at: 3 }],
    ['1/3"', { code: 'fraction-not-on-the-rule', at: 0 }],
    ['1/128"', { code: 'fraction-not-on-the-rule', at: 0 }],
    ['5\' 12"', { code: 'parts-do-not-follow', at: 3 }],
    ['5" 1\'', { code: 'parts-do-not-follow', at: 3 }],
    ['5.5\' 6"', { code: 'parts-do-not-follow', at: 5 }],
    ['1 m 6"', { code: 'parts-do-not-follow', at: 4 }],
    ['0.0000001 mm', { code: 'finer-than-the-book', at: 0 }],
    ['0.000001"', { code: 'finer-than-the-book', at: 0 }],
    ['100.001 m', { code: 'absurd', at: 0, most: 100_000_000_000 }],
  ])('%j', (text, error) => {
    expect(metric(text)).toEqual({ ok: false, error });
  });

  it('a comma before three digits of a metre is asked about', () => {
    expect(metric('1,250 m')).toEqual({
      ok: false,
      error: { code: 'two-readings', at: 0, decimal: 1_250_000_000n, grouped: 1_250_000_000_000n },
    });
  });

  it('a hundred metres is the longest', () => {
    expect(metric('100 m')).toEqual({ ok: true, value: 100_000_000_000 });
  });
});

it('never throws, and answers a length within the cap or an error that points into the text', () => {
  const characters = '0123456789.,/- \'"½⅝⅓″′incmftyd'.split('');
  const text = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.array(fc.constantFrom(...characters), { maxLength: 25 }).map((parts) => parts.join('')),
  );
  fc.assert(
    fc.property(
      text,
      fc.constantFrom<UnitSystem>('metric', 'imperial'),
      fc.constantFrom('length' as const, 'thickness' as const),
      (typed, prefer, mode) => {
        const read = parseLength(typed, { prefer, mode });
        if (read.ok) {
          expect(Number.isSafeInteger(read.value)).toBe(true);
          expect(read.value).toBeGreaterThanOrEqual(0);
          expect(read.value).toBeLessThanOrEqual(1e11);
        } else if ('at' in read.error) {
          expect(read.error.at).toBeLessThanOrEqual(typed.length);
        }
      },
    ),
    { numRuns: 2000 },
  );
});
