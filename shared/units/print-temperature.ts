import { decimalText } from '@/shared/units/decimal-text';
import { ratio } from '@/shared/units/ratio';
import { roundHalfAwayFromZero } from '@/shared/units/round-ratio';
import type { TenthsCelsius } from '@/shared/units/tenths-celsius';
import type { UnitSystem } from '@/shared/units/unit-system';

/**
 * A temperature as a maker reads it: Celsius to the stored tenth, Fahrenheit to the nearest whole degree (half away
 * from zero). °F = °C × 9/5 + 32 (NIST SP 811, Appendix B). `printTemperature(tenthsCelsius(215), { prefer: 'metric'
 * })` is `21.5 °C`, and `71 °F` for imperial.
 */
export function printTemperature(temperature: TenthsCelsius, { prefer }: { readonly prefer: UnitSystem }): string {
  const tenths = BigInt(temperature);
  if (prefer === 'metric') return `${decimalText(tenths, 1)} °C`;
  return `${decimalText(roundHalfAwayFromZero(ratio(tenths * 9n + 1600n, 50n)), 0)} °F`;
}
