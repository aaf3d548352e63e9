import { standingOf } from '@/app/_server/promises/standing-of';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import { readContainers } from '@/app/_server/stock/read-containers';
import { Prisma } from '@/prisma/generated/client';
import type { WriteTransaction } from '@/prisma/open-book';
import type { OnHand } from '@/shared/promise/material-need';
import { shareCost } from '@/shared/promise/share-cost';
import type { GramsPerLitre } from '@/shared/units/density';
import { minorUnits } from '@/shared/units/minor-units';

/** As many containers of the products as are looked at, the oldest in the book first. */
const MOST = 2000;

/** Containers of products with something in them, what is promised of each, and what it cost in the book's money. */
export async function loadStockFor(
  tx: WriteTransaction,
  productIds: readonly number[],
  densities: ReadonlyMap<number, GramsPerLitre | undefined>,
  currency: string,
): Promise<{ stock: OnHand[]; lines: ReadonlyMap<number, ContainerLine> }> {
  if (productIds.length === 0) return { stock: [], lines: new Map() };
  const lines = await readContainers(
    tx,
    Prisma.sql`s."quantity" > 0 AND c."productId" IN (${Prisma.join([...productIds])})`,
    { order: Prisma.sql`ORDER BY c."stockId"`, most: MOST },
  );
  const ids = lines.map((line) => line.stockId);
  const [costs, standing] = await Promise.all([
    tx.container.findMany({
      where: { stockId: { in: ids }, costMinor: { not: null }, currency },
      select: { stockId: true, costMinor: true },
    }),
    standingOf(tx, { stockId: { in: ids } }),
  ]);
  const costOf = new Map(costs.map((row) => [row.stockId, row.costMinor]));
  const promisesOf = new Map<number, OnHand['promised'][number][]>();
  for (const { stockId, jobId, needId, amount } of standing)
    promisesOf.set(stockId, [...(promisesOf.get(stockId) ?? []), { jobId, needId, amount }]);
  const stock = lines.map((line): OnHand => {
    const promised = promisesOf.get(line.stockId) ?? [];
    const paid = costOf.get(line.stockId);
    return {
      stockId: line.stockId,
      label: line.label,
      productId: line.productId,
      unit: line.unit,
      density: densities.get(line.productId),
      left: line.left,
      candidate: line.candidate,
      promised,
      shares:
        paid === undefined || paid === null
          ? undefined
          : shareCost(minorUnits(paid), {
              size: line.size,
              left: line.left,
              promises: promised.map((each) => each.amount),
            }),
    };
  });
  return { stock, lines: new Map(lines.map((line) => [line.stockId, line])) };
}
