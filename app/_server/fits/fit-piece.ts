import type { FitAnswer } from '@/shared/fit/fit-answer';
import { fitOnePiece } from '@/shared/fit/fit-one-piece';
import { type ReadRequest, regionFor, type SlabToSearch } from '@/shared/fit/fit-request';
import { holdsShape } from '@/shared/fit/holds-shape';
import type { FoundPlace } from '@/shared/fit/pieces-to-place';
import { topArea } from '@/shared/fit/top-area';
import { stretched } from '@/shared/fit/top-shape';
import { outlineArea } from '@/shared/outline/outline-area';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';

/** Whether a top can be cut from an outline and what comes of it. Areas in square millimetres. */
export type OutlineFit = {
  readonly fit: FitAnswer;
  /** How much wider the top could be at its place, the edge allowance kept; for a yes. To a tenth of a millimetre, never more. */
  readonly spare?: Nanometres;
  /** Parts of the whole outline, 0 to 1, for a yes: lost beyond the larger piece left at one end, and that piece. */
  readonly waste?: number;
  readonly offcut?: number;
  readonly wasteArea?: number;
  readonly offcutArea?: number;
};

/** A tenth of a millimetre, in the micrometres of the search. */
const STEP = 100;

/** Judges one slab, with what is marked on it, by `fitOnePiece`, then measures what there is to spare with the containment test alone. */
export function fitPiece(slab: SlabToSearch, request: ReadRequest): OutlineFit {
  const { outline } = slab;
  const fit = fitOnePiece(slab, request);
  if (fit.answer !== 'yes') return { fit };
  const whole = outlineArea(outline);
  const { offcutArea } = fit.place.scored;
  const wasteArea = Math.max(0, whole - topArea(request.sizes) / 1e6);
  return {
    fit,
    spare: spareAcross(slab, fit.place, request),
    waste: Math.max(0, wasteArea - offcutArea) / whole,
    offcut: offcutArea / whole,
    wasteArea,
    offcutArea,
  };
}

/** Halving between a width that fits at that place and one that does not. */
function spareAcross(slab: SlabToSearch, { part, placement }: FoundPlace, request: ReadRequest): Nanometres {
  const region = regionFor(slab, request);
  const { sizes } = request;
  const { bottom, top } = boundsOf(slab.outline.ring);
  const fits = (steps: number) =>
    holdsShape(region, stretched(sizes, 1, (2 * sizes.b + steps * STEP) / (2 * sizes.b)), part, placement);
  let [low, high] = [0, Math.max(1, Math.ceil((top - bottom) / STEP))];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return nanometres(low * STEP * 1000);
}
