import type { Pen } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';
import { STANDS } from '@/app/_server/timeline/standing';

/** A need that was taken off or changed stands again, unless the part it is for was taken off the job since. */
export async function undoTakenNeed(pen: Pen, { id }: { id: number }): Promise<Refusal | undefined> {
  const needs = await pen.tx.need.findMany({
    where: { removedById: id, partId: { not: null } },
    select: { partId: true },
  });
  for (const { partId } of needs) {
    const part = await pen.tx.jobPart.findFirst({ where: { id: partId ?? 0, ...STANDS }, select: { id: true } });
    if (!part) return { code: 'part-gone' };
  }
  return undefined;
}
