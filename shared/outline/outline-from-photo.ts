import { type Homography, homographyFrom, straightenPixel } from '@/shared/outline/homography';
import { longAxis } from '@/shared/outline/long-axis';
import type { Outline } from '@/shared/outline/outline';
import { type OutlineFault, outlineFromPoints } from '@/shared/outline/outline-from-points';
import {
  type CornersRefusal,
  type Mark,
  type Millimetres,
  marksOfSheet,
  marksOfTapes,
  type Pixel,
  type Tape,
} from '@/shared/outline/sheet-marks';
import { err, ok, type Result } from '@/shared/result/result';

export type FourPixels = readonly [Pixel, Pixel, Pixel, Pixel];

/** What of known size lies on the slab, millimetres. The first side of a sheet, from mark to mark, is its width. */
export type Reference =
  | { readonly kind: 'sheet'; readonly width: number; readonly height: number }
  | { readonly kind: 'tapes'; readonly tapes: readonly [Tape, Tape] };

/** What was tapped on a photo of face A. */
export type PhotoMeasuring = {
  readonly reference: Reference;
  /** The corners of the sheet round it, or both ends of the first tape and then of the second. */
  readonly marks: FourPixels;
  readonly edge: readonly Pixel[];
  readonly gaps: readonly (readonly Pixel[])[];
  /** The chalk line begins at the right of the photo, or at its top, in place of its left or bottom. */
  readonly fromOtherEnd: boolean;
};

/** The wrong mark, or the wrong point; counted from 0, `gap` undefined on the edge. */
export type PhotoFault =
  | { readonly code: CornersRefusal['code'] | 'marks-in-line'; readonly mark: number }
  | OutlineFault
  | { readonly code: 'beyond-horizon'; readonly gap?: number; readonly point: number };

export type PhotoOutline = {
  readonly outline: Outline;
  /** From pixels to millimetres of the chalk line. */
  readonly map: Homography;
  readonly marks: readonly Mark[];
};

/**
 * The outline of a slab from a photo of it: the perspective is taken out by the marks, the chalk line laid along the
 * middle of the smallest box around the edge, its start at 0. Nothing is mirrored: what is left of the line on the photo
 * is left of it on the slab. Refused with the mark or the point to look at; what was entered stays with the caller.
 */
export function outlineFromPhoto(entered: PhotoMeasuring): Result<PhotoOutline, PhotoFault> {
  const marked = marksOf(entered);
  if (!marked.ok) return err({ code: marked.error.code, mark: marked.error.corner });
  const plane = homographyFrom(marked.value);
  if (!plane.ok) return err({ code: 'marks-in-line', mark: 0 });
  const rings = [entered.edge, ...entered.gaps];
  for (const [nr, ring] of rings.entries()) {
    const point = ring.findIndex((pixel) => !straightenPixel(plane.value, pixel));
    if (point >= 0) return err({ code: 'beyond-horizon', ...(nr > 0 && { gap: nr - 1 }), point });
  }
  if (entered.edge.length < 3) return err({ code: 'too-few-points', point: Math.max(0, entered.edge.length - 1) });
  const flat = rings.map((ring) => ring.map((pixel) => straightenPixel(plane.value, pixel) ?? { x: 0, y: 0 }));
  const axis = longAxis(flat[0] ?? []);
  if (!axis.ok) return err({ code: 'no-area', point: 0 });
  const along = startOn(axis.value, plane.value, entered);
  const start = Math.min(...(flat[0] ?? []).map(({ x, y }) => x * along.x + y * along.y));
  const across = axis.value.middle.y * along.x - axis.value.middle.x * along.y;
  const [edge = [], ...gaps] = flat.map((ring) =>
    ring.map(({ x, y }) => ({
      x: Math.round((x * along.x + y * along.y - start) * 1000),
      y: Math.round((y * along.x - x * along.y - across) * 1000) + 0,
    })),
  );
  const outline = outlineFromPoints({ edge, gaps });
  if (!outline.ok) {
    const { entered: _, ...fault } = outline.error;
    return err(fault);
  }
  return ok({ outline: outline.value, map: turned(plane.value, along, start, across), marks: marked.value });
}

/** The marks with their places; refused where they cannot be what they are said to be. */
export function marksOf({
  reference,
  marks,
}: Pick<PhotoMeasuring, 'reference' | 'marks'>): Result<readonly Mark[], CornersRefusal> {
  return reference.kind === 'sheet' ? marksOfSheet(marks, reference) : marksOfTapes(marks, reference.tapes);
}

/** Which of its two ways the line runs: to the right of the photo, or up where it lies more upright than level. */
function startOn(
  { along, middle }: { readonly along: Millimetres; readonly middle: Millimetres },
  map: Homography,
  { edge, fromOtherEnd }: PhotoMeasuring,
): Millimetres {
  const far = (pixel: Pixel) => {
    const at = straightenPixel(map, pixel);
    return at ? (at.x - middle.x) * along.x + (at.y - middle.y) * along.y : 0;
  };
  const byDistance = [...edge].sort((a, b) => far(a) - far(b));
  const [first, last] = [byDistance[0], byDistance.at(-1)];
  const [dx, dy] = [(last?.x ?? 0) - (first?.x ?? 0), (last?.y ?? 0) - (first?.y ?? 0)];
  const runsOn = Math.abs(dx) >= Math.abs(dy) ? dx > 0 : dy < 0;
  return runsOn !== fromOtherEnd ? along : { x: -along.x, y: -along.y };
}

function turned(map: Homography, along: Millimetres, start: number, across: number): Homography {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0, i = 1] = map;
  const [w, x, y] = [[g, h, i] as const, [a, b, c] as const, [d, e, f] as const];
  const row = (p: number, q: number, shift: number) =>
    [0, 1, 2].map((at) => p * (x[at] ?? 0) + q * (y[at] ?? 0) - shift * (w[at] ?? 0));
  return [...row(along.x, along.y, start), ...row(-along.y, along.x, across), ...w];
}
