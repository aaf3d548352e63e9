/**
 * How many pairs of lines between neighbouring columns cross. Lines that share an end do not. Counted as inversions by a
 * tree of sums, so that some thousand lines are counted at once.
 *
 * Columns `[a, b]`, `[c, d]` with lines a–d and b–c cross once.
 *
 * Source: W. Barth, M. Jünger, P. Mutzel, "Simple and Efficient Bilayer Cross Counting", Graph Drawing 2002 (from memory).
 */
export function countCrossings(
  columns: readonly (readonly string[])[],
  lines: readonly (readonly [string, string])[],
): number {
  const spots = new Map<string, { column: number; row: number }>();
  for (const [column, slots] of columns.entries()) {
    for (const [row, slot] of slots.entries()) spots.set(slot, { column, row });
  }
  const gaps: [number, number][][] = columns.map(() => []);
  for (const [from, to] of lines) {
    const [left, right] = [spots.get(from), spots.get(to)];
    if (left && right && right.column === left.column + 1) gaps[left.column]?.push([left.row, right.row]);
  }
  return gaps.reduce((sum, gap, nr) => sum + inversions(gap, columns[nr + 1]?.length ?? 0), 0);
}

function inversions(gap: [number, number][], size: number): number {
  gap.sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const sums = new Array<number>(size + 1).fill(0);
  let crossings = 0;
  for (const [seen, [, right]] of gap.entries()) {
    let notAbove = 0;
    for (let at = right + 1; at > 0; at -= at & -at) notAbove += sums[at] ?? 0;
    crossings += seen - notAbove;
    for (let at = right + 1; at <= size; at += at & -at) sums[at] = (sums[at] ?? 0) + 1;
  }
  return crossings;
}
