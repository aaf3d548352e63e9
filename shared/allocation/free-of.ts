import type { AllocationContainer, StockAmount } from '@/shared/allocation/allocation-ask';
import { exactInteger } from '@/shared/units/exact-integer';
import type { StockUnit } from '@/shared/units/stock-unit';

/** What of a container is promised to nobody: what is left less every promise, never below 0. 5 kg less 2 kg is 3 kg. */
export function freeOf({ left, promisedTo = [] }: Pick<AllocationContainer, 'left' | 'promisedTo'>): StockAmount {
  const promised = promisedTo.reduce((sum, { amount }) => sum + amount, 0);
  return exactInteger<StockUnit>(Math.max(0, left - promised));
}
