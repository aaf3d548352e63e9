import { err, ok, type Result } from '@/shared/result/result';

/** A place on a photo in pixels, `y` downwards. */
export type Pixel = { readonly x: number; readonly y: number };

/** A place on the slab's face in millimetres. */
export type Millimetres = { readonly x: number; readonly y: number };

/** One thing seen on the photo whose place on the slab is known. */
export type Mark = { readonly pixel: Pixel; readonly place: Millimetres };

/**
 * ISO 216 for A3 and A4, ANSI/ASME Y14.1 for Letter (8 1/2 × 11 in) and Tabloid (size B, 11 × 17 in); width and height in
 * millimetres.
 */
export const SHEETS = {
  A3: { width: 297, height: 420 },
  A4: { width: 210, height: 297 },
  Letter: { width: 215.9, height: 279.4 },
  Tabloid: { width: 279.4, height: 431.8 },
} as const;

type Corner = 0 | 1 | 2 | 3;

export type CornersRefusal = {
  readonly code: 'bow-tie' | 'corners-in-line' | 'corner-dented' | 'bad-size';
  /** The corner to look at, in the order they were marked. */
  readonly corner: Corner;
  readonly entered: readonly [Pixel, Pixel, Pixel, Pixel];
};

/**
 * The four corners of a rectangle of known size (a sheet, or a frame of two pairs of tapes), marked one after another
 * round it, either way, the first side being its width. A photo of a rectangle is a convex quadrangle: crossed sides are
 * refused as `bow-tie`, three in a line as `corners-in-line`, a corner that points inward as `corner-dented`, and a size
 * that is not above zero as `bad-size`.
 */
export function marksOfSheet(
  corners: readonly [Pixel, Pixel, Pixel, Pixel],
  { width, height }: { readonly width: number; readonly height: number },
): Result<readonly Mark[], CornersRefusal> {
  if (!(width > 0 && height > 0 && Number.isFinite(width * height)))
    return err({ code: 'bad-size', corner: 0, entered: corners });
  const turns = corners.map((at, nr) => {
    const [back, next] = [corners[(nr + 3) % 4] ?? at, corners[(nr + 1) % 4] ?? at];
    const cross = (at.x - back.x) * (next.y - at.y) - (at.y - back.y) * (next.x - at.x);
    const scale = Math.hypot(at.x - back.x, at.y - back.y) * Math.hypot(next.x - at.x, next.y - at.y);
    return scale > 0 && Math.abs(cross) > scale * 1e-3 ? Math.sign(cross) : 0;
  });
  const flat = turns.indexOf(0);
  if (flat >= 0) return err({ code: 'corners-in-line', corner: flat as Corner, entered: corners });
  const right = turns.filter((turn) => turn < 0).length;
  // Two turns each way is a quadrangle whose sides cross; the two corners that turn against the first are swapped.
  if (right === 2)
    return err({ code: 'bow-tie', corner: turns.findIndex((turn) => turn !== turns[0]) as Corner, entered: corners });
  if (right === 1 || right === 3) {
    const odd = turns.indexOf(right === 1 ? -1 : 1);
    return err({ code: 'corner-dented', corner: odd as Corner, entered: corners });
  }
  // On a photo y runs down, on a slab up: seen clockwise on the photo is clockwise on the slab.
  const clockwise = (turns[0] ?? 0) > 0;
  const up = clockwise ? -height : height;
  const places = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: up },
    { x: 0, y: up },
  ] as const;
  return ok(corners.map((pixel, nr) => ({ pixel, place: places[nr] ?? places[0] })));
}

/**
 * The four ends of two tapes laid square across one another. `crossing` is the reading of each tape, in millimetres, where
 * they cross; `ends` are its lowest and highest readings in sight. The first tape gives x, the second y, which grows to the
 * left of the first whichever way the second tape lies, so that nothing comes out mirrored. The crossing must lie between
 * the ends (`bad-size` otherwise, naming the first mark of that tape).
 */
export function marksOfTapes(
  pixels: readonly [Pixel, Pixel, Pixel, Pixel],
  tapes: readonly [Tape, Tape],
): Result<readonly Mark[], CornersRefusal> {
  const [along, across] = tapes;
  const bad = tapes.findIndex(({ ends: [low, high], crossing }) => !(low < crossing && crossing < high));
  if (bad >= 0) return err({ code: 'bad-size', corner: bad === 0 ? 0 : 2, entered: pixels });
  const round = [pixels[0], pixels[2], pixels[1], pixels[3]] as const;
  const shape = marksOfSheet(round, { width: 1, height: 1 });
  if (!shape.ok) {
    const order = [0, 2, 1, 3] as const;
    return err({ ...shape.error, corner: order[shape.error.corner], entered: pixels });
  }
  // Round the four ends the sheet's corners go the way of the tapes: below zero where the second reads to the right.
  const left = (shape.value[3]?.place.y ?? 0) > 0 ? 1 : -1;
  return ok([
    { pixel: pixels[0], place: { x: along.ends[0] - along.crossing, y: 0 } },
    { pixel: pixels[1], place: { x: along.ends[1] - along.crossing, y: 0 } },
    { pixel: pixels[2], place: { x: 0, y: left * (across.ends[0] - across.crossing) } },
    { pixel: pixels[3], place: { x: 0, y: left * (across.ends[1] - across.crossing) } },
  ]);
}

export type Tape = { readonly ends: readonly [number, number]; readonly crossing: number };
