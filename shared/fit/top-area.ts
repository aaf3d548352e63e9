import type { HalfSizes } from '@/shared/fit/top-shape';

/**
 * The area of a shape in square micrometres. Rectangle: 4ab − (4 − π)r². Superellipse: 4ab Γ(1 + 1/n)² / Γ(1 + 2/n)
 * (a Dirichlet integral), which is πab at n = 2.
 */
export function topArea(sizes: HalfSizes): number {
  const box = 4 * sizes.a * sizes.b;
  if (sizes.curve === 'corners') return box - (4 - Math.PI) * sizes.r ** 2;
  return box * Math.exp(2 * logGamma(1 + 1 / sizes.n) - logGamma(1 + 2 / sizes.n));
}

/** ln Γ(x) for x ≥ 1, by Stirling's series (DLMF 5.11.1) after moving x past 8; good to 1e-11. */
function logGamma(x: number): number {
  if (x < 8) return logGamma(x + 1) - Math.log(x);
  const series = 1 / (12 * x) - 1 / (360 * x ** 3) + 1 / (1260 * x ** 5) - 1 / (1680 * x ** 7);
  return (x - 0.5) * Math.log(x) - x + Math.log(2 * Math.PI) / 2 + series;
}
