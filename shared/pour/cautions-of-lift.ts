import { limitAt } from '@/shared/pour/plan-lifts';
import type { ResinSheet } from '@/shared/pour/resin-sheet';
import type { Nanometres } from '@/shared/units/nanometres';
import type { Milligrams } from '@/shared/units/stock-unit';
import type { TenthsCelsius } from '@/shared/units/tenths-celsius';

export type LiftCaution = {
  readonly code:
    | 'deeper-than-the-sheet'
    | 'thinner-than-the-sheet'
    | 'more-than-the-sheet'
    | 'room-too-warm'
    | 'room-too-cold'
    | 'no-sheet'
    | 'no-depth-limit';
};

/**
 * What to be told before a lift is mixed: too deep, too much at once or too warm runs hot, cracks, smokes and can burn; too
 * thin or too cold may stay soft. Limits are the sheet's, and each is itself allowed; numbers typed without a sheet are
 * said to be so. The sheet goes before all of it.
 */
export function cautionsOfLift(
  sheet: Pick<ResinSheet, 'from' | 'depths' | 'leastRoom' | 'mostRoom'>,
  lift: { readonly depth: Nanometres; readonly mass: Milligrams; readonly room: TenthsCelsius },
): readonly LiftCaution[] {
  const limit = limitAt(sheet.depths, lift.room);
  const warmest = sheet.depths.length > 0 && !limit;
  const codes: LiftCaution['code'][] = [
    ...(limit && lift.depth > limit.most ? ['deeper-than-the-sheet' as const] : []),
    ...(limit && lift.depth < limit.least ? ['thinner-than-the-sheet' as const] : []),
    ...(limit?.mostMass !== undefined && lift.mass > limit.mostMass ? ['more-than-the-sheet' as const] : []),
    ...(warmest || (sheet.mostRoom !== undefined && lift.room > sheet.mostRoom) ? ['room-too-warm' as const] : []),
    ...(sheet.leastRoom !== undefined && lift.room < sheet.leastRoom ? ['room-too-cold' as const] : []),
    ...(sheet.depths.length === 0 ? ['no-depth-limit' as const] : []),
    ...(sheet.from === 'typed' ? ['no-sheet' as const] : []),
  ];
  return codes.map((code) => ({ code }));
}
