import { promisedOf } from '@/app/_server/promises/promised-of';
import type { Refusal } from '@/app/_server/refusal';
import type { WriteTransaction } from '@/prisma/open-book';

type Reader = Pick<WriteTransaction, 'stock' | 'container' | 'promised' | 'promiseLine' | 'movement' | 'book'>;

export type Taking = {
  stockId: number;
  /** For whom; nobody in particular where there is none, so that every promise is another's. */
  jobId?: number | null | undefined;
  /** How much is to be taken or promised, small units. */
  taken: number;
  /** How much is in it before. */
  left: number;
};

/**
 * The refusal to take, or to promise, what is promised to other jobs: it names the first of them by its day, who promised
 * it when, and how much is free. Undefined where what is left afterwards still covers the others. Of a piece the whole is
 * promised.
 */
export async function refusePromised(
  tx: Reader,
  { stockId, jobId, taken, left }: Taking,
): Promise<Refusal | undefined> {
  const stock = await tx.stock.findUniqueOrThrow({
    where: { id: stockId },
    select: { kind: true, label: true, promised: { where: { amount: { gt: 0 } }, take: 1, select: { jobId: true } } },
  });
  // Most of what is taken is promised to nobody. Pieces are promised in their own way.
  if (stock.kind !== 'piece' && stock.promised.length === 0) return undefined;
  const head = await tx.book.findUnique({ where: { id: 1 }, select: { timeZone: true } });
  const others = (await promisedOf(tx, stockId, head?.timeZone ?? 'UTC')).filter((each) => each.jobId !== jobId);
  const [first] = others;
  const promised = others.reduce((sum, each) => sum + each.amount, 0);
  if (!first || left - taken >= promised) return undefined;
  const container = await tx.container.findUnique({
    where: { stockId },
    select: { product: { select: { unit: true } } },
  });
  return {
    code: 'promised-elsewhere',
    facts: {
      label: stock.label,
      job: first.job,
      jobId: first.jobId,
      jobs: others.length,
      who: first.who,
      on: first.on,
      day: first.day,
      promised,
      free: Math.max(0, left - promised),
      asked: taken,
      unit: container?.product.unit ?? 'piece',
    },
  };
}
