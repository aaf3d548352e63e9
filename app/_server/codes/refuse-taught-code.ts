import type { Refusal } from '@/app/_server/refusal';
import type { WriteTransaction } from '@/prisma/open-book';

/** The refusal for a code that already means something, naming what; undefined where it is free to be taught. */
export async function refuseTaughtCode(tx: WriteTransaction, value: string): Promise<Refusal | undefined> {
  const known = await tx.code.findUnique({
    where: { value },
    select: {
      product: { select: { name: true } },
      place: { select: { name: true, label: true } },
      stock: { select: { label: true } },
    },
  });
  if (!known) return undefined;
  const means = known.product?.name ?? known.place?.name ?? known.stock?.label ?? '';
  return { code: 'code-means-something-else', field: 'code', facts: { value, means } };
}
