import { balanceOf, stockSelect } from '@/app/_server/ledger/balance-of';
import type { OpenBook } from '@/prisma/open-book';
import { type Balance, emptyBalance, type StockKind } from '@/shared/ledger/balance';
import { differingFields } from '@/shared/ledger/differing-fields';
import { followMovement } from '@/shared/ledger/follow-movement';

/**
 * Folds the ledger again and puts every kept balance that differs right. Answers the labels of what differed; none in a
 * sound book. The ledger itself is never touched; a ledger that does not follow is left for `prove` to name.
 */
export function rebuildBalances(book: OpenBook): Promise<{ things: number; mended: string[] }> {
  return book.write(async (tx) => {
    const mended: string[] = [];
    const rows = await tx.stock.findMany({ select: { id: true, label: true, lastMovementId: true, ...stockSelect } });
    for (const row of rows) {
      let balance: Balance = emptyBalance(row.kind as StockKind);
      let lastMovementId = 0;
      const lines = await tx.movement.findMany({ where: { stockId: row.id }, orderBy: { id: 'asc' } });
      let whole = true;
      for (const line of lines) {
        const next = followMovement(balance, { ...line, quantityDelta: Number(line.quantityDelta) });
        whole &&= next.ok;
        if (next.ok) balance = next.value;
        lastMovementId = line.id;
      }
      if (!whole || (differingFields(balanceOf(row), balance).length === 0 && row.lastMovementId === lastMovementId))
        continue;
      await tx.stock.update({
        where: { id: row.id },
        data: {
          quantity: BigInt(balance.quantity),
          placeId: balance.placeId,
          condition: balance.condition,
          hold: balance.hold,
          ownerJobId: balance.jobId,
          opened: balance.opened,
          lastMovementId,
        },
        select: { id: true },
      });
      mended.push(row.label ?? `thing ${row.id}`);
    }
    return { things: rows.length, mended };
  });
}
