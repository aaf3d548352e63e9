import type { PourLine } from '@/app/_server/pours/read-pour';
import type { WriteTransaction } from '@/prisma/open-book';
import type { StockUnit } from '@/shared/units/stock-unit';

/** A tin that is promised to the job of a pour: of which part, how much of it, and where it stands. */
export type PromisedTin = { part: 'A' | 'B'; label: string; amount: number; unit: StockUnit; place: string | null };

/** The tins of its system that are promised to the job and not used yet, part A first: what to fetch before weighing. */
export async function promisedTins(
  tx: Pick<WriteTransaction, 'promised'>,
  { job, system }: Pick<PourLine, 'job' | 'system'>,
): Promise<PromisedTin[]> {
  const rows = await tx.promised.findMany({
    where: { jobId: job.id, amount: { gt: 0 }, stock: { container: { product: { systemId: system.id } } } },
    orderBy: { stockId: 'asc' },
    select: {
      amount: true,
      stock: {
        select: {
          label: true,
          place: { select: { name: true } },
          container: { select: { product: { select: { part: true, unit: true } } } },
        },
      },
    },
  });
  return rows
    .flatMap(({ amount, stock: { label, place, container } }): PromisedTin[] => {
      const { part, unit } = container?.product ?? {};
      if (!label || (part !== 'A' && part !== 'B')) return [];
      return [{ part, label, amount: Number(amount), unit: unit as StockUnit, place: place?.name ?? null }];
    })
    .sort((one, other) => (one.part < other.part ? -1 : one.part > other.part ? 1 : 0));
}
