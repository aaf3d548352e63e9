import type { PromiseLine, StandingPromise } from '@/shared/promise/promise-line';

/**
 * What is promised now, line by line in the order it was promised: the lines above zero, each less what was taken off it
 * since. A line below zero takes from the line it undoes; else from those of its job and thing for the same need, the
 * oldest first, then from those for no need, then from the rest. The amounts of a job and a thing add up to the sum of
 * its lines. What would go below zero, which no book that proves has, is left out.
 *
 * Example: +500 for need 1, +300 for need 2, −600 for need 1 → 200 for need 2.
 */
export function standingPromises(lines: readonly PromiseLine[]): StandingPromise[] {
  const standing: { -readonly [K in keyof StandingPromise]: StandingPromise[K] }[] = [];
  for (const { delta, reversesId, ...line } of [...lines].sort((a, b) => a.id - b.id)) {
    if (delta > 0) {
      standing.push({ ...line, amount: delta });
      continue;
    }
    const own = standing.filter((each) => each.jobId === line.jobId && each.stockId === line.stockId);
    const rank = (each: StandingPromise) =>
      each.id === reversesId ? 0 : each.needId === line.needId ? 1 : each.needId === null ? 2 : 3;
    let missing = -delta;
    for (const each of own.sort((a, b) => rank(a) - rank(b) || a.id - b.id)) {
      const off = Math.min(each.amount, missing);
      each.amount -= off;
      missing -= off;
    }
  }
  return standing.filter((each) => each.amount > 0);
}
