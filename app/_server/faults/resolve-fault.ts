import type { FaultFields } from '@/app/_server/faults/record-fault';
import { outlineOfPiece } from '@/app/_server/fits/outline-of-piece';
import type { Refusal } from '@/app/_server/refusal';
import { loadPiece } from '@/app/_server/stock/load-piece';
import type { WriteTransaction } from '@/prisma/open-book';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { err, ok, type Result } from '@/shared/result/result';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

type About = {
  jobId: number | null;
  pourId: number | null;
  liftId: number | null;
  stockId: number | null;
  /** "lift 1 of River", "S-4K7VMX". */
  words: string;
};

/**
 * What a fault is a fault of: everything that was named is in the book and belongs together. A lift names its pour and
 * that its job; a piece names the job it is promised to or was taken for.
 */
export async function resolveFault(tx: WriteTransaction, input: FaultFields): Promise<Result<About, Refusal>> {
  const about: About = { jobId: null, pourId: null, liftId: null, stockId: null, words: '' };
  const words: string[] = [];
  if (input.liftId !== undefined) {
    const lift = await tx.lift.findUnique({
      where: { id: input.liftId },
      select: { id: true, nr: true, pour: { select: { id: true, name: true, jobId: true } } },
    });
    if (!lift) return err({ code: 'not-found', field: 'liftId' });
    Object.assign(about, { liftId: lift.id, pourId: lift.pour.id, jobId: lift.pour.jobId });
    words.push(lift.nr === 0 ? `the seal coat of ${lift.pour.name}` : `lift ${lift.nr} of ${lift.pour.name}`);
  } else if (input.pourId !== undefined) {
    const pour = await tx.pour.findUnique({
      where: { id: input.pourId },
      select: { id: true, name: true, jobId: true },
    });
    if (!pour) return err({ code: 'not-found', field: 'liftId' });
    Object.assign(about, { pourId: pour.id, jobId: pour.jobId });
    words.push(pour.name);
  }
  if (input.label !== undefined) {
    const stock = await tx.stock.findUnique({
      where: { label: input.label },
      select: { id: true, kind: true, ownerJobId: true },
    });
    if (!stock) return err({ code: 'not-found', field: 'label', facts: { label: input.label } });
    about.stockId = stock.id;
    about.jobId ??= stock.kind === 'piece' ? stock.ownerJobId : null;
    words.push(printOwnLabel(input.label as OwnLabelCode));
  }
  if (input.jobId !== undefined) {
    const job = await tx.job.findUnique({ where: { id: input.jobId }, select: { id: true } });
    if (!job) return err({ code: 'not-found', field: 'jobId' });
    if (about.pourId !== null && about.jobId !== job.id) return err({ code: 'lift-of-another-job', field: 'liftId' });
    about.jobId = job.id;
  }
  if (about.jobId === null && about.stockId === null) return err({ code: 'fault-needs-a-thing' });
  const off = await refusePlace(tx, input);
  return off ? err(off) : ok({ ...about, words: words.join(', ') });
}

async function refusePlace(tx: WriteTransaction, { label, place, depth }: FaultFields): Promise<Refusal | undefined> {
  if (depth !== undefined && depth <= 0) return { code: 'outside-range', field: 'depth' };
  if (!place) return undefined;
  const piece = label === undefined ? undefined : await loadPiece(tx, label);
  const outline = piece && outlineOfPiece(piece);
  if (!outline?.ok) return { code: 'mark-off-the-wood', field: 'place' };
  const { left, right, bottom, top } = boundsOf(outline.value.ring);
  // Resin may stand past the wood's own edge, so the box around it is asked, not the line.
  const isOn = place.x >= left && place.x <= right && place.y >= bottom && place.y <= top;
  return isOn ? undefined : { code: 'mark-off-the-wood', field: 'place' };
}
