import type { SlabToSearch } from '@/shared/fit/fit-request';
import { allHold, type FoundPlace, type Piece, type SearchField } from '@/shared/fit/pieces-to-place';
import { type BestBy, type PlaceScore, scorer } from '@/shared/fit/score-place';
import type { HalfSizes } from '@/shared/fit/top-shape';

export type BestPlace = FoundPlace & { readonly scored: PlaceScore };

const PLACES_ALONG = 16;
const SPARE = 1000;

/**
 * The best-scored place of those looked at: at five angles of the window and the one already found, at 17 places along
 * and then finer about the best, with the figure as near the middle as the wood allows at each. Every place answered has
 * passed the containment test; the one already found stands in when none scores better.
 */
export function bestPlace(
  slab: SlabToSearch,
  field: SearchField,
  sizes: HalfSizes,
  found: FoundPlace,
  {
    window,
    pieces,
    pieceArea,
    best: by,
  }: {
    readonly window: number;
    readonly pieces: readonly Piece[];
    readonly pieceArea: number;
    readonly best?: BestBy | undefined;
  },
): BestPlace {
  const { score, offFigure } = scorer(slab, sizes, window, { pieceArea, ...(by && { best: by }) });
  const tried: (BestPlace & { readonly piece: Piece })[] = pieces
    .filter(({ part }) => part === found.part)
    .map((piece) => ({ ...found, piece, scored: score(found.placement) }));
  const angles = (piece: Piece) =>
    piece.shape.round ? [0] : [...new Set([found.placement.angle, 0, -window / 2, window / 2, -window, window])];
  const { turned } = field;
  const lookAlong = (piece: Piece, angle: number, from: number, to: number) => {
    for (let nr = 0; nr <= PLACES_ALONG; nr += 1) {
      const x = from + ((to - from) * nr) / PLACES_ALONG;
      for (const run of turned.freeAt(x)) {
        const spare = Math.min(SPARE, (run.to - run.from) / 2);
        const low = turned.onSlab(x, run.from);
        // Moving across by one changes the distance to the figure by a constant, so its zero is one division away.
        const at = offFigure(low.x, low.y);
        const next = turned.onSlab(x, run.from + 1000);
        const rate = (offFigure(next.x, next.y) - at) / 1000;
        const wish = Math.abs(rate) > 1e-6 ? run.from - at / rate : (run.from + run.to) / 2;
        const y = Math.min(run.to - spare, Math.max(run.from + spare, wish));
        const placement = { ...turned.onSlab(x, y), angle };
        tried.push({ piece, part: piece.part, placement, scored: score(placement) });
      }
    }
  };
  for (const piece of pieces) {
    turned.use(piece.shape);
    for (const angle of angles(piece)) {
      if (turned.turn(angle, 0) && turned.right >= turned.left) lookAlong(piece, angle, turned.left, turned.right);
    }
  }
  const first = tried.reduce((best, one) => (one.scored.score > best.scored.score ? one : best));
  turned.use(first.piece.shape);
  if (turned.turn(first.placement.angle, 0)) {
    const { x } = turned.fromSlab(first.placement.x, first.placement.y);
    const step = Math.max(0, turned.right - turned.left) / PLACES_ALONG;
    lookAlong(first.piece, first.placement.angle, Math.max(turned.left, x - step), Math.min(turned.right, x + step));
  }
  tried.sort((a, b) => b.scored.score - a.scored.score);
  const best = tried.find((one) => allHold(field.regions, sizes, one));
  if (!best) throw new Error('The place the search was given does not hold the shape.');
  return { part: best.part, placement: best.placement, scored: best.scored };
}
