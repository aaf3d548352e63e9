import type { Defect, DefectPlace, EndChecks } from '@/shared/outline/defect';
import { type EndTrims, endTrims } from '@/shared/outline/end-trims';
import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { micrometres } from '@/shared/outline/point';
import type { Nanometres } from '@/shared/units/nanometres';

/** The wood a top may come from, in micrometres: `clearance` in from every edge, gap and keep-out, and between the trims. */
export type Region = {
  readonly outline: Outline;
  readonly clearance: number;
  /** Along the line; undefined where the end itself, with its clearance, is the limit. */
  readonly from?: number;
  readonly to?: number;
  readonly keepOut: readonly DefectPlace[];
};

export type RegionUse = {
  /** Wood lost at every edge, gap and keep-out: bark, a saw line, a finger's breadth. Zero or more. */
  readonly edgeAllowance: Nanometres;
  readonly trims: EndTrims;
  /** Whether defects marked to be filled may be in the top; if not, they are kept out of it. */
  readonly filling: boolean;
  /** What flattening takes off each face: a defect no deeper than that is gone. */
  readonly flattened?: { readonly A: Nanometres; readonly B: Nanometres };
  /** Also lost at the edges, where only heartwood is wanted: the depth of the sapwood. */
  readonly sapwood?: Nanometres;
};

/**
 * The part of a slab that one use may be cut from: its outline less the edge allowance, less the trims or the end checks
 * where they run deeper, less the defects kept out and those left unfilled. A defect on a face goes away when flattening
 * that face takes at least its depth. A trimmed end is a sawn edge and needs no allowance of its own.
 */
export function effectiveRegion(
  slab: { readonly outline: Outline; readonly defects: readonly Defect[]; readonly endChecks: readonly EndChecks[] },
  use: RegionUse,
): Region {
  const { left, right } = boundsOf(slab.outline.ring);
  const trims = endTrims(use.trims, slab.endChecks);
  return {
    outline: slab.outline,
    clearance: micrometres(use.edgeAllowance) + (use.sapwood ? micrometres(use.sapwood) : 0),
    ...(trims.start > 0 ? { from: left + micrometres(trims.start) } : {}),
    ...(trims.end > 0 ? { to: right - micrometres(trims.end) } : {}),
    keepOut: slab.defects.filter((defect) => isKeptOut(defect, use)).map(({ place }) => place),
  };
}

function isKeptOut({ decision, depth }: Defect, { filling, flattened }: RegionUse): boolean {
  if (decision === 'leave' || (decision === 'fill' && filling)) return false;
  return depth.face === 'through' || !flattened || depth.depth > flattened[depth.face];
}
