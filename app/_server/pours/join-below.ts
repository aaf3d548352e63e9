import type { LiftLine } from '@/app/_server/pours/lift-rows';
import type { PourLine } from '@/app/_server/pours/read-pour';
import type { Refusal } from '@/app/_server/refusal';
import { joinAt, type LiftBelow } from '@/shared/pour/join-at';

/** What whoever weighs or pours says of the lift below: that it was sanded, or why it is poured on so soon. */
export type SaidOfBelow = { sanded?: boolean; early?: string };

/** The lift right below one, once it is poured; undefined where there is none. */
export function liftBelow({ lifts, kept }: Pick<PourLine, 'lifts' | 'kept'>, nr: number): LiftBelow | undefined {
  const below = lifts.findLast((each) => each.nr < nr && each.poured);
  if (!below?.poured) return undefined;
  const { againFromHours, againToHours } = kept.sheet;
  const { at, isExact, on } = below.poured;
  return { nr: below.nr, at: Date.parse(at), isExact, on, againFromHours, againToHours };
}

/** What was said of the lift below while a lift was weighed out. */
export const saidBefore = ({ weighed }: Pick<LiftLine, 'weighed'>): SaidOfBelow => {
  const early = weighed.find(({ below }) => below.early)?.below.early;
  return { sanded: weighed.some(({ below }) => below.sanded), ...(early && { early }) };
};

/**
 * Why nothing can be weighed or poured on the lift below at this instant: too early without a reason, or past its window
 * and not sanded. Undefined where it can, and where what it asks for was said now or before.
 */
export function refuseJoin(pour: PourLine, lift: LiftLine, instant: Date, said: SaidOfBelow): Refusal | undefined {
  const below = liftBelow(pour, lift.nr);
  if (!below) return undefined;
  const { joins, hours } = joinAt(below, instant.getTime());
  const before = saidBefore(lift);
  const facts = { below: below.nr, about: below.isExact ? 0 : 1 };
  if (joins === 'too-early' && !said.early?.trim() && !before.early) {
    return {
      code: 'too-early-to-pour-again',
      field: 'early',
      facts: { ...facts, hours, from: below.againFromHours ?? 0 },
    };
  }
  if (joins === 'sand-first' && !said.sanded && !before.sanded) {
    return { code: 'sand-first', field: 'sanded', facts: { ...facts, hours, to: below.againToHours ?? null } };
  }
  return undefined;
}

/** What was said, as it is kept: nothing where nothing was asked. */
export function sayOfBelow(
  pour: PourLine,
  lift: LiftLine,
  instant: Date,
  said: SaidOfBelow,
): { kept: SaidOfBelow; words: string } {
  const below = liftBelow(pour, lift.nr);
  const joins = below && joinAt(below, instant.getTime()).joins;
  const name = below && (below.nr === 0 ? 'seal coat' : `lift ${below.nr}`);
  const early = said.early?.trim();
  if (joins === 'too-early' && early) return { kept: { early }, words: `on ${name} too early: ${early}` };
  if (joins === 'sand-first' && said.sanded) return { kept: { sanded: true }, words: `${name} sanded first` };
  return { kept: {}, words: '' };
}
