import { bestPlace } from '@/shared/fit/best-place';
import type { FitAnswer } from '@/shared/fit/fit-answer';
import { drawnOnce, type ReadRequest, regionFor, type SlabToSearch } from '@/shared/fit/fit-request';
import { nearlyFits } from '@/shared/fit/nearly';
import { findPlace, halfPieces, searchField } from '@/shared/fit/pieces-to-place';
import { topArea } from '@/shared/fit/top-area';
import { nanometres } from '@/shared/units/nanometres';

/**
 * Whether two sisters, opened like a book, make the top with a straight joint down its middle. The halves mirror one
 * another only if they come from one place in the log, so the half must lie at one place in both slabs at once, whose
 * chalk lines begin at one end and run along one line of the log. The joint may be on either side (`over` in the place:
 * the half lies to the right of its joint). The larger clearance of the two counts for both. Answers as `fitOnePiece`;
 * the score is the first slab's.
 */
export function fitBookmatched(slabs: readonly [SlabToSearch, SlabToSearch], request: ReadRequest): FitAnswer {
  const own = slabs.map((slab) => regionFor(slab, request));
  const clearance = Math.max(...own.map((region) => region.clearance));
  const regions = own.map((region) => ({ ...region, clearance }));
  const field = searchField(regions);
  const { sizes, window, tolerance } = request;
  const piecesOf = drawnOnce(request, clearance, halfPieces);
  const pieces = piecesOf(sizes);
  const { found, stretches } = findPlace(field, sizes, pieces, { window, tolerance });
  if (found) {
    const place = bestPlace(slabs[0], field, sizes, found, {
      window,
      pieces,
      pieceArea: topArea(sizes) / 2,
      best: request.asked.best,
    });
    return { answer: 'yes', place };
  }
  const proof = { tolerance: nanometres(Math.round(tolerance * 1000)), stretches };
  const missing = nearlyFits(field, sizes, piecesOf, { from: request.nearlyFrom, look: { window, tolerance } });
  return missing ? { answer: 'nearly', missing, proof } : { answer: 'no', proof };
}
