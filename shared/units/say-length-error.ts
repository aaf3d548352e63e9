import type { LengthError } from '@/shared/units/parse-length';
import { printLength } from '@/shared/units/print-length';
import { soldBeside } from '@/shared/units/quarters';
import type { UnitSystem } from '@/shared/units/unit-system';

/**
 * What is wrong with a typed length and what to type instead, in a sentence for the person who typed it, with examples in
 * the units the workshop likes. `61/2"` gives `Put a space between the whole number and the fraction, as in 6 1/2.`
 */
export function sayLengthError(error: LengthError, { prefer }: { readonly prefer: UnitSystem }): string {
  const such = prefer === 'metric' ? '1690 mm or 2.5 m' : '66 1/2 in or 5\' 6 1/2"';
  switch (error.code) {
    case 'empty':
      return `Type a length, for example ${such}.`;
    case 'not-a-number':
      return `This does not read as a length. Try ${such}.`;
    case 'negative':
      return 'A length cannot be below zero.';
    case 'needs-a-unit':
      return `Add the unit, for example ${such}.`;
    case 'unknown-unit':
      return `“${error.written}” is not a unit of length here. Try ${such}.`;
    case 'two-readings':
      return 'That comma can mean two lengths. Use a point for the decimals and no comma.';
    case 'improper-fraction':
      return 'Put a space between the whole number and the fraction, as in 6 1/2.';
    case 'not-sold-in-quarters': {
      const sold = soldBeside(error.quarters).map((quarters) => `${quarters}/4`);
      const beside = sold.length > 1 ? `${sold.join(' or ')}?` : `${sold[0]} is the most.`;
      return `${error.quarters}/4 is not a thickness that is sold: ${beside}`;
    }
    case 'fraction-not-on-the-rule':
      return 'A rule has halves, quarters, eighths down to sixty-fourths. Use one of those.';
    case 'parts-do-not-follow':
      return 'The second part must be the smaller unit, as in 5\' 6".';
    case 'finer-than-the-book':
      return 'That is finer than the book measures.';
    case 'absurd':
      return `That is longer than the book takes (${printLength(error.most, { prefer })}). Check the unit.`;
  }
}
