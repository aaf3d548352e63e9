import { type Nanometres, nanometres } from '@/shared/units/nanometres';

const QUARTER_INCH = 6_350_000n;

/**
 * Whether rough lumber is sold in that many quarters of an inch: every quarter from 4/4 to 8/4, every half inch from
 * there to 24/4 (six inches). Common practice, after the standard thicknesses of hardwood grading rules (from memory).
 */
export function isSoldInQuarters(quarters: bigint): boolean {
  return quarters >= 4n && quarters <= 24n && (quarters <= 8n || quarters % 2n === 0n);
}

/** Whether a space was left out: `11/4`, `13/4`, `21/4`, `23/4` were meant as `1 1/4`, `1 3/4`, `2 1/4`, `2 3/4`. */
export function isForgottenSpace(quarters: bigint): boolean {
  const last = quarters % 10n;
  return quarters > 10n && (last === 1n || last === 3n);
}

/** The thicknesses sold next below and above one that is not: 9 quarters lie between 8 and 10, above 24 is none. */
export function soldBeside(quarters: bigint): readonly bigint[] {
  const most = 24n;
  return quarters > most ? [most] : [quarters - 1n, quarters + 1n];
}

/** The nominal thickness of that many quarters of an inch. `quartersToLength(8n)` is 50 800 000 nm, two inches. */
export function quartersToLength(quarters: bigint): Nanometres {
  return nanometres(quarters * QUARTER_INCH);
}

/**
 * A nominal thickness in quarters of an inch as lumber is sold, or undefined when it is not such a thickness.
 * `printQuarters(nanometres(50_800_000))` is `8/4`; two and a quarter inches have no such name.
 */
export function printQuarters(length: Nanometres): string | undefined {
  const exact = BigInt(length);
  if (exact % QUARTER_INCH !== 0n) return undefined;
  const quarters = exact / QUARTER_INCH;
  return isSoldInQuarters(quarters) ? `${quarters}/4` : undefined;
}
