import type { Pen } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';
import { STANDS } from '@/app/_server/timeline/standing';

/** A need that was taken off or changed stands again, unless the part it is for was taken off the job since. */
export async function undoTakenNeed(pen: Pen, { id }: { id: number }): Promise<Refusal | undefined> {
  const orphan = await pen.tx.need.findFirst({
    where: { removedById: id, part: { NOT: STANDS } },
    select: { id: true },
  });
  return orphan ? { code: 'part-gone' } : undefined;
}
