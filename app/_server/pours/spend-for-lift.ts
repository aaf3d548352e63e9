import type { Pen } from '@/app/_server/ledger/write-entry';
import { leftPromised } from '@/app/_server/pours/left-promised';
import type { PourLine } from '@/app/_server/pours/read-pour';
import { spendPromise } from '@/app/_server/promises/spend-promise';
import { STANDS } from '@/app/_server/timeline/standing';

export type SpendForLift = {
  liftId: number;
  part: 'A' | 'B';
  stockId: number;
  /** What was taken out, small units. */
  taken: number;
};

/**
 * Takes what was weighed for a lift off what its job was promised: for the lift itself first, then for lifts its pour was
 * planned with before, so that nothing promised to another pour of the job goes while this one still has its own. In the
 * pen's entry, which must be entered before.
 */
export async function spendForLift(
  pen: Pen,
  pour: PourLine,
  { liftId, part, stockId, taken }: SpendForLift,
): Promise<void> {
  const jobId = pour.job.id;
  const need = await pen.tx.need.findFirst({ where: { liftId, resinPart: part, ...STANDS }, select: { id: true } });
  const left = (await leftPromised(pen.tx, pour)).filter((each) => each.stockId === stockId);
  const ofPour = [...new Set(left.map(({ needId }) => needId))];
  const before = await pen.tx.need.findMany({
    where: { id: { in: ofPour.flatMap((id) => id ?? []) }, removedById: { not: null } },
    select: { id: true },
  });
  let rest = taken;
  for (const needId of [need?.id, ...before.map(({ id }) => id)]) {
    const standing = left.reduce((sum, each) => sum + (each.needId === needId ? each.amount : 0), 0);
    const spent = Math.min(rest, standing);
    if (needId === undefined || spent === 0) continue;
    await spendPromise(pen, { jobId, stockId, taken: spent, needId });
    rest -= spent;
  }
  if (rest > 0) await spendPromise(pen, { jobId, stockId, taken: rest });
}
