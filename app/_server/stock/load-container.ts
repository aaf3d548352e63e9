import { type ContainerLine, containerLine, judgeableSelect } from '@/app/_server/stock/judgeable';
import type { WriteTransaction } from '@/prisma/open-book';

type Reader = Pick<WriteTransaction, 'container'>;

/** One container by its label, or undefined. */
export async function loadContainer(tx: Reader, label: string): Promise<ContainerLine | undefined> {
  const row = await tx.container.findFirst({ where: { stock: { label } }, select: judgeableSelect });
  return row ? containerLine(row) : undefined;
}

/**
 * The other containers of a container's product that have something left: what may be taken instead.
 * At most 500, the same lot first, so that a store room of thousands does not slow an answer at the bench.
 */
export async function loadSisters(tx: Reader, line: ContainerLine): Promise<ContainerLine[]> {
  const rows = await tx.container.findMany({
    where: { productId: line.productId, stockId: { not: line.stockId }, stock: { quantity: { gt: 0 } } },
    select: judgeableSelect,
    orderBy: { stockId: 'asc' },
    take: 500,
  });
  return rows.map(containerLine);
}
