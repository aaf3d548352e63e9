import { checkDefect } from '@/shared/outline/check-defect';
import { type Outline, ringsOf, sidesOf } from '@/shared/outline/outline';
import type { PieceMarks, Strap } from '@/shared/outline/piece-marks';
import { placeOfPoint } from '@/shared/outline/place-of-point';
import { segmentsMeet } from '@/shared/outline/segments-meet';

/** How many marks do not lie on this outline. An end check always lies at its end. */
export function offTheWood(outline: Outline, { defects, straps }: PieceMarks): number {
  return (
    defects.filter((defect) => !checkDefect(outline, defect).ok).length +
    straps.filter((strap) => !lies(outline, strap)).length
  );
}

/** Whether some of a strap lies on the wood. */
export function lies(outline: Outline, { from, to }: Strap): boolean {
  if ([from, to].some((point) => placeOfPoint(outline, point) === 'inside')) return true;
  return ringsOf(outline)
    .flatMap(sidesOf)
    .some(([a, b]) => segmentsMeet(a, b, from, to));
}
