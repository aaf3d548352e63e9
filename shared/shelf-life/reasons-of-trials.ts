import { standingInspections } from '@/shared/shelf-life/standing-inspections';
import type { Reason } from '@/shared/shelf-life/types/reason';
import type { JudgeInput } from '@/shared/shelf-life/types/verdict';

/**
 * The stop for two lots that failed their test pour together and have not passed one together since: what did not cure in
 * the cup does not cure in the piece, a client's or an own (common practice). Care for a test, which is how it is cleared.
 */
export function reasonsOfTrials(input: JudgeInput): Reason[] {
  const { pairedWith, purpose, today } = input;
  if (!pairedWith) return [];
  const { failedTogether } = standingInspections(input, today, pairedWith);
  if (!failedTogether) return [];
  const weight = purpose === 'test' ? 'care' : 'stop';
  return [{ code: 'pair-failed', weight, on: failedTogether.on, other: pairedWith.label }];
}
