import type { Life } from '@/shared/calendar/life';
import type { PolicyKind } from '@/shared/shelf-life/types/policy';

/** Months by code. Type I, a letter, cannot be extended; type II, a digit, may be after inspection or test. */
const TYPE_ONE: Record<string, number> = {
  A: 1,
  B: 2,
  C: 3,
  D: 4,
  E: 5,
  F: 6,
  G: 9,
  H: 12,
  J: 15,
  K: 18,
  L: 21,
  M: 24,
  N: 27,
  P: 30,
  Q: 36,
  R: 48,
  S: 60,
};
const TYPE_TWO: Record<string, number> = { 1: 3, 2: 6, 3: 9, 4: 12, 5: 18, 6: 24, 7: 36, 8: 48, 9: 60 };

/**
 * How a material keeps by the one-character shelf-life code on government and aerospace containers (41 CFR 101-27.205,
 * MIL-STD-129): a letter is `fixed`, a digit from 1 `inspectable`, each with its months. `X` is inspectable for longer than
 * 60 months, read as 60, the cautious end. `0`, not deteriorative, `keeps`. Case does not matter; undefined for a
 * character that is no code, as I and O are not. `shelfLifeCode('H')` is fixed, 12 months.
 */
export function shelfLifeCode(code: string): { readonly kind: PolicyKind; readonly statedLife?: Life } | undefined {
  const upper = code.trim().toUpperCase();
  if (upper === '0') return { kind: 'keeps' };
  if (upper === 'X') return { kind: 'inspectable', statedLife: { count: 60, unit: 'month' } };
  const one = Object.hasOwn(TYPE_ONE, upper) ? TYPE_ONE[upper] : undefined;
  if (one !== undefined) return { kind: 'fixed', statedLife: { count: one, unit: 'month' } };
  const two = Object.hasOwn(TYPE_TWO, upper) ? TYPE_TWO[upper] : undefined;
  return two === undefined ? undefined : { kind: 'inspectable', statedLife: { count: two, unit: 'month' } };
}
