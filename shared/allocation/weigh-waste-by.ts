import type { AllocationAsk } from '@/shared/allocation/allocation-ask';

/** How waste is weighed: by what it cost when every container that holds anything has its price, else by its amount. */
export function weighWasteBy({ containers }: Pick<AllocationAsk, 'containers'>): 'value' | 'amount' {
  return containers.every(({ left, price }) => left === 0 || price !== undefined) ? 'value' : 'amount';
}
