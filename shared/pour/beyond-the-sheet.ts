import type { LiftCaution } from '@/shared/pour/cautions-of-lift';
import type { PourPlan } from '@/shared/pour/plan-pour';

/** What runs hot, cracks or smokes: nobody pours so without a reason of their own. */
export const BEYOND: readonly LiftCaution['code'][] = [
  'deeper-than-the-sheet',
  'more-than-the-sheet',
  'batch-not-measured',
  'room-too-warm',
];

/** The first lift of a plan that goes beyond its sheet, and in what; undefined where none does. */
export function beyondTheSheet({
  lifts,
}: Pick<PourPlan, 'lifts'>): { nr: number; why: LiftCaution['code'] } | undefined {
  for (const { nr, cautions } of lifts) {
    const why = BEYOND.find((code) => cautions.includes(code));
    if (why) return { nr, why };
  }
  return undefined;
}
