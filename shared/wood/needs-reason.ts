import type { PieceFlag } from '@/shared/wood/piece';

/** Of a piece what a job relies on: its measures, in any writing in which two can be compared, and what is seen on it. */
export type ReliedOn<Measure> = { readonly measures: readonly Measure[]; readonly flags: readonly PieceFlag[] };

/**
 * Whether putting a piece right needs a reason: where a measure is another, or a mark is taken away, somebody later will
 * ask why the book says it fits or is safe. A mark that is added speaks for itself (common practice). Strapped → nothing
 * needs one; nothing → strapped needs none.
 */
export function needsReason<Measure>(before: ReliedOn<Measure>, after: ReliedOn<Measure>): boolean {
  const isMeasuredAnew = before.measures.some((measure, index) => measure !== after.measures[index]);
  return isMeasuredAnew || before.flags.some((flag) => !after.flags.includes(flag));
}
