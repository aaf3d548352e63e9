import type { LiftCard } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/lift-card';
import { CAUTION_WORDS } from '@/app/(shop)/jobs/[id]/pours/say-pour';
import { cautionsOfLift } from '@/shared/pour/cautions-of-lift';
import { isOfASeal } from '@/shared/pour/of-a-seal';
import type { TenthsCelsius } from '@/shared/units/tenths-celsius';

/** What to mind of a lift in the room as it is. Of a seal coat, what has to do with one. */
export function mindLift(
  { sheet, nr, depth, mass, largest }: Pick<LiftCard, 'sheet' | 'nr' | 'depth' | 'mass' | 'largest'>,
  room: TenthsCelsius,
): { code: string; words: string }[] {
  return cautionsOfLift(sheet, { depth, mass, room, batch: largest })
    .map(({ code }) => code)
    .filter((code) => nr > 0 || isOfASeal(code))
    .map((code) => ({ code, words: CAUTION_WORDS[code] }));
}
