import type { Mark, Millimetres, Pixel } from '@/shared/outline/sheet-marks';
import { err, ok, type Result } from '@/shared/result/result';

/** Nine numbers, row by row, the last of them 1 in scaled coordinates: takes pixels to millimetres on the slab's face. */
export type Homography = readonly number[];

/**
 * The perspective map from the photo to the slab's face that fits four or more marks with the least sum of squares in
 * scaled coordinates (exactly, for four). Points of one plane seen through a lens without distortion obey it (Hartley and
 * Zisserman, Multiple View Geometry, 2nd ed. 2004, chapter 4, the inhomogeneous solution after normalisation; from
 * memory). Fails with `too-few-marks`, or `marks-in-line` when they do not fix it.
 */
export function homographyFrom(
  marks: readonly Mark[],
): Result<Homography, { readonly code: 'too-few-marks' | 'marks-in-line' }> {
  if (marks.length < 4) return err({ code: 'too-few-marks' });
  const seen = scaling(marks.map(({ pixel }) => pixel));
  const real = scaling(marks.map(({ place }) => place));
  if (!seen || !real) return err({ code: 'marks-in-line' });
  const rows: { readonly a: readonly number[]; readonly b: number }[] = marks.flatMap(({ pixel, place }) => {
    const [u, v] = [(pixel.x - seen.x) / seen.size, (pixel.y - seen.y) / seen.size];
    const [x, y] = [(place.x - real.x) / real.size, (place.y - real.y) / real.size];
    return [
      { a: [u, v, 1, 0, 0, 0, -u * x, -v * x], b: x },
      { a: [0, 0, 0, u, v, 1, -u * y, -v * y], b: y },
    ];
  });
  // Four marks give a square system; more are fitted through the normal equations.
  const square =
    marks.length === 4
      ? rows.map(({ a, b }) => [...a, b])
      : Array.from({ length: 8 }, (_, i) =>
          [...Array.from({ length: 8 }, (_, j) => j), -1].map((j) =>
            rows.reduce((sum, { a, b }) => sum + (a[i] ?? 0) * (j < 0 ? b : (a[j] ?? 0)), 0),
          ),
        );
  const solved = solve(square);
  if (!solved) return err({ code: 'marks-in-line' });
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = solved;
  const [s, t] = [real.size, seen.size];
  // Undo both scalings: real⁻¹ · solved · seen.
  const w = [g / t, h / t, 1 - (g * seen.x + h * seen.y) / t] as const;
  const row = (p: number, q: number, r: number, shift: number) => {
    const straight = [(s * p) / t, (s * q) / t, s * (r - (p * seen.x + q * seen.y) / t)] as const;
    return [straight[0] + shift * w[0], straight[1] + shift * w[1], straight[2] + shift * w[2]];
  };
  return ok([...row(a, b, c, real.x), ...row(d, e, f, real.y), ...w]);
}

/** Where a pixel lies on the slab's face, in millimetres; undefined on or beyond the horizon of the photo. */
export function straightenPixel(map: Homography, pixel: Pixel): Millimetres | undefined {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0, i = 1] = map;
  const w = g * pixel.x + h * pixel.y + i;
  if (!(w > 1e-9)) return undefined;
  return { x: (a * pixel.x + b * pixel.y + c) / w, y: (d * pixel.x + e * pixel.y + f) / w };
}

function scaling(
  points: readonly Pixel[],
): { readonly x: number; readonly y: number; readonly size: number } | undefined {
  const x = points.reduce((sum, point) => sum + point.x, 0) / points.length;
  const y = points.reduce((sum, point) => sum + point.y, 0) / points.length;
  const size = points.reduce((most, point) => Math.max(most, Math.hypot(point.x - x, point.y - y)), 0);
  return size > 0 && Number.isFinite(size) ? { x, y, size } : undefined;
}

/** Gauss with row exchange on eight rows of nine; undefined when a pivot all but vanishes. */
function solve(rows: readonly (readonly number[])[]): readonly number[] | undefined {
  const m = rows.map((row) => [...row]);
  const at = (row: number, column: number) => m[row]?.[column] ?? 0;
  for (let column = 0; column < 8; column += 1) {
    let best = column;
    for (let row = column + 1; row < 8; row += 1)
      if (Math.abs(at(row, column)) > Math.abs(at(best, column))) best = row;
    if (Math.abs(at(best, column)) < 1e-9) return undefined;
    const [pivot, other] = [m[best] ?? [], m[column] ?? []];
    m[column] = pivot;
    m[best] = other;
    for (let row = 0; row < 8; row += 1) {
      if (row === column) continue;
      const by = at(row, column) / at(column, column);
      m[row] = (m[row] ?? []).map((value, nr) => value - by * at(column, nr));
    }
  }
  return m.map((row, nr) => (row[8] ?? 0) / (row[nr] ?? 1));
}
