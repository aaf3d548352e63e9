import { err, ok, type Result } from '@/shared/result/result';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { type Cut, type CutStretch, tangentialShare } from '@/shared/wood/cut-share';
import { type Explained, explained, type How } from '@/shared/wood/explained';
import type { Figure, Species } from '@/shared/wood/species';
import { FIBRE_SATURATION } from '@/shared/wood/wood-density';

export type WidthChangeError =
  | { readonly code: 'unknown-movement'; readonly direction: 'radial' | 'tangential' }
  | { readonly code: 'moisture-out-of-range'; readonly least: 0 };

export type WidthChangeAsked = {
  readonly species: Species;
  readonly width: Nanometres;
  readonly cut: Cut | readonly CutStretch[];
  readonly fromMc: number;
  readonly toMc: number;
};

/** The coefficients of Equation 13-2 hold between these moisture contents. */
const COEFFICIENTS_HOLD = { from: 6, to: 14 };

const holds = (mc: number) => mc >= COEFFICIENTS_HOLD.from && mc <= COEFFICIENTS_HOLD.to;

/** Change per size by Equation 13-3 from a shrinkage in per cent. Neither moisture content may be above 30. */
export function changeByShrinkage(shrinkage: number, fromMc: number, toMc: number): number {
  return (toMc - fromMc) / ((FIBRE_SATURATION * 100) / shrinkage - FIBRE_SATURATION + fromMc);
}

/** The shrinkage a coefficient was made from: the handbook's coefficients are Equation 13-3 begun at 10 %. */
export function shrinkageBehind(coefficient: number): number {
  return (FIBRE_SATURATION * 100) / (1 / coefficient + FIBRE_SATURATION - 10);
}

type Change = {
  readonly change: number;
  readonly from: string;
  readonly source: string;
  readonly formula: How['formula'];
};

function changePerSize(coefficient: Figure, shrinkage: Figure, fromMc: number, toMc: number): Change | undefined {
  if (coefficient && holds(fromMc) && holds(toMc)) {
    const { value, source } = coefficient;
    return { change: value * (toMc - fromMc), from: `C ${value}`, source, formula: 'movement-coefficient' };
  }
  const behind = coefficient && shrinkageBehind(coefficient.value);
  if (shrinkage && shrinkage.value >= (behind ?? 0)) {
    const { value, source } = shrinkage;
    return {
      change: changeByShrinkage(value, fromMc, toMc),
      from: `S ${value} %`,
      source,
      formula: 'movement-shrinkage',
    };
  }
  if (!coefficient || behind === null) return undefined;
  return {
    change: changeByShrinkage(behind, fromMc, toMc),
    from: `S ${behind.toFixed(1)} % behind C ${coefficient.value}`,
    source: coefficient.source,
    formula: 'movement-shrinkage',
  };
}

/**
 * Change of a width between two moisture contents: below zero when it shrinks. Both within 6 to 14 %, ends included, and
 * the species' coefficient known: Equation 13-2, ΔD = D C (MF − MI). Otherwise Equation 13-3 from its shrinkage,
 * ΔD = D (MF − MI) / (3000/S − 30 + MI). Above 30 % nothing moves, so more counts as 30. Where the coefficient stands for
 * a commercial group that moves more than the species' own shrinkage (red oak), or the shrinkage is not published, S is
 * the one behind the coefficient, so that a wider season never looks milder. A cut between flat and quarter takes both
 * directions in proportion; unknown counts as flat. `unknown-movement` when neither is published: nothing is guessed.
 * Wood Handbook FPL-GTR-190 (2010), pp. 13-18 and 13-19. White fir, flat, 232 mm, 8 to 11 % grows 1.7 mm.
 */
export function widthChange(asked: WidthChangeAsked): Result<Explained<Nanometres>, WidthChangeError> {
  const { species, width, cut } = asked;
  if (!(asked.fromMc >= 0 && asked.toMc >= 0)) return err({ code: 'moisture-out-of-range', least: 0 });
  const fromMc = Math.min(asked.fromMc, FIBRE_SATURATION);
  const toMc = Math.min(asked.toMc, FIBRE_SATURATION);
  const share = tangentialShare(cut);
  const tangential = changePerSize(species.moveTangential, species.shrinkTangential, fromMc, toMc);
  const radial = changePerSize(species.moveRadial, species.shrinkRadial, fromMc, toMc);
  if (share > 0 && !tangential) return err({ code: 'unknown-movement', direction: 'tangential' });
  if (share < 1 && !radial) return err({ code: 'unknown-movement', direction: 'radial' });
  const perSize = share * (tangential?.change ?? 0) + (1 - share) * (radial?.change ?? 0);
  const leading = share > 0 ? tangential : radial;
  const inputs: How['inputs'] = {
    species: species.id,
    widthMm: width / 1e6,
    fromMc,
    toMc,
    tangentialShare: share,
    ...(share > 0 && tangential && { tangential: tangential.from, tangentialSource: tangential.source }),
    ...(share < 1 && radial && { radial: radial.from, radialSource: radial.source }),
  };
  return ok(explained(nanometres(Math.round(width * perSize)), leading?.formula ?? 'movement-coefficient', inputs));
}
