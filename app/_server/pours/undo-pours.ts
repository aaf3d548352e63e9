import { refusePartGone } from '@/app/_server/jobs/refuse-part-gone';
import type { Pen } from '@/app/_server/ledger/write-entry';
import { isBegun, readLifts } from '@/app/_server/pours/lift-rows';
import type { Refusal } from '@/app/_server/refusal';
import { keepDayOfUse } from '@/app/_server/timeline/keep-day-of-use';
import { STANDS } from '@/app/_server/timeline/standing';

type Undone = { id: number; jobId: number | null };

/** A planned pour goes with its lifts, steps and needs, unless one of its own lifts was begun or it was planned anew since. */
export async function undoPlannedPour(pen: Pen, entry: Undone): Promise<Refusal | undefined> {
  const pour = await pen.tx.pour.findFirst({ where: { entryId: entry.id }, select: { id: true, name: true } });
  if (!pour) return undefined;
  // It is asked once the reversal stands, so what rests on the entry has gone: only who took it off is looked at.
  const replaced = await pen.tx.pour.findFirst({
    where: { id: pour.id, removedById: { not: null }, removedBy: { reversedBy: null } },
    select: { id: true },
  });
  if (replaced) return { code: 'pour-gone' };
  const begun = await pen.tx.lift.findFirst({
    where: {
      pourId: pour.id,
      step: { entryId: entry.id },
      OR: [{ weighed: { some: { entry: { reversedBy: null } } } }, { pouredBy: { reversedBy: null } }],
    },
    select: { id: true },
  });
  if (begun) return { code: 'pour-begun', facts: { name: pour.name, system: null } };
  const before = await pen.tx.pour.findFirst({ where: { removedById: entry.id }, select: { id: true, partId: true } });
  if (before) {
    // What was begun before it was planned anew goes back to the pour that stands again.
    const back = await pen.tx.lift.findMany({
      where: { pourId: pour.id, NOT: { step: { entryId: entry.id } } },
      select: { id: true, stepId: true },
    });
    const steps = back.flatMap(({ stepId }) => stepId ?? []);
    const [lifts, { partId }] = [back.map(({ id }) => id), before];
    await pen.tx.lift.updateMany({ where: { id: { in: lifts } }, data: { pourId: before.id } });
    await pen.tx.step.updateMany({ where: { id: { in: steps } }, data: { pourId: before.id, partId } });
    await pen.tx.need.updateMany({ where: { liftId: { in: lifts } }, data: { partId } });
    await pen.tx.fault.updateMany({ where: { pourId: pour.id }, data: { pourId: before.id } });
  }
  return followed(pen, entry);
}

/** A lift that was poured is to be poured again, unless one on top of it was begun since. */
export async function undoPouredLift(pen: Pen, entry: Undone): Promise<Refusal | undefined> {
  const lift = await pen.tx.lift.findFirst({ where: { pouredById: entry.id }, select: { pourId: true, nr: true } });
  if (!lift) return undefined;
  const above = (await readLifts(pen.tx, lift.pourId)).find((each) => each.nr > lift.nr && isBegun(each));
  if (above) return { code: 'lift-on-top', facts: { lift: lift.nr, above: above.nr } };
  return followed(pen, entry);
}

/** What was weighed out is undone by its movement, unless the lift it went into was poured since. */
export async function undoWeighing(pen: Pen, entry: Undone): Promise<Refusal | undefined> {
  const poured = await pen.tx.lift.findFirst({
    where: { weighed: { some: { entryId: entry.id } }, pouredBy: { reversedBy: null } },
    select: { nr: true },
  });
  return poured ? { code: 'poured-since', facts: { lift: poured.nr } } : undefined;
}

/** A pour that was taken off stands again, unless there is another of its name by now. */
export async function undoRemovedPour(pen: Pen, entry: Undone): Promise<Refusal | undefined> {
  const pour = await pen.tx.pour.findFirst({
    where: { removedById: entry.id },
    select: { id: true, jobId: true, name: true },
  });
  const twin =
    pour &&
    (await pen.tx.pour.findFirst({
      where: { jobId: pour.jobId, name: pour.name, NOT: { id: pour.id }, ...STANDS },
      select: { id: true },
    }));
  if (twin) return { code: 'name-taken', facts: { name: pour.name } };
  return followed(pen, entry);
}

/** The job's day of use follows; refused where a pour or a step would be of a part that has gone since. */
async function followed(pen: Pen, { jobId }: Undone): Promise<Refusal | undefined> {
  if (jobId === null) return undefined;
  await keepDayOfUse(pen.tx, jobId);
  return refusePartGone(pen.tx, jobId);
}
