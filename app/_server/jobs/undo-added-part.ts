import { refusePartInUse } from '@/app/_server/jobs/refuse-part-in-use';
import type { Pen } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';

/** A part that was added goes with its entry, unless something is planned for it since. */
export async function undoAddedPart(pen: Pen, { id }: { id: number }): Promise<Refusal | undefined> {
  const part = await pen.tx.jobPart.findFirst({ where: { entryId: id }, select: { id: true, name: true } });
  return part ? refusePartInUse(pen.tx, part) : undefined;
}
