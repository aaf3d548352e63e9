import { type PlacedText, placeOf } from '@/shared/scan-codes/placed-text';
import type { Malformed } from '@/shared/scan-codes/scan-reading';

/** A certain reading, something it nearly was, or neither. */
export type Attempt<Reading> = { readonly reading?: Reading; readonly malformed?: Malformed };

/** A fault as a person is told of it: placed in the text as given, its particulars as words for a sentence. */
export function nearly(
  looksLike: Malformed['looksLike'],
  placed: PlacedText,
  { code, at, ...more }: { readonly code: Malformed['code']; readonly at: number; readonly [more: string]: unknown },
): Malformed {
  const params = Object.fromEntries(Object.entries(more).map(([name, value]) => [name, String(value)]));
  return { looksLike, code, at: placeOf(placed, at), params };
}
