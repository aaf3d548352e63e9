import type { Pen } from '@/app/_server/ledger/write-entry';
import { type NeedFacts, standingNeeds } from '@/app/_server/needs/standing-needs';
import type { Refusal } from '@/app/_server/refusal';
import { err, ok, type Result } from '@/shared/result/result';

/** A need that may be changed or taken off by hand: one that stands and belongs to no pour. */
export async function needToChange(pen: Pen, needId: number): Promise<Result<NeedFacts, Refusal>> {
  const [need] = await standingNeeds(pen.tx, { id: needId });
  if (!need) return err({ code: 'need-gone' });
  if (need.liftId === null) return ok(need);
  const lift = await pen.tx.lift.findUnique({
    where: { id: need.liftId },
    select: { pour: { select: { name: true } } },
  });
  return err({ code: 'need-of-a-plan', facts: { pour: lift?.pour.name ?? '' } });
}
