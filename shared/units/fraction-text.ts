/**
 * A whole number of parts of a unit as a maker writes it, in lowest terms. `fractionText(28n, 16n)` is `1 3/4`; 16 of
 * 16 is `1`, none is `0`.
 */
export function fractionText(parts: bigint, denominator: bigint): string {
  const whole = parts / denominator;
  let over = parts % denominator;
  let under = denominator;
  while (over > 0n && over % 2n === 0n && under % 2n === 0n) {
    over /= 2n;
    under /= 2n;
  }
  if (over === 0n) return String(whole);
  return whole === 0n ? `${over}/${under}` : `${whole} ${over}/${under}`;
}
