import { Clipper, EndType, JoinType } from 'clipper2-ts';
import { clipWood } from '@/shared/outline/clip-wood';
import { boxAround, type CutLine, type LineFault, runThrough } from '@/shared/outline/cut-line';
import { type Outline, type Ring, sidesOf } from '@/shared/outline/outline';
import { twiceArea } from '@/shared/outline/outline-area';
import { type Bounds, boundsOf } from '@/shared/outline/outline-bounds';
import { placeOfPoint } from '@/shared/outline/place-of-point';
import type { Point } from '@/shared/outline/point';
import { err, ok, type Result } from '@/shared/result/result';

/** What was wrong and with which line, counted from 0. */
export type CutFault = {
  readonly code: LineFault | 'line-misses-the-wood' | 'nothing-is-left';
  readonly line: number;
};

/** A bit of wood smaller than this goes with the sawdust: a square centimetre, twice, in µm². Common practice. */
const TWICE_A_CHIP = 200_000_000;

/**
 * Cuts a slab along lines, one after the other, into its pieces: from the start of the chalk line on, of those that begin
 * at one place the left first. Every line is drawn out until it is through. A saw takes its kerf, half to either side,
 * ends square and corners mitred; a break (kerf 0) takes nothing. Bits below a square centimetre are dropped. Pieces
 * stay where they are in the slab. Fails naming the line that has no direction, meets itself or takes no wood, and where
 * nothing is left. A slab of 2000 × 500 mm with a kerf of 4 mm at 800 mm gives 798 and 1198 mm.
 */
export function cutWood(slab: Outline, lines: readonly CutLine[]): Result<readonly Outline[], CutFault> {
  let parts: readonly Outline[] = [slab];
  for (const [nr, line] of lines.entries()) {
    const box = boxAround(boundsOf(slab.ring), line.points);
    const through = runThrough(line.points, box);
    if (typeof through === 'string') return err({ code: through, line: nr });
    const { within } = line;
    const after = parts.flatMap((part) =>
      within && placeOfPoint(part, within) !== 'inside' ? [part] : divide(part, through, line.kerf, box),
    );
    if (after.length === parts.length && areaOf(after) === areaOf(parts)) {
      return err({ code: 'line-misses-the-wood', line: nr });
    }
    parts = after;
  }
  const kept = parts.filter((part) => twiceArea(part) >= TWICE_A_CHIP);
  if (kept.length === 0) return err({ code: 'nothing-is-left', line: Math.max(0, lines.length - 1) });
  return ok(kept.toSorted(inOrder));
}

function divide(part: Outline, through: readonly Point[], kerf: number, box: Bounds): readonly Outline[] {
  if (kerf > 0) {
    const taken = kerfRings(through, kerf);
    return clipWood(part, taken, 'outside').map((each) => squared(each, taken));
  }
  const left = leftOf(through, box);
  const [one, two] = (['inside', 'outside'] as const).map((side) =>
    clipWood(part, [left], side).map((each) => squared(each, [left])),
  );
  if (!one || !two) return [part];
  // A break along the edge, or beside the wood, leaves it as it is: to the last corner.
  return one.length && two.length ? [...one, ...two] : [part];
}

/**
 * A piece with its new corners on the cut, where that runs square across or along: the nearest whole place on a slanting
 * edge may be a micrometre beside it, and a length of 800 mm is to read as 800 mm.
 */
function squared({ ring, holes }: Outline, cut: readonly Ring[]): Outline {
  const sides = cut.flatMap(sidesOf);
  const xs = sides.flatMap(([a, b]) => (a.x === b.x ? [a.x] : []));
  const ys = sides.flatMap(([a, b]) => (a.y === b.y ? [a.y] : []));
  const nearest = (at: number, places: readonly number[]) => places.find((place) => Math.abs(place - at) <= 1) ?? at;
  const square = (points: Ring) => points.map(({ x, y }) => ({ x: nearest(x, xs), y: nearest(y, ys) }));
  return { ring: square(ring), holes: holes.map(square) };
}

/** What the saw takes on its way through, as closed lines. */
function kerfRings(through: readonly Point[], kerf: number): readonly Ring[] {
  return Clipper.inflatePaths([through.map(({ x, y }) => ({ x, y }))], kerf / 2, JoinType.Miter, EndType.Butt, 4);
}

/** The part of the box to the left of a line from edge to edge of it. */
function leftOf(line: readonly Point[], { left, right, bottom, top }: Bounds): Ring {
  const [wide, high] = [right - left, top - bottom];
  const around = 2 * (wide + high);
  const place = ({ x, y }: Point) => {
    if (y === bottom) return x - left;
    if (x === right) return wide + y - bottom;
    return y === top ? wide + high + right - x : around - (y - bottom);
  };
  const [first, last] = [line[0], line.at(-1)];
  if (!first || !last) return [];
  const from = place(last);
  const ahead = (to: number) => (to - from + around) % around;
  const corners = [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ].filter((corner) => ahead(place(corner)) > 0 && ahead(place(corner)) < ahead(place(first)));
  return [...line, ...corners.toSorted((a, b) => ahead(place(a)) - ahead(place(b)))];
}

const areaOf = (parts: readonly Outline[]) => parts.reduce((sum, part) => sum + twiceArea(part), 0);

function inOrder(one: Outline, two: Outline): number {
  const [a, b] = [boundsOf(one.ring), boundsOf(two.ring)];
  return a.left - b.left || b.top - a.top || a.right - b.right || a.bottom - b.bottom;
}
