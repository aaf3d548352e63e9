import type { ContainerLine } from '@/app/_server/stock/judgeable';
import type { WriteTransaction } from '@/prisma/open-book';
import { rankReasons } from '@/shared/shelf-life/rank-reasons';
import type { Verdict } from '@/shared/shelf-life/types/verdict';

/** Judges a container beside what a surface is of already. */
export type BesideItsLots = (line: Pick<ContainerLine, 'lotId'>, verdict: Verdict) => Verdict;

/**
 * The lots that a part of a pour was weighed out of, as a Care for whatever is of another: one pour is one surface, and two
 * lots of a resin may differ in colour. A lot that is in it already, beside others or alone, asks for none.
 */
export async function besideItsLots(
  tx: Pick<WriteTransaction, 'weighed'>,
  { pourId, part }: { pourId: number; part: 'A' | 'B' },
): Promise<BesideItsLots> {
  const weighed = await tx.weighed.findMany({
    where: { part, lift: { pourId }, entry: { reversedBy: null } },
    orderBy: { id: 'asc' },
    select: { stock: { select: { container: { select: { lotId: true, lot: { select: { code: true } } } } } } },
  });
  const lots = new Map(weighed.flatMap(({ stock: { container: of } }) => (of ? [[of.lotId, of.lot.code ?? '']] : [])));
  return ({ lotId }, verdict) => {
    if (lots.size === 0 || lots.has(lotId)) return verdict;
    const reasons = rankReasons([...verdict.reasons, { code: 'other-lot', weight: 'care', lots: [...lots.values()] }]);
    return { ...verdict, word: verdict.word === 'use' ? 'care' : verdict.word, reasons };
  };
}
