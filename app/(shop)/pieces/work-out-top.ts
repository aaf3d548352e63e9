import { err, type Result } from '@/shared/result/result';
import type { Nanometres } from '@/shared/units/nanometres';
import type { Cut, CutStretch } from '@/shared/wood/cut-share';
import type { Species } from '@/shared/wood/species';
import { type TopMovement, type TopMovementError, topMovement } from '@/shared/wood/top-movement';

export const TOP_CUTS = ['flat', 'quarter', 'mixed', 'unknown'] as const;
export type TopCut = (typeof TOP_CUTS)[number];

export type TopTrouble = TopMovementError | { readonly code: 'which-wood' };

/** How a top was sawn; of a mixed one, the per cent of its width that is quarter sawn, the rest being flat. */
export function cutOf(cut: TopCut, quarterPercent: number): Cut | readonly CutStretch[] {
  if (cut !== 'mixed') return cut;
  if (quarterPercent <= 0) return 'flat';
  if (quarterPercent >= 100) return 'quarter';
  return [
    { cut: 'flat', part: 100 - quarterPercent },
    { cut: 'quarter', part: quarterPercent },
  ];
}

/** How a solid top of this wood moves between two airs, by what they settle wood at. Errors as `topMovement`. */
export function workOutTop(
  species: Species | null,
  top: {
    readonly width: Nanometres;
    readonly cut: Cut | readonly CutStretch[];
    readonly fixedMc: number;
    readonly driestMc: number;
    readonly dampestMc: number;
  },
): Result<TopMovement, TopTrouble> {
  if (!species) return err({ code: 'which-wood' });
  return topMovement({ ...top, species });
}
