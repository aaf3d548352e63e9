import type { ContainerLine } from '@/app/_server/stock/judgeable';
import type { WriteTransaction } from '@/prisma/open-book';

/**
 * The containers that a job may take from, each with no more in it than others were not promised; without what is wholly
 * promised to others. For no job in particular every promise is another's.
 */
export async function freeFor(
  tx: Pick<WriteTransaction, 'promised'>,
  lines: readonly ContainerLine[],
  jobId: number | undefined,
): Promise<ContainerLine[]> {
  const others = await tx.promised.findMany({
    where: {
      stockId: { in: lines.map((line) => line.stockId) },
      amount: { gt: 0 },
      ...(jobId === undefined ? {} : { NOT: { jobId } }),
    },
    select: { stockId: true, amount: true },
  });
  if (others.length === 0) return [...lines];
  const taken = new Map<number, number>();
  for (const { stockId, amount } of others) taken.set(stockId, (taken.get(stockId) ?? 0) + Number(amount));
  return lines.flatMap((line) => {
    const left = line.left - (taken.get(line.stockId) ?? 0);
    if (left <= 0) return [];
    const { candidate } = line;
    return [{ ...line, candidate: { ...candidate, container: { ...candidate.container, left } } }];
  });
}
