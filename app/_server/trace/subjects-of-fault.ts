import { liftsOfPours, type TraceReader } from '@/app/_server/trace/trace-steps';

export type SubjectsOfFault = { lift: number[]; job: number[]; container: number[]; piece: number[] };

/**
 * What a fault is a fault of. The nearest thing that was named counts: its lift, or else the lifts of its pour, or else its
 * job; and the piece or container it was found on.
 */
export async function subjectsOfFault(tx: TraceReader, faultId: number): Promise<SubjectsOfFault> {
  const none: SubjectsOfFault = { lift: [], job: [], container: [], piece: [] };
  const [fault] = await tx.$queryRaw<
    {
      jobId: number | null;
      pourId: number | null;
      liftId: number | null;
      stockId: number | null;
      kind: string | null;
    }[]
  >`
    SELECT f."jobId", f."pourId", f."liftId", f."stockId", s."kind" FROM "Fault" f
    LEFT JOIN "Stock" s ON s."id" = f."stockId" WHERE f."id" = ${faultId}`;
  if (!fault) return none;
  const lifts =
    fault.liftId !== null ? [fault.liftId] : await liftsOfPours(tx, fault.pourId === null ? [] : [fault.pourId]);
  const stock = fault.stockId === null ? [] : [fault.stockId];
  return {
    lift: lifts,
    job: lifts.length === 0 && fault.jobId !== null ? [fault.jobId] : [],
    container: fault.kind === 'container' ? stock : [],
    piece: fault.kind === 'piece' ? stock : [],
  };
}
