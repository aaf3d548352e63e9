import type { StandingPromise } from '@/shared/promise/promise-line';

/** So much off what a job was promised of a thing for a need. */
export type PromiseTaken = {
  readonly jobId: number;
  readonly stockId: number;
  readonly needId: number | null;
  readonly amount: number;
};

/**
 * Which promises an amount is taken off: the oldest first where they are used, the newest first where they can no longer
 * be kept; those for the need that is named before all others. What stands for one job, thing and need is one line of the
 * answer. Never more than stands: of 500 and 300, 900 takes both whole and no more.
 *
 * Example: 400 of 500 promised on Monday and 300 on Tuesday, newest first → 300 of Tuesday's, 100 of Monday's.
 */
export function takeFromPromises(
  standing: readonly StandingPromise[],
  amount: number,
  { first, needId }: { first: 'oldest' | 'newest'; needId?: number | undefined },
): PromiseTaken[] {
  const rank = (each: StandingPromise) => Number(needId !== undefined && each.needId !== needId);
  const order = [...standing].sort((a, b) => rank(a) - rank(b) || (first === 'oldest' ? a.id - b.id : b.id - a.id));
  const taken = new Map<string, PromiseTaken>();
  let missing = amount;
  for (const { jobId, stockId, needId: of, amount: stands } of order) {
    const off = Math.min(stands, missing);
    if (off <= 0) break;
    missing -= off;
    const key = `${jobId}/${stockId}/${of}`;
    taken.set(key, { jobId, stockId, needId: of, amount: (taken.get(key)?.amount ?? 0) + off });
  }
  return [...taken.values()];
}
