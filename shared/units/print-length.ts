import { decimalText } from '@/shared/units/decimal-text';
import { fractionText } from '@/shared/units/fraction-text';
import type { Nanometres } from '@/shared/units/nanometres';
import { ratio } from '@/shared/units/ratio';
import { roundHalfAwayFromZero } from '@/shared/units/round-ratio';
import type { UnitSystem } from '@/shared/units/unit-system';

export type LengthPrinting = {
  readonly prefer: UnitSystem;
  /** The finest fraction of an inch to show; 16 unless told. */
  readonly denominator?: 16 | 32 | 64;
  /** `feet` (unless told) shows `5' 6 1/2"`, `inches` shows `66 1/2 in`, `inch-marks` shows `66 1/2"`. */
  readonly style?: 'feet' | 'inches' | 'inch-marks';
};

const INCH = 25_400_000n;
const TENTH_OF_A_MILLIMETRE = 100_000n;

/**
 * A length as a maker reads it: `5' 6 1/2"`, `6 1/2"`, `66 1/2 in`, `1,690 mm`, `44.5 mm`. Inches go to the nearest
 * 1/16, 1/32 or 1/64, millimetres to the nearest 0.1 (half away from zero); whenever that is not the length itself, `≈
 * ` stands before. What shows without `≈` is read back by `parseLength` to the same nanometre (zero and above). For a
 * form that is edited again use `printLengthExact`. `printLength(nanometres(1_689_100_000), { prefer: 'imperial' })` is
 * `5' 6 1/2"`.
 */
export function printLength(length: Nanometres, { prefer, denominator = 16, style = 'feet' }: LengthPrinting): string {
  const signed = BigInt(length);
  const size = signed < 0n ? -signed : signed;
  const under = BigInt(denominator);
  const step = prefer === 'metric' ? ratio(TENTH_OF_A_MILLIMETRE) : ratio(INCH, under);
  const steps = roundHalfAwayFromZero(ratio(size * step.under, step.over));
  const exact = steps * step.over === size * step.under;
  const shown = prefer === 'metric' ? `${decimalText(steps, 1, 'grouped')} mm` : inInches(steps, under, style);
  return `${exact ? '' : '≈ '}${signed < 0n ? '−' : ''}${shown}`;
}

function inInches(steps: bigint, under: bigint, style: 'feet' | 'inches' | 'inch-marks'): string {
  if (style === 'inches') return `${fractionText(steps, under)} in`;
  if (style === 'inch-marks') return `${fractionText(steps, under)}"`;
  const inAFoot = 12n * under;
  const feet = steps / inAFoot;
  const inches = steps % inAFoot;
  if (feet === 0n) return `${fractionText(inches, under)}"`;
  return inches === 0n ? `${feet}'` : `${feet}' ${fractionText(inches, under)}"`;
}
