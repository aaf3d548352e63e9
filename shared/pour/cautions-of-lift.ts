import { limitOfLift } from '@/shared/pour/limit-of-lift';
import type { ResinSheet } from '@/shared/pour/resin-sheet';
import type { Nanometres } from '@/shared/units/nanometres';
import type { Milligrams } from '@/shared/units/stock-unit';
import type { TenthsCelsius } from '@/shared/units/tenths-celsius';

export type LiftCaution = {
  readonly code:
    | 'deeper-than-the-sheet'
    | 'thinner-than-the-sheet'
    | 'more-than-the-sheet'
    | 'batch-not-measured'
    | 'room-too-warm'
    | 'room-too-cold'
    | 'no-sheet'
    | 'no-depth-limit';
};

/**
 * What to be told before a lift is mixed: too deep, too much at once or too warm runs hot, cracks, smokes and can burn; a
 * batch larger than any the pot life was measured with thickens sooner; too thin or too cold may stay soft. Limits are the
 * sheet's, by the row that counts for this mass in this room (`limitOfLift`), and each is itself allowed; numbers typed
 * without a sheet are said to be so. `batch` is the largest of its batches, left out where nothing is to be said of it. The
 * sheet goes before all of it.
 */
export function cautionsOfLift(
  sheet: Pick<ResinSheet, 'from' | 'depths' | 'potLives' | 'leastRoom' | 'mostRoom'>,
  lift: {
    readonly depth: Nanometres;
    readonly mass: Milligrams;
    readonly room: TenthsCelsius;
    readonly batch?: Milligrams;
  },
): readonly LiftCaution[] {
  const limit = limitOfLift(sheet.depths, lift);
  const warmest = sheet.depths.length > 0 && !limit;
  const measured = sheet.potLives ?? [];
  const { batch } = lift;
  const isBeyond = batch !== undefined && measured.length > 0 && measured.every(({ mass }) => mass < batch);
  const codes: LiftCaution['code'][] = [
    ...(limit && lift.depth > limit.row.most ? ['deeper-than-the-sheet' as const] : []),
    ...(limit && lift.depth < limit.row.least ? ['thinner-than-the-sheet' as const] : []),
    ...(limit?.isTooHeavy ? ['more-than-the-sheet' as const] : []),
    ...(isBeyond ? ['batch-not-measured' as const] : []),
    ...(warmest || (sheet.mostRoom !== undefined && lift.room > sheet.mostRoom) ? ['room-too-warm' as const] : []),
    ...(sheet.leastRoom !== undefined && lift.room < sheet.leastRoom ? ['room-too-cold' as const] : []),
    ...(sheet.depths.length === 0 ? ['no-depth-limit' as const] : []),
    ...(sheet.from === 'typed' ? ['no-sheet' as const] : []),
  ];
  return codes.map((code) => ({ code }));
}
