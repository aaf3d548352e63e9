import type { Balance } from '@/shared/ledger/balance';

/**
 * The fields in which a kept balance differs from the one folded from the ledger; empty when they agree.
 * Example: kept 900, folded 1 000 → `['quantity']`.
 */
export function differingFields(kept: Balance, folded: Balance): (keyof Balance)[] {
  return (Object.keys(folded) as (keyof Balance)[]).filter((field) => kept[field] !== folded[field]);
}
