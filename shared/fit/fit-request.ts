import type { Piece } from '@/shared/fit/pieces-to-place';
import type { BestBy } from '@/shared/fit/score-place';
import { type HalfSizes, halfSizes, type TopShape, type TopShapeError } from '@/shared/fit/top-shape';
import type { Defect, EndChecks } from '@/shared/outline/defect';
import { effectiveRegion, type Region } from '@/shared/outline/effective-region';
import type { EndTrims } from '@/shared/outline/end-trims';
import type { Outline } from '@/shared/outline/outline';
import type { Point } from '@/shared/outline/point';
import { err, ok, type Result } from '@/shared/result/result';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';

/** A slab as the search needs it. */
export type SlabToSearch = {
  readonly id: string;
  readonly outline: Outline;
  readonly defects: readonly Defect[];
  readonly endChecks: readonly EndChecks[];
  /** The line the figure runs along, to be in the middle of the top; the middle of the wood unless told. */
  readonly figure?: { readonly from: Point; readonly to: Point };
  /** How deep the sapwood is at the edges. */
  readonly sapwood?: Nanometres;
};

/** What is asked of the wood. */
export type FitRequest = {
  readonly shape: TopShape;
  /** The grain may run so many degrees off the length, either way: 0 to 45. */
  readonly grainWindow: number;
  readonly edgeAllowance: Nanometres;
  readonly trims: EndTrims;
  readonly filling: boolean;
  readonly flattened?: { readonly A: Nanometres; readonly B: Nanometres };
  readonly heartwoodOnly?: boolean;
  /** What the best place is picked by; balanced unless told. */
  readonly best?: BestBy | undefined;
  /** A top this much larger all round is sure to be found if there is room for it; 1 mm unless told, at least 0.1 mm. */
  readonly tolerance?: Nanometres;
  /** The smallest part of the length, the width or both that still counts as nearly; 0.85 unless told, 0.5 to 1. */
  readonly nearlyFrom?: number;
};

export type FitRequestError =
  | TopShapeError
  | { readonly code: 'bad-grain-window' | 'bad-allowance' | 'bad-tolerance' | 'bad-nearly-from' };

/** A request in the units of the search: micrometres and radians. */
export type ReadRequest = {
  readonly sizes: HalfSizes;
  readonly window: number;
  readonly tolerance: number;
  readonly nearlyFrom: number;
  readonly asked: FitRequest;
  /** Shapes drawn so far for this request, so that the next slab need not draw them again. It changes no answer. */
  readonly drawn: Map<string, readonly Piece[]>;
};

const TOLERANCE = nanometres(1_000_000);
const FINEST_TOLERANCE = 100_000;

/**
 * Reads a request once for all slabs, or says which part of it cannot be: the shape's own errors, a window outside 0 to
 * 45 degrees, an allowance or trim below zero, a tolerance finer than 0.1 mm, a `nearlyFrom` outside 0.5 to 1.
 */
export function readRequest(asked: FitRequest): Result<ReadRequest, FitRequestError> {
  const sizes = halfSizes(asked.shape);
  if (!sizes.ok) return sizes;
  const { grainWindow, edgeAllowance, trims, tolerance = TOLERANCE, nearlyFrom = 0.85 } = asked;
  if (!(grainWindow >= 0 && grainWindow <= 45)) return err({ code: 'bad-grain-window' });
  if (edgeAllowance < 0 || trims.start < 0 || trims.end < 0) return err({ code: 'bad-allowance' });
  if (tolerance < FINEST_TOLERANCE) return err({ code: 'bad-tolerance' });
  if (!(nearlyFrom >= 0.5 && nearlyFrom <= 1)) return err({ code: 'bad-nearly-from' });
  const window = (grainWindow * Math.PI) / 180;
  return ok({ sizes: sizes.value, window, tolerance: tolerance / 1000, nearlyFrom, asked, drawn: new Map() });
}

/** The wood of a slab that this request may use. */
export function regionFor(slab: SlabToSearch, { asked }: ReadRequest): Region {
  return effectiveRegion(slab, {
    edgeAllowance: asked.edgeAllowance,
    trims: asked.trims,
    filling: asked.filling,
    ...(asked.flattened ? { flattened: asked.flattened } : {}),
    ...(asked.heartwoodOnly && slab.sapwood ? { sapwood: slab.sapwood } : {}),
  });
}

/** The pieces of a top of these sizes, drawn once for a request. */
export function drawnOnce(
  { drawn }: ReadRequest,
  clearance: number,
  draw: (sizes: HalfSizes, clearance: number) => readonly Piece[],
): (sizes: HalfSizes) => readonly Piece[] {
  return (sizes) => {
    const key = `${draw.name} ${sizes.a} ${sizes.b} ${clearance}`;
    const known = drawn.get(key);
    if (known) return known;
    const made = draw(sizes, clearance);
    drawn.set(key, made);
    return made;
  };
}
