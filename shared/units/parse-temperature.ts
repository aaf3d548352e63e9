import { err, ok, type Result } from '@/shared/result/result';
import { COLDEST, HOTTEST, LONGEST_TEXT } from '@/shared/units/limits';
import { plainCharacters } from '@/shared/units/plain-characters';
import { ratio } from '@/shared/units/ratio';
import { roundHalfAwayFromZero } from '@/shared/units/round-ratio';
import { type TenthsCelsius, tenthsCelsius } from '@/shared/units/tenths-celsius';
import type { UnitSystem } from '@/shared/units/unit-system';

export type TemperatureError =
  | { readonly code: 'empty' }
  | { readonly code: 'not-a-number'; readonly at: number }
  | { readonly code: 'unknown-unit'; readonly at: number; readonly written: string }
  | { readonly code: 'finer-than-the-book'; readonly at: number }
  | { readonly code: 'absurd'; readonly at: number; readonly least: TenthsCelsius; readonly most: TenthsCelsius };

const FORM = /^(\s*)([-+]?)\s*(\d*)(?:[.,](\d+))?\s*/;
const CELSIUS = /^(?:(?:°|deg\.?|degrees?)?\s*(?:c|celsius)|℃)$/i;
const FAHRENHEIT = /^(?:(?:°|deg\.?|degrees?)?\s*(?:f|fahrenheit)|℉)$/i;
const DEGREE = /^(?:°|deg\.?|degrees?)?$/i;

/**
 * Reads a temperature into whole tenths of a degree Celsius: `21.5 °C`, `21,5C`, `72 F`, `-4 °F`, `20`. A bare number
 * or a bare degree sign is Celsius for metric and Fahrenheit for imperial. Fahrenheit rounds to the nearest tenth of a
 * degree Celsius (half away from zero), which gives every whole degree Fahrenheit back. More than one decimal is
 * `finer-than-the-book`. From −90.0 °C to 300.0 °C, both allowed, else `absurd`. Never throws; `at` counts characters
 * from the start. °C = (°F − 32) × 5/9 (NIST SP 811, Appendix B). `parseTemperature('72 F', { prefer: 'metric' })` is
 * 222, or 22.2 °C.
 */
export function parseTemperature(
  typed: string,
  { prefer }: { readonly prefer: UnitSystem },
): Result<TenthsCelsius, TemperatureError> {
  const text = plainCharacters(typed).trimEnd();
  if (text.trim() === '') return err({ code: 'empty' });
  if (text.length > LONGEST_TEXT) return err({ code: 'not-a-number', at: LONGEST_TEXT });
  const [all = '', space = '', sign = '', whole = '', fraction = ''] = FORM.exec(text) ?? [];
  const at = space.length;
  if (whole === '' && fraction === '') return err({ code: 'not-a-number', at });
  const written = text.slice(all.length);
  // Another digit or mark is a broken number rather than a unit.
  if (/^[\d.,+\-/'"]/.test(written)) return err({ code: 'not-a-number', at: all.length });
  const imperial = DEGREE.test(written) ? prefer === 'imperial' : FAHRENHEIT.test(written);
  if (!imperial && !DEGREE.test(written) && !CELSIUS.test(written)) {
    return err({ code: 'unknown-unit', at: all.length, written });
  }
  if (/^\d0*[1-9]/.test(fraction)) return err({ code: 'finer-than-the-book', at });
  const tenths = BigInt(`${whole}${fraction.slice(0, 1) || '0'}`) * (sign === '-' ? -1n : 1n);
  const celsius = imperial ? roundHalfAwayFromZero(ratio((tenths - 320n) * 5n, 9n)) : tenths;
  if (celsius < BigInt(COLDEST) || celsius > BigInt(HOTTEST)) {
    return err({ code: 'absurd', at, least: COLDEST, most: HOTTEST });
  }
  return ok(tenthsCelsius(celsius));
}
