import type { Ring } from '@/shared/outline/outline';
import type { Point } from '@/shared/outline/point';
import type { Nanometres } from '@/shared/units/nanometres';

export const DEFECT_KINDS = [
  'knot',
  'check',
  'split',
  'shake',
  'pith',
  'punk',
  'bark inclusion',
  'hole',
  'stain',
  'metal',
  'break',
  'other',
] as const;

export type DefectKind = (typeof DEFECT_KINDS)[number];

/** A circle or a closed line on the drawing, in micrometres. */
export type DefectPlace =
  | { readonly shape: 'circle'; readonly centre: Point; readonly radius: number }
  | { readonly shape: 'polygon'; readonly ring: Ring };

/** Right through, or in from one face by a depth. */
type DefectDepth = { readonly face: 'through' } | { readonly face: 'A' | 'B'; readonly depth: Nanometres };

export type Defect = {
  readonly kind: DefectKind;
  readonly place: DefectPlace;
  readonly depth: DefectDepth;
  /** Keep the top clear of it, fill it with resin, or leave it as it is. */
  readonly decision: 'keep-out' | 'fill' | 'leave';
};

/** How far checks run in from one end of the slab, along the line. */
export type EndChecks = { readonly end: 'start' | 'end'; readonly depth: Nanometres };
