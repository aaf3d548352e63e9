import type { Compared } from './compare';

export type SizeFigures = { size: string; compared: Record<string, Compared> };
export type Goal = { what: string; goal: number; measured: number; unit: string };

/** Times on every size of book, the app's beside the bare route's of the same run. */
export function printSizes(figures: readonly SizeFigures[]): void {
  for (const { size, compared } of figures) {
    console.log(`\n${size} (containers / movements), milliseconds`);
    console.table(
      Object.fromEntries(
        Object.entries(compared).map(([name, { ours, bare, ratio }]) => [
          name,
          {
            median: round(ours.median),
            p95: round(ours.p95),
            'bare median': round(bare.median),
            'bare p95': round(bare.p95),
            ratio: round(ratio),
          },
        ]),
      ),
    );
  }
}

/** Every goal with what was measured. All are "at most". */
export function printGoals(goals: readonly Goal[]): void {
  console.log('\nGoals');
  console.table(
    Object.fromEntries(
      goals.map(({ what, goal, measured, unit }) => [
        what,
        {
          'at most': `${goal}${unit}`,
          measured: `${round(measured)}${unit}`,
          met: measured <= goal ? 'yes' : 'no',
        },
      ]),
    ),
  );
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
