import { type Outline, type Ring, ringsOf } from '@/shared/outline/outline';
import { twiceArea } from '@/shared/outline/outline-area';
import { placeInRing } from '@/shared/outline/place-of-point';
import type { Point } from '@/shared/outline/point';
import { twiceRingArea } from '@/shared/outline/ring-area';
import { turn } from '@/shared/outline/turn';
import { err, ok, type Result } from '@/shared/result/result';
import { allocate } from '@/shared/units/allocate';
import { type MinorUnits, minorUnits } from '@/shared/units/minor-units';

/** A piece made by a cut: which side of the line it lies on, its outline, its share of the parent. */
export type CutPiece = {
  readonly side: 'left' | 'right';
  readonly outline: Outline;
  /** Twice the area in µm² that falls to it; these add up to the parent's exactly. */
  readonly twiceArea: number;
  readonly cost: MinorUnits;
};

export type CutRefusal = { readonly code: 'line-has-no-direction' | 'line-misses-the-wood' | 'nothing-to-share' };

/**
 * Cuts a slab along the straight line through two points into its pieces, left of the line first; a fork or a bend may
 * give more than two. Nothing is lost to rounding: the area shares add up to the parent's area and the costs to its cost,
 * to the last unit, by the largest remainder over the areas. New corners are rounded to the micrometre and both sides
 * get the same ones, so drawn pieces meet without a gap. The width of a saw cut is not taken off: that is sawdust, and
 * what is left is measured again. Fails when the two points are one, or the line leaves all the wood on one side.
 */
export function cutOutline(
  parent: Outline,
  line: { readonly from: Point; readonly to: Point },
  cost: MinorUnits,
): Result<readonly CutPiece[], CutRefusal> {
  if (line.from.x === line.to.x && line.from.y === line.to.y) return err({ code: 'line-has-no-direction' });
  const left = piecesLeftOf(parent, line.from, line.to);
  const right = piecesLeftOf(parent, line.to, line.from);
  if (!left.length || !right.length) return err({ code: 'line-misses-the-wood' });
  const cut = [
    ...left.map((outline) => ({ side: 'left' as const, outline })),
    ...right.map((outline) => ({ side: 'right' as const, outline })),
  ];
  const weights = cut.map(({ outline }) => twiceArea(outline));
  const areas = allocate(minorUnits(twiceArea(parent)), weights);
  const costs = allocate(cost, weights);
  if (!areas.ok || !costs.ok) return err({ code: 'nothing-to-share' });
  return ok(
    cut.map((piece, nr) => ({ ...piece, twiceArea: Number(areas.value[nr]), cost: costs.value[nr] ?? minorUnits(0) })),
  );
}

type Node = Point & { next?: Node; readonly along?: number; done?: boolean };

/**
 * Walks the rings on the left of the line; where a ring leaves that side, the walk goes along the line to where the wood
 * is entered again. Crossings sorted along the line bound the wood two by two. A point on the line counts as left of it
 * for both directions being walked, so that a line along an edge cuts nothing off.
 */
function piecesLeftOf(parent: Outline, from: Point, to: Point): readonly Outline[] {
  const forward = from.x < to.x || (from.x === to.x && from.y < to.y);
  const isLeft = (point: Point) => (forward ? turn(from, to, point) >= 0 : turn(from, to, point) > 0);
  const starts: Node[] = [];
  const crossings: { readonly node: Node; readonly leaves: boolean }[] = [];
  for (const ring of ringsOf(parent)) {
    let head: Node | undefined;
    let tail: Node | undefined;
    const add = (node: Node) => {
      if (tail) tail.next = node;
      head ??= node;
      tail = node;
      starts.push(node);
    };
    ring.forEach((a, nr) => {
      const b = ring[(nr + 1) % ring.length] ?? a;
      if (isLeft(a)) add({ x: a.x, y: a.y });
      if (isLeft(a) === isLeft(b)) return;
      const leaves = isLeft(a);
      const node: Node = crossingOf(a, b, from, to);
      crossings.push({ node, leaves });
      if (leaves) {
        add(node);
        tail = undefined;
      } else {
        starts.push(node);
        tail = node;
      }
    });
    // A ring that began on the left in mid-stretch closes onto its first point.
    if (tail) tail.next = head;
  }
  crossings.sort((a, b) => (a.node.along ?? 0) - (b.node.along ?? 0));
  // Where crossings stand at one place, the order that keeps leaving and entering in turn is the true one.
  crossings.forEach((one, nr) => {
    const due = (nr % 2 === 0) === forward;
    const at = one.leaves === due ? -1 : crossings.findIndex((two, later) => later > nr && two.leaves === due);
    const other = crossings[at];
    if (!other || other.node.along !== one.node.along) return;
    crossings[nr] = other;
    crossings[at] = one;
  });
  for (let nr = 0; nr + 1 < crossings.length; nr += 2) {
    const [one, two] = [crossings[nr], crossings[nr + 1]];
    if (!one || !two) continue;
    const [out, back] = one.leaves ? [one, two] : [two, one];
    out.node.next = back.node;
  }
  return gather(starts.flatMap(walk));
}

function crossingOf(a: Point, b: Point, from: Point, to: Point): Node {
  // Taken from the same end whichever side is being walked, so that both sides round to the same corner.
  const [p, q] = a.x < b.x || (a.x === b.x && a.y < b.y) ? [a, b] : [b, a];
  const [u, v] = from.x < to.x || (from.x === to.x && from.y < to.y) ? [from, to] : [to, from];
  const [atP, atQ] = [turn(u, v, p), turn(u, v, q)];
  const part = atP / (atP - atQ);
  const [x, y] = [p.x + (q.x - p.x) * part, p.y + (q.y - p.y) * part];
  return { x: Math.round(x), y: Math.round(y), along: (x - u.x) * (v.x - u.x) + (y - u.y) * (v.y - u.y) };
}

function walk(start: Node): Ring[] {
  const points: Point[] = [];
  for (let node: Node | undefined = start; node && !node.done; node = node.next) {
    node.done = true;
    const last = points.at(-1);
    if (last?.x !== node.x || last.y !== node.y) points.push({ x: node.x, y: node.y });
  }
  const [first, last] = [points[0], points.at(-1)];
  if (points.length > 1 && first?.x === last?.x && first?.y === last?.y) points.pop();
  return points.length > 2 && twiceRingArea(points) !== 0n ? [points] : [];
}

function gather(rings: readonly Ring[]): readonly Outline[] {
  const outer = rings.filter((ring) => twiceRingArea(ring) > 0n);
  const holes = rings.filter((ring) => twiceRingArea(ring) < 0n);
  return outer.map((ring) => ({
    ring,
    holes: holes.filter((hole) => hole[0] !== undefined && placeInRing(ring, hole[0]) === 'inside'),
  }));
}
