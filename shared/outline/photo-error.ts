import { type Homography, homographyFrom, straightenPixel } from '@/shared/outline/homography';
import type { Mark, Pixel } from '@/shared/outline/sheet-marks';

/** At each mark, how far the map puts it from where it is known to be, in millimetres: 0 for four marks, which fix the map. */
export function markErrors(map: Homography, marks: readonly Mark[]): readonly number[] {
  return marks.map(({ pixel, place }) => {
    const put = straightenPixel(map, pixel);
    return put ? Math.hypot(put.x - place.x, put.y - place.y) : Infinity;
  });
}

/**
 * How far off a straightened place may be, in millimetres, when every mark and the place itself were tapped within
 * `pixels` of where they should be (2 unless told, common practice for a thumb on a magnified photo): the root of the sum
 * of squares of what moving each of them by so much, along and across, does to the place. Small at the sheet, growing
 * away from it; Infinity where the map breaks down. At a corner it is the error of that corner.
 */
export function placeError(marks: readonly Mark[], pixel: Pixel, pixels = 2): number {
  const base = homographyFrom(marks);
  const at = base.ok ? straightenPixel(base.value, pixel) : undefined;
  if (!base.ok || !at) return Infinity;
  let squares = 0;
  for (const [dx, dy] of [
    [pixels, 0],
    [0, pixels],
  ] as const) {
    const own = straightenPixel(base.value, { x: pixel.x + dx, y: pixel.y + dy });
    squares += own ? (own.x - at.x) ** 2 + (own.y - at.y) ** 2 : Infinity;
    for (const moved of marks) {
      const map = homographyFrom(
        marks.map((mark) =>
          mark === moved ? { ...mark, pixel: { x: mark.pixel.x + dx, y: mark.pixel.y + dy } } : mark,
        ),
      );
      const put = map.ok ? straightenPixel(map.value, pixel) : undefined;
      squares += put ? (put.x - at.x) ** 2 + (put.y - at.y) ** 2 : Infinity;
    }
  }
  return Math.sqrt(squares);
}
