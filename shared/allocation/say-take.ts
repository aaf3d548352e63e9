import type { AllocationAsk, Take } from '@/shared/allocation/allocation-ask';
import { type SayAllocation, sayWanted } from '@/shared/allocation/say-context';

/** One take in a sentence: `Take 1.2 kg from T-0012, lot 44, shelf 2.` What it is for stands beside it. */
export function sayTake(ask: AllocationAsk, { containerId, amount }: Take, how: SayAllocation): string {
  const container = ask.containers.find(({ id }) => id === containerId);
  if (!container) throw new RangeError(`A take of what is not there: ${containerId}`);
  const { label, lotWords, place, unit } = container;
  return `Take ${sayWanted(amount, unit, how)} from ${label}, ${lotWords}, ${place}.`;
}
