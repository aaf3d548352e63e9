import type { TemperatureError } from '@/shared/units/parse-temperature';
import { printTemperature } from '@/shared/units/print-temperature';
import type { UnitSystem } from '@/shared/units/unit-system';

/** What is wrong with a typed temperature, and what to type instead. */
export function sayTemperatureError(error: TemperatureError, prefer: UnitSystem): string {
  const example = prefer === 'imperial' ? '41 or 5 °C' : '5 or 41 °F';
  switch (error.code) {
    case 'empty':
      return `Give a temperature, such as ${example}.`;
    case 'not-a-number':
      return `That does not read as a temperature. Type it like ${example}.`;
    case 'unknown-unit':
      return `“${error.written.trim()}” is not a unit of temperature. Type it like ${example}.`;
    case 'finer-than-the-book':
      return 'The book keeps one decimal. Leave the others off.';
    case 'absurd':
      return `No shop is that cold or that warm: the book takes ${printTemperature(error.least, { prefer })} to ${printTemperature(error.most, { prefer })}.`;
  }
}
