import type { House } from '@/app/_server/cuts/read-house';
import { edgesOfPart } from '@/shared/outline/live-edges-of-part';
import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { usableWidths } from '@/shared/outline/usable-widths';
import type { PieceFlag, PieceForm } from '@/shared/wood/piece';

export const BECOMES = ['slab', 'board', 'sheet', 'offcut', 'scrap'] as const;
export type BecomesWhat = (typeof BECOMES)[number];

export type OldPiece = { readonly form: PieceForm; readonly flags: readonly PieceFlag[] };

/** Length and widest usable width of a piece, nanometres. */
export function sizeOfPart(part: Outline): { readonly lengthNm: number; readonly widthNm: number } {
  const { left, right } = boundsOf(part.ring);
  return { lengthNm: (right - left) * 1000, widthNm: Math.round((usableWidths(part)?.widest.width ?? 0) * 1000) };
}

export function isBelowHouse(part: Outline, house: House): boolean {
  const { lengthNm, widthNm } = sizeOfPart(part);
  return lengthNm < house.lengthNm || widthNm < house.widthNm;
}

/**
 * What a piece most likely becomes, to be chosen otherwise: below the house size an offcut, of a slab that had live edges
 * and has none left a board, else what it was cut from.
 */
export function likelyForm(old: OldPiece, slab: Outline, part: Outline, house: House): BecomesWhat {
  if (isBelowHouse(part, house) || old.form === 'pack') return 'offcut';
  if (old.form !== 'slab') return old.form;
  const had = {
    left: old.flags.includes('live-edge-left'),
    right: old.flags.includes('live-edge-right'),
  };
  const has = edgesOfPart(slab, part);
  const isRipped = (had.left || had.right) && !(had.left && has.left) && !(had.right && has.right);
  return isRipped ? 'board' : 'slab';
}
