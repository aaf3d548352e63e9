/**
 * The next number up (`by` 1) or down (`by` -1) from what is typed, kept within its limits and free of the crumbs of
 * binary fractions. What does not read as a number counts as the least one. `stepNumber('0.2', 1, { min: 0, max: 5, step: 0.1 })` is `0.3`.
 */
export function stepNumber(
  text: string,
  by: 1 | -1 | number,
  { min, max, step }: { min: number; max: number; step: number },
): string {
  const typed = Number(text.trim().replace(',', '.'));
  const from = text.trim() === '' || !Number.isFinite(typed) ? min : typed;
  const places = Math.max(decimals(step), decimals(from));
  const next = Math.min(max, Math.max(min, from + by * step));
  return String(Number(next.toFixed(Math.min(places, 10))));
}

function decimals(value: number): number {
  return String(value).split('.')[1]?.length ?? 0;
}
