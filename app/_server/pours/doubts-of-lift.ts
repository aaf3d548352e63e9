import type { LiftLine } from '@/app/_server/pours/lift-rows';
import type { PourLine } from '@/app/_server/pours/read-pour';
import { weighedOf } from '@/app/_server/pours/refuse-for-lift';
import type { Refusal } from '@/app/_server/refusal';
import { BEYOND } from '@/shared/pour/beyond-the-sheet';
import { cautionsOfLift, type LiftCaution } from '@/shared/pour/cautions-of-lift';
import { isNearTarget } from '@/shared/pour/is-near-target';
import { weighedRatio } from '@/shared/pour/weighed-ratio';
import { milligrams } from '@/shared/units/stock-unit';
import type { TenthsCelsius } from '@/shared/units/tenths-celsius';

/** Asked of a seal coat too. A room too cold leaves it soft: whoever plans is told, whoever pours says why. */
const OF_THE_ROOM: readonly LiftCaution['code'][] = ['room-too-warm', 'room-too-cold'];

/**
 * What asks for a reason before a lift is poured: batches whose ratio is off, or whose amount is, and what goes beyond the
 * sheet in the room as it is. How much B belongs to the A that is in, the ratio says.
 */
export function doubtsOf({ kept }: PourLine, lift: LiftLine, room: TenthsCelsius): Refusal[] {
  const { ratio } = kept.plan;
  const { toleranceTenths } = kept.sheet;
  const ofBatches = lift.batches.flatMap((planned, row): Refusal[] => {
    const batch = row + 1;
    const [a, b] = (['A', 'B'] as const).map((part) => milligrams(weighedOf(lift, { batch, part })));
    const judged = weighedRatio(a ?? milligrams(0), b ?? milligrams(0), ratio.parts, toleranceTenths);
    const add = judged?.add;
    const off: Refusal[] =
      judged && !judged.within
        ? [
            {
              code: 'ratio-off',
              field: 'reason',
              facts: { batch, off: judged.errorTenths, part: add?.part ?? null, add: add?.amount ?? null },
            },
          ]
        : [];
    const isNear = isNearTarget(a ?? milligrams(0), planned.a, { toleranceTenths, step: kept.figures.step });
    const facts = { batch, of: lift.batches.length, part: 'A', is: a ?? 0, target: planned.a };
    return isNear ? off : [...off, { code: 'amount-off', field: 'reason', facts }];
  });
  const mass = milligrams(lift.weighed.reduce((sum, each) => sum + each.mass, 0));
  const beyond = cautionsOfLift(kept.sheet, { depth: lift.depth, mass, room })
    .filter(({ code }) => OF_THE_ROOM.includes(code) || (lift.nr > 0 && BEYOND.includes(code)))
    .map(({ code }): Refusal => ({ code: 'beyond-the-sheet', field: 'reason', facts: { lift: lift.nr, why: code } }));
  return [...ofBatches, ...beyond];
}
