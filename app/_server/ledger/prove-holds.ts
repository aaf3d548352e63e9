import type { WriteTransaction } from '@/prisma/open-book';

type Found = (rule: string, where: string, says: string) => void;
type Hold = { id: number; holdFrom: string; holdTo: string };

/**
 * What was on hold, in quarantine or recalled, itself or by its lot, was not taken: no pull and no weighing of a container
 * stands in the ledger between a hold and its release. A hold is never used around, so neither may a pull be that was
 * reversed since.
 */
export async function proveHolds(tx: Pick<WriteTransaction, 'movement' | 'container'>, found: Found): Promise<void> {
  const holds = new Map<number, Hold[]>();
  const changes = await tx.movement.findMany({
    where: {
      OR: [{ holdFrom: { not: 'free' } }, { holdTo: { not: 'free' } }],
      stock: { kind: { in: ['lot', 'container'] } },
    },
    orderBy: { id: 'asc' },
    select: { id: true, stockId: true, holdFrom: true, holdTo: true },
  });
  for (const { stockId, ...change } of changes) {
    if (change.holdFrom !== change.holdTo) holds.set(stockId, [...(holds.get(stockId) ?? []), change]);
  }
  const ids = [...holds.keys()];
  for (let from = 0; from < ids.length; from += AT_ONCE)
    await proveSome(tx, holds, ids.slice(from, from + AT_ONCE), found);
}

const AT_ONCE = 5000;

async function proveSome(
  tx: Pick<WriteTransaction, 'movement' | 'container'>,
  holds: ReadonlyMap<number, readonly Hold[]>,
  ids: number[],
  found: Found,
): Promise<void> {
  const taken = await tx.movement.findMany({
    where: {
      quantityDelta: { lt: 0 },
      entry: { kind: { in: ['pulled', 'weighed-out'] } },
      stock: { container: { OR: [{ stockId: { in: ids } }, { lotId: { in: ids } }] } },
    },
    orderBy: { id: 'asc' },
    select: {
      id: true,
      entryId: true,
      stock: { select: { id: true, label: true, container: { select: { lotId: true } } } },
    },
  });
  const held = (stockId: number, id: number) =>
    holds.get(stockId)?.findLast((change) => change.id < id)?.holdTo ?? 'free';
  for (const { id, entryId, stock } of taken) {
    const own = held(stock.id, id);
    const ofLot = held(stock.container?.lotId ?? 0, id);
    if (own === 'free' && ofLot === 'free') continue;
    const says = own === 'free' ? `its lot was ${ofLot}` : `it was ${own}`;
    found('held-is-not-taken', stock.label ?? `thing ${stock.id}`, `entry ${entryId} took of it while ${says}`);
  }
}
