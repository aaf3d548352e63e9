import type { ContainerLine } from '@/app/_server/stock/judgeable';
import { readContainers, type SqlReader } from '@/app/_server/stock/read-containers';
import { Prisma } from '@/prisma/generated/client';

/** One container by its label, or undefined. */
export async function loadContainer(tx: SqlReader, label: string): Promise<ContainerLine | undefined> {
  const [line] = await readContainers(tx, Prisma.sql`s."label" = ${label}`, { most: 1 });
  return line;
}

/**
 * The other containers of a container's product that have something left: what may be taken instead.
 * At most 500, the oldest in the book first, so that a store room of thousands does not slow an answer at the bench.
 */
export function loadSisters(tx: SqlReader, line: ContainerLine): Promise<ContainerLine[]> {
  const others = Prisma.sql`c."productId" = ${line.productId} AND c."stockId" <> ${line.stockId} AND s."quantity" > 0`;
  return readContainers(tx, others, { order: Prisma.sql`ORDER BY c."stockId"`, most: 500 });
}
