import { drawnShape, type ShapePart, WHOLE } from '@/shared/fit/drawn-shape';
import type { Placement } from '@/shared/fit/search-places';
import type { HalfSizes } from '@/shared/fit/top-shape';
import { clipWood } from '@/shared/outline/clip-wood';
import { type Outline, type Ring, ringsOf, sidesOf } from '@/shared/outline/outline';
import { outlineArea } from '@/shared/outline/outline-area';
import type { Point } from '@/shared/outline/point';
import { distanceToSegment } from '@/shared/outline/segment-distance';

/** Where one piece lies on its slab: its back is held `leastWood` in from the edge of the top. */
export type RiverPiece = { readonly slab: 0 | 1; readonly part: ShapePart; readonly placement: Placement };

/** A river as the outlines of both slabs leave it in the finished top. */
export type RiverVoid = {
  /** The edge of the top about its middle, the first piece above; whole micrometres. */
  readonly top: Ring;
  /** What each piece gives to the top. */
  readonly woods: readonly [Outline, Outline];
  /** What is to be filled, gaps through the wood with it; square millimetres. */
  readonly area: number;
  /** How much edge of each piece meets the resin, millimetres. */
  readonly banks: readonly [number, number];
};

/** A corner that clipping made is rounded to the micrometre, so a side of the top may be off by so much. */
const ON_THE_EDGE = 2;

/**
 * The river by the exact outlines: the top less the wood that each slab leaves in it when it is held where its piece was
 * found. Wood of a slab that comes back into the top somewhere else would fall off when the edge is sawn, so only what
 * hangs together with the back counts. Curved edges of the top are as `drawnShape` has them, at most 20 µm inside. Two
 * boards of 2000 × 250 mm held 200 mm into a top of 1500 × 600 mm leave 1500 × 200 mm and two banks of 1500 mm.
 */
export function riverVoid(
  slabs: readonly [Outline] | readonly [Outline, Outline],
  sizes: HalfSizes,
  pieces: readonly [RiverPiece, RiverPiece],
): RiverVoid {
  const top = whole(drawnShape(sizes, WHOLE, { x: 0, y: 0, angle: 0 }));
  const woodOf = (nr: 0 | 1): Outline => {
    const { slab, part, placement } = pieces[nr];
    const { ring, holes } = slabs[slab] ?? slabs[0];
    const lay = (line: Ring) => whole(line.map((point) => inTop(point, part, placement, nr === 1)));
    const parts = clipWood({ ring: lay(ring), holes: holes.map(lay) }, [top], 'inside');
    return withBack(parts, part.part === 'above' ? part.from : 0, sizes, nr === 1);
  };
  const woods = [woodOf(0), woodOf(1)] as const;
  const [one, two] = woods;
  const shared = clipWood(one, ringsOf(two), 'inside').reduce((sum, each) => sum + outlineArea(each), 0);
  const area = outlineArea({ ring: top, holes: [] }) - outlineArea(one) - outlineArea(two) + shared;
  return { top, woods, area, banks: [bankOf(one, top), bankOf(two, top)] };
}

/** A point of a slab as the finished top has it: the first piece above its middle, the second turned half round below. */
function inTop(point: Point, part: ShapePart, { x, y, angle }: Placement, isSecond: boolean): Point {
  const [from, over] = part.part === 'above' ? [part.from, part.over] : [0, false];
  const turned = angle + (over ? Math.PI : 0);
  const [dx, dy] = [point.x - x, point.y - y];
  const along = dx * Math.cos(turned) + dy * Math.sin(turned);
  const across = dy * Math.cos(turned) - dx * Math.sin(turned) + from;
  const side = isSecond ? -1 : 1;
  return { x: side * along, y: side * across };
}

const whole = (ring: readonly Point[]): Ring =>
  ring.map(({ x, y }) => ({ x: Math.round(x) + 0, y: Math.round(y) + 0 }));

/** Of the parts of a slab that lie in the top, the one that its back belongs to. */
function withBack(parts: readonly Outline[], from: number, { a, b }: HalfSizes, isSecond: boolean): Outline {
  const [only] = parts;
  if (!only) return { ring: [], holes: [] };
  if (parts.length === 1) return only;
  const corners = [
    { x: -a, y: from },
    { x: a, y: from },
    { x: a, y: b },
    { x: -a, y: b },
  ];
  const back = whole(corners.map(({ x, y }) => (isSecond ? { x: -x, y: -y } : { x, y })));
  const inBack = (part: Outline) => clipWood(part, [back], 'inside').reduce((sum, each) => sum + outlineArea(each), 0);
  return parts.reduce((most, part) => (inBack(part) > inBack(most) ? part : most), only);
}

/** The length of what bounds the wood inside the top, not along its edge. */
function bankOf(wood: Outline, top: Ring): number {
  const edge = sidesOf(top);
  const isEdge = (place: Point) => edge.some(([a, b]) => distanceToSegment(place, a, b) <= ON_THE_EDGE);
  const sides = ringsOf(wood).flatMap(sidesOf);
  const bank = sides.reduce((sum, [a, b]) => {
    const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
    return isEdge(middle) ? sum : sum + Math.hypot(b.x - a.x, b.y - a.y);
  }, 0);
  return bank / 1000;
}
