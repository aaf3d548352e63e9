import type { Defect, EndChecks } from '@/shared/outline/defect';
import type { Point } from '@/shared/outline/point';

/** A band of strapping round a slab, drawn as the line it lies along. */
export type Strap = { readonly from: Point; readonly to: Point };

/** Everything with a place on a slab, each with its number in the book and what was written beside it. */
export type PieceMarks = {
  readonly defects: readonly (Defect & Kept)[];
  readonly endChecks: readonly (EndChecks & Kept)[];
  readonly straps: readonly (Strap & Kept)[];
};

type Kept = { readonly id: number; readonly note: string };

export const NO_MARKS: PieceMarks = { defects: [], endChecks: [], straps: [] };

export function countMarks({ defects, endChecks, straps }: PieceMarks): number {
  return defects.length + endChecks.length + straps.length;
}

/** One mark as it is made, before the book has given it a number. */
export type NewMark =
  | ({ readonly is: 'defect'; readonly note: string } & Defect)
  | ({ readonly is: 'end-check'; readonly note: string } & EndChecks)
  | ({ readonly is: 'strap'; readonly note: string } & Strap);
