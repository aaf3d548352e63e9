import type { Ratio } from '@/shared/units/ratio';

/** The greatest whole number not above the ratio. −1/2 gives −1. */
export function roundDown({ over, under }: Ratio): bigint {
  const towardsZero = over / under;
  return over < 0n && over % under !== 0n ? towardsZero - 1n : towardsZero;
}

/** The least whole number not below the ratio. 1/2 gives 1. */
export function roundUp({ over, under }: Ratio): bigint {
  return -roundDown({ over: -over, under });
}

/**
 * The nearest whole number; an exact half goes away from zero, as people round on paper. Every conversion that has to
 * give up something below the small unit gives it up here. 5/2 gives 3, −5/2 gives −3, 453592.37 mg (a pound) gives
 * 453592.
 */
export function roundHalfAwayFromZero({ over, under }: Ratio): bigint {
  const size = over < 0n ? -over : over;
  const rounded = (2n * size + under) / (2n * under);
  return over < 0n ? -rounded : rounded;
}
