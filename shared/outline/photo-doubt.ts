import { placeError } from '@/shared/outline/photo-error';
import type { Mark, Pixel } from '@/shared/outline/sheet-marks';

/** How far off places may be, millimetres: at the marks, and where on the edge it is most; which point that is, from 0. */
export type PhotoDoubt = { readonly atMarks: number; readonly most: number; readonly point: number };

/**
 * How true a photo is: the worst of `placeError` at the marks themselves, and along the edge. The doubt grows away from
 * the sheet, so that the worst point says where to lay it instead.
 */
export function photoDoubt(marks: readonly Mark[], edge: readonly Pixel[]): PhotoDoubt {
  const atMarks = Math.max(...marks.map(({ pixel }) => placeError(marks, pixel)));
  const errors = edge.map((pixel) => placeError(marks, pixel));
  const most = Math.max(atMarks, ...errors);
  return { atMarks, most, point: Math.max(0, errors.indexOf(most)) };
}
