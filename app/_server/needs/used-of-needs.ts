import type { NeedFacts } from '@/app/_server/needs/standing-needs';
import type { WriteTransaction } from '@/prisma/open-book';
import { inUnit } from '@/shared/promise/in-unit';
import type { GramsPerLitre } from '@/shared/units/density';
import type { StockUnit } from '@/shared/units/stock-unit';

export type ProductFacts = { id: number; unit: StockUnit; density: GramsPerLitre | undefined };

/**
 * How much was taken for each need of a material already, in its unit: all of it once its lift is poured or its step is
 * done; what was weighed out for its lift; else what was pulled for the job of its products, the earliest need first.
 */
export async function usedOfNeeds(
  tx: Pick<WriteTransaction, 'weighed' | 'movement'>,
  needs: readonly NeedFacts[],
  productsOf: ReadonlyMap<number, readonly number[]>,
  products: ReadonlyMap<number, ProductFacts>,
): Promise<Map<number, number>> {
  const liftIds = needs.flatMap((need) => need.liftId ?? []);
  const jobIds = [...new Set(needs.map((need) => need.jobId))];
  const [weighed, pulled] = await Promise.all([
    tx.weighed.findMany({
      where: { liftId: { in: liftIds }, entry: { reversedBy: null } },
      select: { liftId: true, part: true, massMg: true },
    }),
    tx.movement.findMany({
      where: {
        quantityDelta: { lt: 0 },
        entry: { kind: 'pulled', jobId: { in: jobIds }, reversedBy: null },
        stock: { container: { isNot: null } },
      },
      select: {
        quantityDelta: true,
        entry: { select: { jobId: true } },
        stock: { select: { container: { select: { productId: true } } } },
      },
    }),
  ]);
  const loose = pulled.map((row) => ({
    jobId: row.entry.jobId,
    productId: row.stock.container?.productId ?? 0,
    left: Number(-row.quantityDelta),
  }));
  const used = new Map<number, number>();
  for (const need of needs) {
    if (need.liftPoured || need.stepDone) {
      used.set(need.id, need.amount);
      continue;
    }
    let taken = weighed.reduce(
      (sum, row) => (row.liftId === need.liftId && row.part === need.system?.part ? sum + Number(row.massMg) : sum),
      0,
    );
    for (const row of loose) {
      if (taken >= need.amount) break;
      if (row.jobId !== need.jobId || row.left <= 0 || !productsOf.get(need.id)?.includes(row.productId)) continue;
      const product = products.get(row.productId);
      if (!product) continue;
      const there = inUnit(row.left, product.unit, need.unit, product.density, 'down') ?? 0;
      const part = Math.min(there, need.amount - taken);
      row.left -= part === there ? row.left : (inUnit(part, need.unit, product.unit, product.density, 'up') ?? 0);
      taken += part;
    }
    used.set(need.id, taken);
  }
  return used;
}
