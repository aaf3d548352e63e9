import type { Step } from '@/shared/timeline/step';

/**
 * Whether the order of work holds between two steps: both of one part, or either of the whole job. The table top and its
 * base do not wait for one another; putting them together, of the whole job, waits for both.
 */
export function bearsOn(one: Pick<Step, 'partId'>, other: Pick<Step, 'partId'>): boolean {
  return one.partId === other.partId || one.partId === null || other.partId === null;
}
