import type { Parts, ResinSheet } from '@/shared/pour/resin-sheet';

/** Grams per litre of mixed resin, and whether the sheet says so or it was reckoned from its parts. */
export type MixedDensity = { readonly gramsPerLitre: number; readonly from: 'sheet' | 'parts' };

/**
 * The density of mixed resin: the sheet's own, or else of `parts` by mass at the density of each, with no change of volume
 * on mixing: (a + b) / (a/ρA + b/ρB), to the nearest gram a litre. Undefined where neither can be had. 100 to 45 at 1100
 * and 1000 g/L is 145 / (100/1100 + 45/1000) = 1067 g/L.
 */
export function mixedDensity(
  sheet: Pick<ResinSheet, 'mixedDensity' | 'densityA' | 'densityB'>,
  parts: Parts,
): MixedDensity | undefined {
  if (sheet.mixedDensity) return { gramsPerLitre: sheet.mixedDensity, from: 'sheet' };
  const { densityA, densityB } = sheet;
  if (!densityA || !densityB) return undefined;
  const volume = parts.a / densityA + parts.b / densityB;
  return { gramsPerLitre: Math.round((parts.a + parts.b) / volume), from: 'parts' };
}
