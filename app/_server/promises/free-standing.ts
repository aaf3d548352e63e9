import type { Pen } from '@/app/_server/ledger/write-entry';
import { enterBeside, writePromise } from '@/app/_server/promises/write-promise';
import type { StandingPromise } from '@/shared/promise/promise-line';
import { takeFromPromises } from '@/shared/promise/take-from-promises';

/** Frees all of these promises, in the pen's entry, which must be entered before: undone with it. */
export async function freeStanding(pen: Pen, standing: readonly StandingPromise[]): Promise<void> {
  await enterBeside(
    pen,
    standing.map(({ stockId }) => stockId),
  );
  const all = standing.reduce((sum, { amount }) => sum + amount, 0);
  for (const { amount, ...line } of takeFromPromises(standing, all, { first: 'oldest' })) {
    await writePromise(pen, { ...line, delta: -amount });
  }
}
