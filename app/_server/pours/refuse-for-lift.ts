import type { LiftLine } from '@/app/_server/pours/lift-rows';
import type { PourLine } from '@/app/_server/pours/read-pour';
import type { Refusal } from '@/app/_server/refusal';
import type { ContainerLine } from '@/app/_server/stock/judgeable';

/** Which part of which batch something is weighed for; batches count from 1. */
export type Slot = {
  batch: number;
  part: 'A' | 'B';
  /** More of a part that is in already: a second tin, or what puts the ratio right. */
  more?: boolean;
};

/** Why nothing can be weighed for this part of the lift now; undefined where it can. */
export function refuseSlot(pour: PourLine, lift: LiftLine, { batch, part, more }: Slot): Refusal | undefined {
  const facts = { lift: lift.nr, batch, part };
  if (pour.job.state !== 'open') return { code: 'job-not-open', facts: { job: pour.job.name, state: pour.job.state } };
  if (lift.poured)
    return { code: 'lift-poured-already', facts: { lift: lift.nr, on: lift.poured.on, who: lift.poured.who } };
  const below = pour.lifts.find(({ nr, poured }) => nr < lift.nr && !poured);
  if (below) return { code: 'lift-below-first', facts: { lift: lift.nr, below: below.nr } };
  const planned = lift.batches[batch - 1];
  if (!planned) return { code: 'not-found', field: 'batch' };
  const inAlready = weighedOf(lift, { batch, part });
  if (inAlready >= (part === 'A' ? planned.a : planned.b) && !more) {
    return { code: 'part-weighed-already', facts: { ...facts, mass: inAlready } };
  }
  return undefined;
}

/** How much of a part of a batch is in the bucket, milligrams. */
export function weighedOf({ weighed }: Pick<LiftLine, 'weighed'>, { batch, part }: Slot): number {
  return weighed.reduce((sum, each) => sum + (each.batch === batch && each.part === part ? each.mass : 0), 0);
}

/** Why a container may not go into this part of the lift, each case with an answer of its own; undefined where it may. */
export function refuseContainer(
  pour: PourLine,
  lift: LiftLine,
  { batch, part }: Slot,
  line: ContainerLine,
): Refusal | undefined {
  const { system } = line.candidate.policy;
  const facts = { label: line.label, part, batch };
  if (!system) return { code: 'not-a-resin-part', field: 'label', facts };
  if (Number(system.id) !== pour.system.id) {
    return { code: 'wrong-system', field: 'label', facts: { ...facts, system: system.name, wanted: pour.system.name } };
  }
  if (system.part !== part) {
    const usedHere = lift.weighed.some((each) => each.stockId === line.stockId && each.batch === batch);
    if (usedHere) return { code: 'same-container-for-both', field: 'label', facts: { ...facts, is: system.part } };
    const isIn = weighedOf(lift, { batch, part: system.part }) > 0;
    return { code: isIn ? 'part-scanned-twice' : 'wrong-part', field: 'label', facts: { ...facts, is: system.part } };
  }
  if (pour.kept.sheet.setsTogether) {
    const other = lift.weighed.find((each) => each.batch === batch && each.part !== part && each.lot !== line.lotCode);
    if (other) {
      const lots = { lot: line.lotCode ?? '', other: other.label, otherLot: other.lot ?? '' };
      return { code: 'set-differs', field: 'label', facts: { ...facts, ...lots } };
    }
  }
  return undefined;
}

/**
 * The containers of the other part that this one is mixed with: all that are in the same batch, the newest first; the newest
 * of another batch where there is none yet, and nothing where nothing of the other part was weighed.
 */
export function otherPartsOf(
  { weighed }: Pick<LiftLine, 'weighed'>,
  { batch, part }: Slot,
): readonly [string | undefined, ...string[]] {
  const others = weighed.filter((each) => each.part !== part).reverse();
  const here = others.filter((each) => each.batch === batch);
  const [newest, ...older] = new Set((here.length > 0 ? here : others.slice(0, 1)).map(({ label }) => label));
  return [newest, ...older];
}
