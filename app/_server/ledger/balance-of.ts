import type { Balance, StockKind } from '@/shared/ledger/balance';

/** The columns a balance is made of. */
export const stockSelect = {
  kind: true,
  quantity: true,
  placeId: true,
  condition: true,
  hold: true,
  ownerJobId: true,
  opened: true,
} as const;

export type StockRow = {
  kind: string;
  quantity: bigint;
  placeId: number | null;
  condition: string;
  hold: string;
  ownerJobId: number | null;
  opened: string | null;
};

/** A stock row as the ledger's balance. */
export function balanceOf(row: StockRow): Balance {
  return {
    kind: row.kind as StockKind,
    quantity: Number(row.quantity),
    placeId: row.placeId,
    condition: row.condition,
    hold: row.hold,
    jobId: row.ownerJobId,
    opened: row.opened,
  };
}
