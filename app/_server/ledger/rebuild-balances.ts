import { balanceOf, stockSelect } from '@/app/_server/ledger/balance-of';
import { rebuildPromised } from '@/app/_server/promises/rebuild-promised';
import type { OpenBook, WriteTransaction } from '@/prisma/open-book';
import { type Balance, emptyBalance, type StockKind } from '@/shared/ledger/balance';
import { differingFields } from '@/shared/ledger/differing-fields';
import { followMovement } from '@/shared/ledger/follow-movement';

const PAGE = 5000;
/** The book is held for as long as it takes; ten minutes is a ledger beyond any workshop's. */
const TIMEOUT_MS = 600_000;

/**
 * Folds the ledger and the promises again and puts every kept balance that differs right. Answers the labels of what differed; none in a
 * sound book. The ledger itself is never touched; a ledger that does not follow is left for `prove` to name.
 */
export function rebuildBalances(book: OpenBook): Promise<{ things: number; mended: string[] }> {
  return book.write(
    async (tx) => {
      const mended: string[] = [];
      let things = 0;
      for (let after = 0; ; ) {
        const page = await foldPage(tx, after);
        const last = page.at(-1);
        if (!last) return { things, mended: [...new Set([...mended, ...(await rebuildPromised(tx))])] };
        for (const { id, name, whole, differs, balance, lastMovementId } of page) {
          if (!whole || !differs) continue;
          await tx.stock.update({
            where: { id },
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
          mended.push(name);
        }
        things += page.length;
        after = last.id;
      }
    },
    { timeout: TIMEOUT_MS },
  );
}

type Folded = {
  id: number;
  name: string;
  /** Whether every movement starts where the one before it ended. */
  whole: boolean;
  differs: boolean;
  balance: Balance;
  lastMovementId: number;
};

async function foldPage(tx: WriteTransaction, after: number): Promise<Folded[]> {
  const rows = await tx.stock.findMany({
    where: { id: { gt: after } },
    orderBy: { id: 'asc' },
    take: PAGE,
    select: { id: true, label: true, lastMovementId: true, ...stockSelect },
  });
  const lines = await tx.movement.findMany({
    where: { stockId: { gt: after, lte: rows.at(-1)?.id ?? after } },
    orderBy: [{ stockId: 'asc' }, { id: 'asc' }],
  });
  let at = 0;
  return rows.map((row) => {
    let balance: Balance = emptyBalance(row.kind as StockKind);
    let lastMovementId = 0;
    let whole = true;
    for (let line = lines[at]; line && line.stockId === row.id; line = lines[at]) {
      const next = followMovement(balance, { ...line, quantityDelta: Number(line.quantityDelta) });
      whole &&= next.ok;
      if (next.ok) balance = next.value;
      lastMovementId = line.id;
      at += 1;
    }
    const differs = differingFields(balanceOf(row), balance).length > 0 || row.lastMovementId !== lastMovementId;
    return { id: row.id, name: row.label ?? `thing ${row.id}`, whole, differs, balance, lastMovementId };
  });
}
