import type { Pen } from '@/app/_server/ledger/write-entry';
import { isBegun } from '@/app/_server/pours/lift-rows';
import type { PourLine } from '@/app/_server/pours/read-pour';
import { STANDS } from '@/app/_server/timeline/standing';

/** Takes a pour off by the pen's entry, with the steps and needs of whatever of it was not begun. */
export async function takePlanOff(pen: Pen, pour: PourLine): Promise<void> {
  const begun = pour.lifts.filter(isBegun);
  const removed = { removedById: pen.entryId };
  await pen.tx.pour.update({ where: { id: pour.id }, data: removed, select: { id: true } });
  const steps = await pen.tx.step.findMany({
    where: { pourId: pour.id, id: { notIn: begun.flatMap(({ stepId }) => stepId ?? []) }, ...STANDS },
    select: { id: true },
  });
  await pen.tx.step.updateMany({ where: { id: { in: steps.map(({ id }) => id) } }, data: removed });
  const needs = await pen.tx.need.findMany({
    where: { lift: { pourId: pour.id }, liftId: { notIn: begun.map(({ id }) => id) }, ...STANDS },
    select: { id: true },
  });
  await pen.tx.need.updateMany({ where: { id: { in: needs.map(({ id }) => id) } }, data: removed });
}
