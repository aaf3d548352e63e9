import type { NeedFacts } from '@/app/_server/needs/standing-needs';
import type { WriteTransaction } from '@/prisma/open-book';
import { countsAs } from '@/shared/promise/counts-as';
import { inUnit } from '@/shared/promise/in-unit';
import type { GramsPerLitre } from '@/shared/units/density';
import type { StockUnit } from '@/shared/units/stock-unit';

export type ProductFacts = { id: number; unit: StockUnit; density: GramsPerLitre | undefined };

/** A lot of which something was taken for a need. */
export type LotTaken = { productId: number; lotId: string };

/** How much was taken for a need, in its unit, and of which lots, the newest last. */
export type UsedOfNeed = { amount: number; lots: LotTaken[] };

/**
 * How much was taken for each need of a material already: what was weighed out for its lift, then what was pulled for the
 * job of its products, the earliest need first; all of it once its lift is poured or its step is done.
 */
export async function takenForNeeds(
  tx: Pick<WriteTransaction, 'weighed' | 'movement'>,
  needs: readonly NeedFacts[],
  productsOf: ReadonlyMap<number, readonly number[]>,
  products: ReadonlyMap<number, ProductFacts>,
): Promise<Map<number, UsedOfNeed>> {
  const liftIds = needs.flatMap((need) => need.liftId ?? []);
  const jobIds = [...new Set(needs.map((need) => need.jobId))];
  const [weighed, pulled] = await Promise.all([
    tx.weighed.findMany({
      where: { liftId: { in: liftIds }, entry: { reversedBy: null } },
      orderBy: { id: 'asc' },
      select: {
        liftId: true,
        part: true,
        massMg: true,
        stock: { select: { container: { select: { productId: true, lotId: true } } } },
      },
    }),
    tx.movement.findMany({
      where: {
        quantityDelta: { lt: 0 },
        entry: { kind: 'pulled', jobId: { in: jobIds }, reversedBy: null },
        stock: { container: { isNot: null } },
      },
      orderBy: { id: 'asc' },
      select: {
        quantityDelta: true,
        entry: { select: { jobId: true } },
        stock: { select: { container: { select: { productId: true, lotId: true } } } },
      },
    }),
  ]);
  const loose = pulled.map((row) => ({
    jobId: row.entry.jobId,
    productId: row.stock.container?.productId ?? 0,
    container: row.stock.container,
    left: Number(-row.quantityDelta),
  }));
  const used = new Map<number, UsedOfNeed>();
  for (const need of needs) {
    const own = weighed.filter((row) => row.liftId === need.liftId && row.part === need.system?.part);
    const lots = own.flatMap(({ stock }) => lotOf(stock.container));
    let taken = own.reduce((sum, row) => sum + Number(row.massMg), 0);
    for (const row of loose) {
      if (taken >= need.amount) break;
      if (row.jobId !== need.jobId || row.left <= 0 || !productsOf.get(need.id)?.includes(row.productId)) continue;
      const product = products.get(row.productId);
      if (!product) continue;
      const units = { from: product.unit, to: need.unit, density: product.density };
      const there = countsAs(row.left, need.amount - taken, units) ?? 0;
      const part = Math.min(there, need.amount - taken);
      row.left -= part === there ? row.left : (inUnit(part, need.unit, product.unit, product.density, 'up') ?? 0);
      taken += part;
      lots.push(...lotOf(row.container));
    }
    used.set(need.id, { amount: need.liftPoured || need.stepDone ? need.amount : taken, lots });
  }
  return used;
}

/** The same, amounts alone. */
export async function usedOfNeeds(...asked: Parameters<typeof takenForNeeds>): Promise<Map<number, number>> {
  return new Map([...(await takenForNeeds(...asked))].map(([id, { amount }]) => [id, amount]));
}

const lotOf = (container: { productId: number; lotId: number } | null): LotTaken[] =>
  container ? [{ productId: container.productId, lotId: String(container.lotId) }] : [];
