import { unwrap } from '@/shared/result/result';
import { allocate } from '@/shared/units/allocate';
import type { MinorUnits } from '@/shared/units/minor-units';
import type { TalliedBoard } from '@/shared/wood/tally-boards';

/**
 * What each board of a pack cost: the cost of the pack shared out by their faces, length times width, by the method of
 * `allocate`, so that the shares add up to it exactly and none is off by a whole minor unit. It goes by all boards the
 * pack came with, in the order of its tally, so a board costs the same whenever it is taken out. Common practice: all are
 * of one thickness and one price. 100 shared by two boards of which one is three times as wide is 25 and 75.
 */
export function shareAmongBoards(cost: MinorUnits, boards: readonly TalliedBoard[]): readonly MinorUnits[] {
  const faces = boards.map(({ width, length }) => BigInt(width) * BigInt(length));
  const common = faces.reduce(greatestCommonDivisor, 0n) || 1n;
  const largest = faces.reduce(larger, 0n) / common;
  // Sizes as a rule is marked have so much in common that this is 1; any others lose less than a part in ten to the fifteen.
  const coarser = largest / BigInt(Number.MAX_SAFE_INTEGER) + 1n;
  return unwrap(
    allocate(
      cost,
      faces.map((face) => Number(face / common / coarser)),
    ),
  );
}

function larger(a: bigint, b: bigint): bigint {
  if (a > b) return a;
  return b;
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  let [rest, by] = [a, b];
  while (by > 0n) [rest, by] = [by, rest % by];
  return rest;
}
