/** How the boards of a top were sawn: growth rings lie flat, at a slant, upright, or nobody knows. */
export const CUTS = ['flat', 'rift', 'quarter', 'unknown'] as const;
export type Cut = (typeof CUTS)[number];

/** A stretch of the width that was sawn one way; `part` is its share of the width, any positive weight. */
export type CutStretch = { readonly cut: Cut; readonly part: number };

const TANGENTIAL_SHARE: Record<Cut, number> = { flat: 1, rift: 0.5, quarter: 0, unknown: 1 };

/**
 * The share of tangential movement in the width, 0 to 1: flat sawn moves tangentially, quarter sawn radially, rift half
 * and half, and unknown counts as flat, the end that moves more. A mixed top is the mean by width. A live-edge slab
 * through the pith is flat at its edges and quarter at its middle; call it unknown unless it was measured. Common
 * practice. Half flat and half quarter is 0.5.
 */
export function tangentialShare(cut: Cut | readonly CutStretch[]): number {
  if (typeof cut === 'string') return TANGENTIAL_SHARE[cut];
  const whole = cut.reduce((sum, { part }) => sum + part, 0);
  if (!(whole > 0) || cut.some(({ part }) => !(part >= 0))) throw new RangeError('A mixed cut needs positive parts');
  return cut.reduce((sum, each) => sum + TANGENTIAL_SHARE[each.cut] * each.part, 0) / whole;
}
