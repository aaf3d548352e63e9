import { type Explained, explained } from '@/shared/wood/explained';

/** One board foot is 144 in³, exactly 0.002359737216 m³ by the inch of 25.4 mm. */
export const BOARD_FOOT_M3 = 0.002359737216;

/** Board feet of what is really there, unrounded, from its volume in cubic metres. 1 m³ is 423.776 board feet. */
export function trueBoardFeet(cubicMetres: number): Explained<number> {
  if (!(cubicMetres >= 0)) throw new RangeError(`A volume is never below zero: ${cubicMetres}`);
  return explained(cubicMetres / BOARD_FOOT_M3, 'true-board-feet', { cubicMetres });
}

/** The seller's figure beside ours: how much more the seller counts, in board feet and as a share of ours. */
export type SellerDifference = { readonly boardFeet: number; readonly share: number | null };

/** How far the seller's board feet are above what is there; below when negative. `share` is null when nothing is there. */
export function sellerDifference(sellers: number, ours: number): SellerDifference {
  return { boardFeet: sellers - ours, share: ours > 0 ? (sellers - ours) / ours : null };
}
