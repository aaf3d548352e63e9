import type { WriteTransaction } from '@/prisma/open-book';
import type { FinishSheet } from '@/shared/finish/finish-sheet';

/** What the newest sheet of a product says, or undefined where there is none. */
export async function readFinishSheet(
  tx: Pick<WriteTransaction, 'sheet'>,
  productId: number,
): Promise<FinishSheet | undefined> {
  const row = await tx.sheet.findFirst({
    where: { productId, entry: { reversedBy: null } },
    orderBy: { id: 'desc' },
    select: { facts: true },
  });
  return row ? (JSON.parse(row.facts) as FinishSheet) : undefined;
}
