import { err, ok, type Result } from '@/shared/result/result';
import { gtinCheckDigit } from '@/shared/scan-codes/gtin-check-digit';

/** The four lengths a GTIN is printed in. UPC-A is GTIN-12; UPC-E arrives from the decoder expanded to it. */
export type GtinForm = 'GTIN-8' | 'GTIN-12' | 'GTIN-13' | 'GTIN-14';

type Gtin = { readonly form: GtinForm; readonly gtin14: string };

export type GtinError =
  | { readonly code: 'not-digits'; readonly at: number }
  | { readonly code: 'wrong-length'; readonly length: number }
  | { readonly code: 'check-digit'; readonly at: number; readonly expected: string; readonly found: string };

const FORMS: Readonly<Record<number, GtinForm>> = { 8: 'GTIN-8', 12: 'GTIN-12', 13: 'GTIN-13', 14: 'GTIN-14' };

/**
 * A GTIN of any printed length as the fourteen digits it is stored by, zeros in front.
 *
 * Errors: `not-digits` with the index of the first other character, `wrong-length` unless 8, 12, 13 or 14,
 * `check-digit` with the digit that would fit.
 * Source: GS1 General Specifications 3.3.2 (GTIN-14 format of shorter GTINs) and 7.9.
 * `toGtin14('4006381333931')` is ok with `{ form: 'GTIN-13', gtin14: '04006381333931' }`.
 */
export function toGtin14(digits: string): Result<Gtin, GtinError> {
  const stray = digits.search(/[^0-9]/);
  if (stray >= 0) return err({ code: 'not-digits', at: stray });
  const form = FORMS[digits.length];
  if (!form) return err({ code: 'wrong-length', length: digits.length });
  const last = digits.length - 1;
  const expected = String(gtinCheckDigit(digits.slice(0, last)));
  const found = digits.charAt(last);
  if (expected !== found) return err({ code: 'check-digit', at: last, expected, found });
  return ok({ form, gtin14: digits.padStart(14, '0') });
}
