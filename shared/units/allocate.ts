import { err, ok, type Result } from '@/shared/result/result';
import { type MinorUnits, minorUnits } from '@/shared/units/minor-units';
import { ratio } from '@/shared/units/ratio';
import { roundDown } from '@/shared/units/round-ratio';

export type AllocateError =
  | { readonly code: 'no-weights' }
  /** A weight below zero, broken, or past the safe integers. */
  | { readonly code: 'bad-weight'; readonly index: number }
  | { readonly code: 'weights-are-all-zero' };

/**
 * Shares money out by weights so that the shares add up to it exactly: the largest remainder method. Each share is
 * first rounded towards zero, then the minor units left over go one each to the largest remainders, the earlier one
 * first when two are equal. So no share is off by a whole minor unit, and a weight of zero gets nothing. Money below
 * zero is shared as its mirror image. Weights are whole numbers, zero and above (areas, volumes, hours in their small
 * units). Fails with `no-weights`, `bad-weight` or `weights-are-all-zero`. `allocate(minorUnits(100), [1, 1, 1])` is
 * 34, 33, 33.
 */
export function allocate(minor: MinorUnits, weights: readonly number[]): Result<readonly MinorUnits[], AllocateError> {
  if (weights.length === 0) return err({ code: 'no-weights' });
  const bad = weights.findIndex((weight) => !Number.isSafeInteger(weight) || weight < 0);
  if (bad >= 0) return err({ code: 'bad-weight', index: bad });
  const exactWeights = weights.map(BigInt);
  const all = exactWeights.reduce((sum, weight) => sum + weight, 0n);
  if (all === 0n) return err({ code: 'weights-are-all-zero' });

  const sign = minor < 0 ? -1n : 1n;
  const size = BigInt(minor) * sign;
  const shares = exactWeights.map((weight, index) => {
    const whole = roundDown(ratio(size * weight, all));
    return { index, whole, remainder: size * weight - whole * all };
  });
  const left = size - shares.reduce((sum, { whole }) => sum + whole, 0n);
  const byRemainder = [...shares].sort((a, b) =>
    a.remainder === b.remainder ? a.index - b.index : a.remainder > b.remainder ? -1 : 1,
  );
  const favoured = new Set(byRemainder.slice(0, Number(left)).map(({ index }) => index));
  return ok(shares.map(({ index, whole }) => minorUnits(sign * (whole + (favoured.has(index) ? 1n : 0n)))));
}
