import type { Prisma } from '@/prisma/generated/client';
import type { WriteTransaction } from '@/prisma/open-book';
import type { StandingPromise } from '@/shared/promise/promise-line';
import { standingPromises } from '@/shared/promise/standing-promises';

/** What stands of the promises that fit, oldest first. What is named must hold of a job or a thing as a whole. */
export async function standingOf(
  tx: Pick<WriteTransaction, 'promiseLine' | 'promised'>,
  where: Pick<Prisma.PromisedWhereInput, 'jobId' | 'stockId'>,
): Promise<StandingPromise[]> {
  const promised = await tx.promised.findMany({
    where: { ...where, amount: { gt: 0 } },
    select: { jobId: true, stockId: true },
  });
  if (promised.length === 0) return [];
  const lines = await tx.promiseLine.findMany({
    where: {
      jobId: { in: [...new Set(promised.map((each) => each.jobId))] },
      stockId: { in: [...new Set(promised.map((each) => each.stockId))] },
    },
    orderBy: { id: 'asc' },
    select: { id: true, jobId: true, stockId: true, needId: true, delta: true, reversesId: true },
  });
  const wanted = new Set(promised.map((each) => `${each.jobId}/${each.stockId}`));
  return standingPromises(
    lines
      .filter((each) => wanted.has(`${each.jobId}/${each.stockId}`))
      .map((each) => ({ ...each, delta: Number(each.delta) })),
  );
}
