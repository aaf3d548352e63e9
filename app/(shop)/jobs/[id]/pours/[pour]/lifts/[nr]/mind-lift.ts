import type { LiftCard } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/lift-card';
import { CAUTION_WORDS } from '@/app/(shop)/jobs/[id]/pours/say-pour';
import { cautionsOfLift } from '@/shared/pour/cautions-of-lift';
import type { TenthsCelsius } from '@/shared/units/tenths-celsius';

/** What to mind of a lift in the room as it is. A seal coat has no depth to be too deep or too thin. */
export function mindLift(
  { sheet, nr, depth, mass, largest }: Pick<LiftCard, 'sheet' | 'nr' | 'depth' | 'mass' | 'largest'>,
  room: TenthsCelsius,
): { code: string; words: string }[] {
  return cautionsOfLift(sheet, { depth, mass, room, batch: largest })
    .map(({ code }) => code)
    .filter((code) => nr > 0 || code === 'no-sheet' || code === 'batch-not-measured' || code.startsWith('room'))
    .map((code) => ({ code, words: CAUTION_WORDS[code] }));
}
