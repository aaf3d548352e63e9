import type { QuantityError } from '@/shared/units/parse-quantity';
import type { StockUnit } from '@/shared/units/stock-unit';

const COUNTED: Record<StockUnit, { readonly by: string; readonly such: string }> = {
  mg: { by: 'weight', such: 'g, kg, oz or lb' },
  uL: { by: 'volume', such: 'mL, L, fl oz, qt or gal' },
  piece: { by: 'the piece', such: 'pcs' },
};

/**
 * What is wrong with a typed quantity and what to type instead, in a sentence for the person who typed it.
 * `12` where a weight is wanted gives `Add the unit, for example 2.5 kg.`
 */
export function sayQuantityError(error: QuantityError): string {
  switch (error.code) {
    case 'empty':
      return 'Type an amount with its unit, for example 2.5 kg.';
    case 'not-a-number':
      return 'This does not read as an amount. Try 2.5 kg, 1 gal or 3 pcs.';
    case 'negative':
      return 'An amount cannot be below zero.';
    case 'needs-a-unit':
      return 'Add the unit, for example 2.5 kg.';
    case 'unknown-unit':
      return `“${error.written}” is not a unit the book knows. It knows g, kg, oz, lb, mL, L, fl oz, pt, qt, gal and pcs.`;
    case 'unit-does-not-fit':
      return `This is counted by ${COUNTED[error.wanted].by}. Give it in ${COUNTED[error.wanted].such}.`;
    case 'two-readings':
      return 'That comma can mean two amounts. Use a point for the decimals and no comma.';
    case 'improper-fraction':
      return 'Put a space between the whole number and the fraction, as in 1 1/2.';
    case 'parts-do-not-follow':
      return 'The second part must be the smaller unit of the first, as in 1 lb 4 oz.';
    case 'finer-than-the-book':
      return 'That is finer than the book counts.';
    case 'absurd':
      return 'That is more than one container can hold. Check the unit.';
  }
}
