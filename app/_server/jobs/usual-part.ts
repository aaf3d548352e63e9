import type { PartLine } from '@/app/_server/jobs/read-parts';
import { STANDS } from '@/app/_server/timeline/standing';
import type { WriteTransaction } from '@/prisma/open-book';

/**
 * The part a pour or coats are most likely for: the only one; of several the first that a pour is planned for, else the
 * first top. Null, the whole job, where there is none of these.
 */
export async function usualPart(
  tx: Pick<WriteTransaction, 'pour'>,
  jobId: number,
  parts: readonly PartLine[],
): Promise<number | null> {
  if (parts.length < 2) return parts[0]?.id ?? null;
  const pours = await tx.pour.findMany({
    where: { jobId, partId: { not: null }, ...STANDS },
    select: { partId: true },
  });
  const carriesResin = parts.find(({ id }) => pours.some(({ partId }) => partId === id));
  return (carriesResin ?? parts.find(({ kind }) => kind === 'top'))?.id ?? null;
}
