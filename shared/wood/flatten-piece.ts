import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { type Explained, explained } from '@/shared/wood/explained';

/** How far a face leaves a plane at full size: across the width, along the length, and one corner above the other three. */
type Warp = { readonly cup: Nanometres; readonly bow: Nanometres; readonly twist: Nanometres };

/** One pass over the piece: how much it takes from each face, and from how many faces. */
export type FlatteningPass = { readonly takes: Nanometres; readonly faces: 1 | 2 };

export type RoughPiece = {
  readonly thickness: Nanometres;
  readonly width: Nanometres;
  readonly length: Nanometres;
  readonly warp: Warp;
};

export type Flattened = {
  /** Zero when nothing is left. */
  readonly left: Nanometres;
  /** What the warp costs, what the passes cost, and whether together they are more than there is. */
  readonly warpCosts: Nanometres;
  readonly passesCost: Nanometres;
  readonly nothingLeft: boolean;
};

/** Rough flattening, again after it has rested or the resin has cured, and the last sanding. Common practice. */
export const USUAL_PASSES: readonly FlatteningPass[] = [
  { takes: nanometres(1_500_000), faces: 2 },
  { takes: nanometres(1_000_000), faces: 2 },
  { takes: nanometres(500_000), faces: 2 },
];

/** What a warp costs in thickness. A twist shimmed equally under both high corners costs half of what one corner shows. */
function warpCosts({ cup, bow, twist }: Warp): Nanometres {
  return nanometres(cup + bow + Math.ceil(twist / 2));
}

function after(thickness: Nanometres, costs: Nanometres, passes: readonly FlatteningPass[]): Flattened {
  const passesCost = nanometres(passes.reduce((sum, { takes, faces }) => sum + takes * faces, 0));
  const left = thickness - costs - passesCost;
  return { left: nanometres(Math.max(0, left)), warpCosts: costs, passesCost, nothingLeft: left <= 0 };
}

/**
 * Thickness left when a piece is flattened at full size. Both faces follow the same curve, so a flat board inside it
 * loses each deviation once; they are added, which is the most they can cost together. Then each pass takes its allowance
 * from its faces. Geometry; the usual passes are common practice and may be replaced. 60 mm with a cup of 4 mm, a bow of
 * 3 mm and a twist of 6 mm, with passes of 6 mm in all, leaves 44 mm.
 */
export function flattenWhole(
  piece: RoughPiece,
  passes: readonly FlatteningPass[] = USUAL_PASSES,
): Explained<Flattened> {
  const flattened = after(piece.thickness, warpCosts(piece.warp), passes);
  return explained(flattened, 'flatten-full', inputsOf(piece, piece.warp, flattened));
}

/**
 * Thickness left when the piece is cut to size before it is flattened: a cup falls with the square of the width, a bow
 * with the square of the length, a twist with both. The square law is that of a shallow circular arc, and never promises
 * less deviation than the true arc. A size above the piece's own counts as its own. Half the width leaves a quarter of
 * the cup.
 */
export function flattenCutFirst(
  piece: RoughPiece,
  size: { readonly width: Nanometres; readonly length: Nanometres },
  passes: readonly FlatteningPass[] = USUAL_PASSES,
): Explained<Flattened> {
  const across = Math.min(1, size.width / piece.width);
  const along = Math.min(1, size.length / piece.length);
  const warp: Warp = {
    cup: nanometres(Math.ceil(piece.warp.cup * across * across)),
    bow: nanometres(Math.ceil(piece.warp.bow * along * along)),
    twist: nanometres(Math.ceil(piece.warp.twist * across * along)),
  };
  const flattened = after(piece.thickness, warpCosts(warp), passes);
  return explained(flattened, 'flatten-cut-first', {
    ...inputsOf(piece, warp, flattened),
    shareOfWidth: across,
    shareOfLength: along,
  });
}

function inputsOf(piece: RoughPiece, { cup, bow, twist }: Warp, { passesCost }: Flattened) {
  return {
    thicknessMm: piece.thickness / 1e6,
    cupMm: cup / 1e6,
    bowMm: bow / 1e6,
    twistMm: twist / 1e6,
    allowancesMm: passesCost / 1e6,
  };
}
