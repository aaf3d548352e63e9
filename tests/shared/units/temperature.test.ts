import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unwrap } from '@/shared/result/result';
import { parseTemperature } from '@/shared/units/parse-temperature';
import { printTemperature } from '@/shared/units/print-temperature';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';

const METRIC = { prefer: 'metric' } as const;
const US = { prefer: 'imperial' } as const;

describe('reading', () => {
  it.each([
    ['21.5 °C', 215],
    ['21,5C', 215],
    ['21.50 °C', 215],
    ['20', 200],
    ['20°', 200],
    ['20 deg C', 200],
    ['20 celsius', 200],
    ['20℃', 200],
    ['-4 °F', -200],
    ['−4°f', -200],
    ['72 F', 222],
    ['72.5 °F', 225],
    ['0', 0],
    ['-0', 0],
  ])('%s', (text, tenths) => {
    expect(parseTemperature(text, METRIC)).toEqual({ ok: true, value: tenths });
  });

  it('a bare number is what the workshop prefers', () => {
    expect(parseTemperature('77', US)).toEqual({ ok: true, value: 250 });
    expect(parseTemperature('77 C', US)).toEqual({ ok: true, value: 770 });
  });

  it.each([
    ['', { code: 'empty' }],
    ['warm', { code: 'not-a-number', at: 0 }],
    ['- C', { code: 'not-a-number', at: 0 }],
    ['20-25 C', { code: 'not-a-number', at: 2 }],
    ['1.2.3', { code: 'not-a-number', at: 3 }],
    ['20 K', { code: 'unknown-unit', at: 3, written: 'K' }],
    ['21.55 C', { code: 'finer-than-the-book', at: 0 }],
    ['300.1 C', { code: 'absurd', at: 0, least: -900, most: 3000 }],
    ['-90.1 C', { code: 'absurd', at: 0, least: -900, most: 3000 }],
  ])('%j is refused', (text, error) => {
    expect(parseTemperature(text, METRIC)).toEqual({ ok: false, error });
  });

  it('never throws', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string({ unit: 'binary' }), fc.stringMatching(/^[-+]?[\d.,]{0,12} ?[°CF]{0,3}$/)),
        (text) => {
          const read = parseTemperature(text, METRIC);
          if (read.ok) expect(Math.abs(read.value)).toBeLessThanOrEqual(3000);
          else if ('at' in read.error) expect(read.error.at).toBeLessThanOrEqual(text.length);
        },
      ),
      { numRuns: 1000 },
    );
  });
});

describe('printing', () => {
  it('shows tenths of Celsius and whole Fahrenheit', () => {
    expect(printTemperature(tenthsCelsius(215), METRIC)).toBe('21.5 °C');
    expect(printTemperature(tenthsCelsius(-5), METRIC)).toBe('−0.5 °C');
    expect(printTemperature(tenthsCelsius(215), US)).toBe('71 °F');
    expect(printTemperature(tenthsCelsius(-200), US)).toBe('−4 °F');
  });

  it('every Celsius tenth and every whole Fahrenheit degree comes back as it was', () => {
    for (let tenths = -900; tenths <= 3000; tenths += 1) {
      expect(unwrap(parseTemperature(printTemperature(tenthsCelsius(tenths), METRIC), US))).toBe(tenths);
    }
    for (let degrees = -130; degrees <= 572; degrees += 1) {
      const text = printTemperature(unwrap(parseTemperature(`${degrees} F`, METRIC)), US);
      expect(text).toBe(`${degrees} °F`.replace('-', '−'));
    }
  });
});
