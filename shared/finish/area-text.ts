import { err, ok, type Result } from '@/shared/result/result';
import { readDecimal } from '@/shared/units/read-decimal';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A square foot is 304.8² square millimetres exactly. */
const SQUARE_FOOT_MM2 = 92_903.04;
const SQUARE_METRE_MM2 = 1e6;
const UNITS: Readonly<Record<string, number>> = {
  m2: SQUARE_METRE_MM2,
  'm²': SQUARE_METRE_MM2,
  sqm: SQUARE_METRE_MM2,
  ft2: SQUARE_FOOT_MM2,
  'ft²': SQUARE_FOOT_MM2,
  sqft: SQUARE_FOOT_MM2,
  'sq ft': SQUARE_FOOT_MM2,
};

/**
 * An area as it is typed, in square millimetres: a number with m², m2, ft² or sq ft, the book's own unit where none is
 * said. Above zero and up to 900 m². `readArea('2.5', …)` in metric is 2 500 000; `'27 sq ft'` is 2 508 382.
 */
export function readArea(
  text: string,
  { prefer }: { readonly prefer: UnitSystem },
): Result<number, { readonly code: 'empty' | 'not-an-area' | 'outside-range' }> {
  const found = /^([\d.,]+)\s*([a-z²\d ]*)$/i.exec(text.trim());
  if (text.trim() === '') return err({ code: 'empty' });
  const number = found && readDecimal(found[1] ?? '');
  const word = (found?.[2] ?? '').trim().toLowerCase();
  const unit = word === '' ? UNITS[prefer === 'metric' ? 'm2' : 'ft2'] : UNITS[word];
  if (!number || unit === undefined) return err({ code: 'not-an-area' });
  const area = Number(`${number.whole}.${number.fraction || '0'}`) * unit;
  return area > 0 && area <= 9e8 ? ok(area) : err({ code: 'outside-range' });
}

/** An area in the book's unit, to a hundredth: `2.50 m²`, `26.91 ft²`. */
export function printArea(areaMm2: number, { prefer }: { readonly prefer: UnitSystem }): string {
  return prefer === 'metric'
    ? `${(areaMm2 / SQUARE_METRE_MM2).toFixed(2)} m²`
    : `${(areaMm2 / SQUARE_FOOT_MM2).toFixed(2)} ft²`;
}
