import { checkDefect } from '@/shared/outline/check-defect';
import { type Outline, ringsOf, sidesOf } from '@/shared/outline/outline';
import type { PieceMarks, Strap } from '@/shared/outline/piece-marks';
import { placeOfPoint } from '@/shared/outline/place-of-point';
import { segmentsMeet } from '@/shared/outline/segments-meet';

/** The numbers of the marks that do not lie on this outline. An end check always lies at its end. */
export function marksOffTheWood(outline: Outline, { defects, straps }: PieceMarks): readonly number[] {
  return [
    ...defects.filter((defect) => !checkDefect(outline, defect).ok),
    ...straps.filter((strap) => !lies(outline, strap)),
  ].map(({ id }) => id);
}

/** How many marks do not lie on this outline. */
export const offTheWood = (outline: Outline, marks: PieceMarks): number => marksOffTheWood(outline, marks).length;

/** Whether some of a strap lies on the wood. */
export function lies(outline: Outline, { from, to }: Strap): boolean {
  if ([from, to].some((point) => placeOfPoint(outline, point) === 'inside')) return true;
  return ringsOf(outline)
    .flatMap(sidesOf)
    .some(([a, b]) => segmentsMeet(a, b, from, to));
}
