import { describe, expect, it } from 'vitest';
import { lengthMeasure } from '@/shared/units/length-measures';
import { parseQuantity } from '@/shared/units/parse-quantity';
import { parseTemperature } from '@/shared/units/parse-temperature';
import type { Ratio } from '@/shared/units/ratio';
import { type StockMeasureName, stockMeasure } from '@/shared/units/stock-measures';

/** The ratio to that many significant figures, as a table prints it. */
const printed = ({ over, under }: Ratio, figures: number) => (Number(over) / Number(under)).toPrecision(figures);
const inverse = ({ over, under }: Ratio, scale = 1n): Ratio => ({ over: under * scale, under: over });
const size = (name: StockMeasureName) => stockMeasure(name).size;

// NIST Handbook 44, Appendix C, General Tables of Units of Measurement, section 4. Values from memory, the digits of the
// pound, ounce, gallon and fluid ounce also seen restated by others; the tables themselves were not opened.
describe('NIST Handbook 44, Appendix C', () => {
  it.each([
    ['oz', 28_349_523_125n, 1_000_000n],
    ['lb', 45_359_237n, 100n],
    ['gal', 3_785_411_784n, 1_000n],
    ['qt', 946_352_946n, 1_000n],
    ['pt', 473_176_473n, 1_000n],
    ['fl oz', 295_735_295_625n, 10_000_000n],
  ] as const)('1 %s is exactly %d/%d of the small unit', (name, over, under) => {
    const { over: ours, under: oursUnder } = size(name);
    expect(ours * under).toBe(over * oursUnder);
  });

  it('a US gallon is 231 cubic inches, 4 quarts, 8 pints and 128 fluid ounces', () => {
    // In nm³, of which 10¹⁸ are a microlitre.
    const cubicInch = lengthMeasure('in').size ** 3n;
    expect(231n * cubicInch * size('gal').under).toBe(size('gal').over * 10n ** 18n);
    for (const [name, count] of [
      ['qt', 4n],
      ['pt', 8n],
      ['fl oz', 128n],
    ] as const) {
      expect(size(name).over * count * size('gal').under).toBe(size('gal').over * size(name).under);
    }
  });

  it.each([
    ['kilogram in pounds', inverse(size('lb'), 1_000_000n), '2.204623'],
    ['gram in ounces', inverse(size('oz'), 1_000n), '0.03527396'],
    ['litre in quarts', inverse(size('qt'), 1_000_000n), '1.056688'],
    ['litre in gallons', inverse(size('gal'), 1_000_000n), '0.2641721'],
    ['litre in fluid ounces', inverse(size('fl oz'), 1_000_000n), '33.81402'],
    ['metre in inches', { over: lengthMeasure('m').size, under: lengthMeasure('in').size }, '39.37008'],
    ['metre in feet', { over: lengthMeasure('m').size, under: lengthMeasure('ft').size }, '3.280840'],
    ['metre in yards', { over: lengthMeasure('m').size, under: lengthMeasure('yd').size }, '1.093613'],
    ['centimetre in inches', { over: lengthMeasure('cm').size, under: lengthMeasure('in').size }, '0.3937008'],
  ] as const)('a %s', (_, ratio, table) => {
    expect(printed(ratio, table.replace(/^0\./, '').replace('.', '').replace(/^0+/, '').length)).toBe(table);
  });

  it('a gallon, quart and pint come into the book at the table’s own seven figures', () => {
    const read = (text: string) => parseQuantity(text, { unit: 'uL', prefer: 'imperial' });
    expect(read('1 gal')).toEqual({ ok: true, value: 3_785_412 });
    expect(read('1 qt')).toEqual({ ok: true, value: 946_353 });
    expect(read('1000 pt')).toEqual({ ok: true, value: 473_176_473 });
    expect(read('1000 fl oz')).toEqual({ ok: true, value: 29_573_530 });
    expect(read('250 gal')).toEqual({ ok: true, value: 946_352_946 });
  });
});

// NIST Special Publication 811 (2008), Guide for the Use of the SI, Appendix B.8, factors to seven figures. From memory;
// the tables were not opened.
describe('NIST SP 811, Appendix B.8', () => {
  it.each([
    ['gal', '3.785412e-3'],
    ['qt', '9.463529e-4'],
    ['pt', '4.731765e-4'],
    ['fl oz', '2.957353e-5'],
  ] as const)('1 %s (US) is %s m³', (name, factor) => {
    const { over, under } = size(name);
    expect((Number(over) / Number(under) / 1e9).toExponential(6)).toBe(factor);
  });

  it.each([
    ['lb', '4.535924e-1'],
    ['oz', '2.834952e-2'],
  ] as const)('1 %s (avoirdupois) is %s kg', (name, factor) => {
    const { over, under } = size(name);
    expect((Number(over) / Number(under) / 1e6).toExponential(6)).toBe(factor);
  });

  it.each([
    ['in', '2.54e-2'],
    ['ft', '3.048e-1'],
    ['yd', '9.144e-1'],
  ] as const)('1 %s is %s m', (name, factor) => {
    expect(Number(lengthMeasure(name).size) / 1e9).toBe(Number(factor));
  });

  it.each([
    ['32 °F', 0],
    ['212 °F', 1000],
    ['-40 °F', -400],
    ['68 °F', 200],
    ['77 °F', 250],
    ['98.6 °F', 370],
    ['0 °F', -178],
  ])('t/°C = (t/°F − 32)/1.8: %s is %d tenths of a degree Celsius', (text, tenths) => {
    expect(parseTemperature(text, { prefer: 'metric' })).toEqual({ ok: true, value: tenths });
  });
});
