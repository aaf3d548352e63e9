import { checkDefect } from '@/shared/outline/check-defect';
import { clipWood } from '@/shared/outline/clip-wood';
import type { DefectKind, DefectPlace } from '@/shared/outline/defect';
import { type Outline, type Ring, ringsOf, sidesOf } from '@/shared/outline/outline';
import { twiceArea } from '@/shared/outline/outline-area';
import { boundsOf } from '@/shared/outline/outline-bounds';
import type { NewMark, PieceMarks, Strap } from '@/shared/outline/piece-marks';
import { placeOfPoint } from '@/shared/outline/place-of-point';
import type { Point } from '@/shared/outline/point';
import { turn } from '@/shared/outline/turn';
import { nanometres } from '@/shared/units/nanometres';

/** What the cut took of a mark is not told from rounding below this, twice µm²: a square millimetre. */
const SAME = 2_000_000;
/** Less of a mark than this is not carried over, twice µm²: a quarter of a square centimetre. */
const LEAST = 50_000_000;
/** Of a crack so much is still one, however fine it is, micrometres. */
const SHORTEST_CRACK = 5_000;
const CRACKS: readonly DefectKind[] = ['check', 'split', 'shake', 'break'];
/** A band on less wood than this holds nothing, micrometres. */
const SHORTEST = 10_000;
const CORNERS = 48;

/**
 * The marks of a slab that lie on a piece cut from it, clipped to the piece: a defect the cut ran through becomes the part
 * of it that is left, checks run in from an end as far as they still do, a band lies across what it still lies across.
 * Places stay those of the slab, micrometres. A knot of which less than a quarter of a square centimetre is left is gone;
 * of a crack whatever still runs five millimetres is there.
 */
export function marksOfPart(marks: PieceMarks, slab: Outline, part: Outline): NewMark[] {
  const whole = boundsOf(slab.ring);
  const here = boundsOf(part.ring);
  const defects = marks.defects.flatMap(({ id: _, ...defect }) =>
    placesOn(defect, slab, part)
      .map((place) => ({ is: 'defect' as const, ...defect, place }))
      .filter((mark) => checkDefect(part, mark).ok),
  );
  const endChecks = marks.endChecks.flatMap(({ end, depth, note }): NewMark[] => {
    const cutOff = end === 'start' ? here.left - whole.left : whole.right - here.right;
    const left = Math.min(depth - cutOff * 1000, (here.right - here.left) * 1000 - 1000);
    return left > 0 ? [{ is: 'end-check', end, depth: nanometres(left), note }] : [];
  });
  const straps = marks.straps.flatMap(({ id: _, note, ...strap }): NewMark[] => {
    const across = strapOn(strap, part);
    return across ? [{ is: 'strap', note, ...across }] : [];
  });
  return [...defects, ...endChecks, ...straps];
}

function placesOn(
  { place, kind }: { readonly place: DefectPlace; readonly kind: DefectKind },
  slab: Outline,
  part: Outline,
): DefectPlace[] {
  const ring = place.shape === 'circle' ? ringRound(place.centre, place.radius) : place.ring;
  const [before, after] = [clipWood(slab, [ring], 'inside'), clipWood(part, [ring], 'inside')];
  const area = (parts: readonly Outline[]) => parts.reduce((sum, each) => sum + twiceArea(each), 0);
  if (area(before) > 0 && area(before) - area(after) <= SAME) return [place];
  const isCrack = CRACKS.includes(kind);
  const stays = (each: Outline) => twiceArea(each) >= LEAST || (isCrack && extentOf(each.ring) >= SHORTEST_CRACK);
  return after.filter(stays).map((each) => ({ shape: 'polygon', ring: each.ring }));
}

function extentOf(ring: Ring): number {
  const { left, right, bottom, top } = boundsOf(ring);
  return Math.hypot(right - left, top - bottom);
}

function ringRound({ x, y }: Point, radius: number): Ring {
  return Array.from({ length: CORNERS }, (_, nr) => {
    const angle = (2 * Math.PI * nr) / CORNERS;
    return { x: Math.round(x + radius * Math.cos(angle)), y: Math.round(y + radius * Math.sin(angle)) };
  });
}

/** From where the band first lies on the piece to where it last does. */
function strapOn({ from, to }: Strap, part: Outline): Strap | undefined {
  const at = (along: number) => ({ x: from.x + (to.x - from.x) * along, y: from.y + (to.y - from.y) * along });
  const crossings = ringsOf(part)
    .flatMap(sidesOf)
    .flatMap(([a, b]) => {
      const [one, two] = [turn(from, to, a), turn(from, to, b)];
      if (one === two || one > 0 === two > 0) return [];
      const [start, end] = [turn(a, b, from), turn(a, b, to)];
      return start === end ? [] : [start / (start - end)];
    });
  const places = [0, ...crossings.filter((along) => along > 0 && along < 1), 1].toSorted((a, b) => a - b);
  const on = places.slice(1).flatMap((end, nr) => {
    const start = places[nr] ?? 0;
    return placeOfPoint(part, at((start + end) / 2)) === 'inside' ? [start, end] : [];
  });
  if (on.length === 0) return undefined;
  const [one, two] = [at(Math.min(...on)), at(Math.max(...on))].map(({ x, y }) => ({
    x: Math.round(x) + 0,
    y: Math.round(y) + 0,
  }));
  if (!one || !two || Math.hypot(two.x - one.x, two.y - one.y) < SHORTEST) return undefined;
  return { from: one, to: two };
}
