import { bestPlace } from '@/shared/fit/best-place';
import type { FitAnswer } from '@/shared/fit/fit-answer';
import { drawnOnce, type ReadRequest, regionFor, type SlabToSearch } from '@/shared/fit/fit-request';
import { nearlyFits } from '@/shared/fit/nearly';
import { findPlace, searchField, wholePiece } from '@/shared/fit/pieces-to-place';
import { topArea } from '@/shared/fit/top-area';
import { nanometres } from '@/shared/units/nanometres';

/**
 * Whether a top can be cut in one piece from a slab, and where it lies best (see `scorer`); else what it lacks; else no.
 * A yes has been judged twice, by the search and by `holdsShape`, which shares nothing with it. A no is proved over all
 * places and all angles of the window: a top larger by the tolerance all round does not fit (see `searchPlaces`). A slab
 * of 2200 × 1100 mm makes a top of 2134 × 1016 mm.
 */
export function fitOnePiece(slab: SlabToSearch, request: ReadRequest): FitAnswer {
  const region = regionFor(slab, request);
  const field = searchField([region]);
  const { sizes, window, tolerance } = request;
  const piecesOf = drawnOnce(request, region.clearance, wholePiece);
  const pieces = piecesOf(sizes);
  const { found, stretches } = findPlace(field, sizes, pieces, { window, tolerance });
  if (found) {
    return {
      answer: 'yes',
      place: bestPlace(slab, field, sizes, found, {
        window,
        pieces,
        pieceArea: topArea(sizes),
        best: request.asked.best,
      }),
    };
  }
  const proof = { tolerance: nanometres(Math.round(tolerance * 1000)), stretches };
  const missing = nearlyFits(field, sizes, piecesOf, { from: request.nearlyFrom, look: { window, tolerance } });
  return missing ? { answer: 'nearly', missing, proof } : { answer: 'no', proof };
}
