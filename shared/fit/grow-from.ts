import { allHold, type Look, type Piece, type SearchField } from '@/shared/fit/pieces-to-place';
import { searchPlaces } from '@/shared/fit/search-places';
import type { SmallerTop } from '@/shared/fit/smaller-top';
import type { HalfSizes } from '@/shared/fit/top-shape';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';

const MILLIMETRE = 1000;
const LOOSER = 4;
const WORTH_WHILE = 2;
const ANGLES = 11;
const CLOSER = 3;

/** The fewest whole millimetres found to be taken off `size` for the stretched top to lie in the wood, and that top. */
export function growFrom(
  field: SearchField,
  size: number,
  from: number,
  stretch: (part: number) => HalfSizes,
  piecesOf: (sizes: HalfSizes) => readonly Piece[],
  look: Look,
): { readonly by: Nanometres; readonly top: SmallerTop } | undefined {
  const less = (millimetres: number) => stretch((size - millimetres * MILLIMETRE) / size);
  const most = Math.floor((size * (1 - from)) / MILLIMETRE);
  if (most < 1) return undefined;
  const smallest = less(most);
  const loose = { ...look, tolerance: look.tolerance * LOOSER };
  const begun = piecesOf(smallest)
    .map((piece, which) => ({ piece, which, answer: searchPlaces(field.turned, piece.shape, loose) }))
    .find(({ answer }) => answer.fits);
  if (!begun?.answer.fits) return undefined;
  const { which } = begun;
  let best = { off: most, sizes: smallest, found: { part: begun.piece.part, placement: begun.answer.placement } };

  const { turned } = field;
  const fitsAt = (off: number, angle: number): boolean => {
    const sizes = less(off);
    const piece = piecesOf(sizes)[which];
    if (!piece) return false;
    turned.use(piece.shape);
    const at = turned.turn(angle, 0) ? turned.look(look.tolerance * LOOSER, true) : undefined;
    if (!at) return false;
    best = { off, sizes, found: { part: piece.part, placement: { ...turned.onSlab(at.x, at.y), angle } } };
    return true;
  };
  /** Halving between what fits and what does not, at one angle. */
  const halve = (angle: number, tooLarge: number) => {
    let fails = tooLarge;
    while (best.off - fails > 1) {
      const middle = (best.off + fails) >> 1;
      if (!fitsAt(middle, angle)) fails = middle;
    }
  };
  /** Larger at this angle, if a little larger than the best so far will go: twice as far each time, then halving. */
  const growAt = (angle: number) => {
    let step = WORTH_WHILE;
    if (best.off <= step || !fitsAt(best.off - step, angle)) return;
    while (best.off > 2 * step && fitsAt(best.off - 2 * step, angle)) step *= 2;
    halve(angle, Math.max(0, best.off - 2 * step));
  };
  halve(best.found.placement.angle, 0);
  const { window } = look;
  if (window > 0 && !begun.piece.shape.round) {
    growAt(0);
    // The middle of each remaining half in turn, so that a good angle is met early.
    for (let nr = 1; nr <= ANGLES; nr += 1) growAt(window * (2 * middles(nr) - 1));
    for (let near = 0, step = window / ANGLES; near < CLOSER; near += 1, step /= 2) {
      const { angle } = best.found.placement;
      growAt(Math.min(window, angle + step));
      growAt(Math.max(-window, angle - step));
    }
  }
  if (!allHold(field.regions, best.sizes, best.found)) return undefined;
  const { sizes, found, off } = best;
  const top = {
    length: nanometres(Math.round(sizes.a * 2000)),
    width: nanometres(Math.round(sizes.b * 2000)),
    found,
    sizes,
  };
  return { by: nanometres(off * MILLIMETRE * 1000), top };
}

/** 1/2, 1/4, 3/4, 1/8, 5/8 …: the binary digits of the number mirrored (van der Corput). */
function middles(nr: number): number {
  let [value, part, left] = [0, 0.5, nr];
  while (left > 0) {
    if (left % 2 === 1) value += part;
    part /= 2;
    left = left >> 1;
  }
  return value;
}
