import { CSET_82 } from '@/shared/scan-codes/cset-82';

const CHECK_CHARACTERS = '23456789ABCDEFGHJKLMNPQRSTUVWXYZ';
const WEIGHTS = [2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71, 73, 79, 83];

/**
 * Checks the two closing characters of a GS1 model number: prime weights growing towards the front, modulo 1021.
 *
 * Source: GS1 General Specifications 7.9.5, check character pair. The published example `1987654Ad4X4bL5ttr2310c2K`
 * passes.
 */
export function checkModelNumber(
  value: string,
): { readonly code: 'too-short' | 'check-characters'; readonly at: number } | undefined {
  if (value.length < 2) return { code: 'too-short', at: 0 };
  const body = value.slice(0, -2);
  let sum = 0;
  for (let index = 0; index < body.length; index++) {
    sum += CSET_82.indexOf(body.charAt(index)) * (WEIGHTS[body.length - 1 - index] ?? 0);
  }
  const high = CHECK_CHARACTERS.indexOf(value.charAt(value.length - 2));
  const low = CHECK_CHARACTERS.indexOf(value.charAt(value.length - 1));
  if (high >= 0 && low >= 0 && high * 32 + low === sum % 1021) return undefined;
  return { code: 'check-characters', at: body.length };
}
