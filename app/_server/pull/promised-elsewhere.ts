import { freeFor } from '@/app/_server/promises/free-for';
import { type PromisedTo, promisedOf } from '@/app/_server/promises/promised-of';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import type { OpenBook } from '@/prisma/open-book';

/** What of a container is promised to other jobs than the one that asks, and how much is left of it for that one. */
export type PromisedElsewhere = { free: number; to: PromisedTo[] };

/** Null where nobody else is promised any of it. For no job in particular every promise is another's. */
export async function promisedElsewhere(
  book: OpenBook,
  line: ContainerLine,
  { jobId, timeZone }: { jobId: number | undefined; timeZone: string },
): Promise<PromisedElsewhere | null> {
  const [mine] = await freeFor(book.read, [line], jobId);
  const free = mine?.candidate.container.left ?? 0;
  if (free === line.left) return null;
  const to = (await promisedOf(book.read, line.stockId, timeZone)).filter((each) => each.jobId !== jobId);
  return { free, to };
}
