import type { AllocationAsk, StockAmount, Take } from '@/shared/allocation/allocation-ask';
import { exactInteger } from '@/shared/units/exact-integer';
import type { StockUnit } from '@/shared/units/stock-unit';

/** What a need is short, in its small unit, above 0. */
export type Short = { readonly needId: string; readonly amount: StockAmount };

/** What some takes leave each need short, in the order of the needs; those that are met are left out. */
export function shortOf({ needs }: Pick<AllocationAsk, 'needs'>, takes: readonly Take[]): readonly Short[] {
  const got = new Map<string, number>();
  for (const { needId, amount } of takes) got.set(needId, (got.get(needId) ?? 0) + amount);
  return needs.flatMap(({ id, amount }) => {
    const missing = amount - (got.get(id) ?? 0);
    return missing > 0 ? [{ needId: id, amount: exactInteger<StockUnit>(missing) }] : [];
  });
}
