/** The rough shape of a slab or board: its length, three widths, and which long edges still carry their bark. Millimetres. */
export interface RoughShape {
  lengthMm: number;
  widthsMm: { start: number; middle: number; end: number };
  liveEdges: { left: boolean; right: boolean };
}

export interface Point {
  x: number;
  y: number;
}

export interface PieceOutline {
  /** The left edge from start to end, above the middle line; the right edge likewise below it. */
  left: readonly Point[];
  right: readonly Point[];
  widestMm: number;
}

const STEPS = 48;

/** Width at `t` (0 start, 1 end) of the smooth curve through the three measured widths. */
function widthAt({ start, middle, end }: RoughShape['widthsMm'], t: number): number {
  return start * (1 - t) * (1 - 2 * t) + middle * 4 * t * (1 - t) + end * t * (2 * t - 1);
}

/** A steady number from 0 to 1 for a name, so that a piece looks the same each time it is drawn. */
function steady(name: string, salt: number): number {
  let mixed = 2166136261 ^ salt;
  for (let index = 0; index < name.length; index += 1) mixed = Math.imul(mixed ^ name.charCodeAt(index), 16777619);
  mixed = Math.imul(mixed ^ (mixed >>> 15), 2246822519);
  return ((mixed ^ (mixed >>> 13)) >>> 0) / 4294967296;
}

/**
 * The outline of a piece lying along x, its middle line at y 0. A live edge waves a little between the measured places
 * and is true at each of them; a sawn edge is the plain curve. `name` steadies the wave.
 */
export function pieceOutline(shape: RoughShape, name: string): PieceOutline {
  const mean = (shape.widthsMm.start + shape.widthsMm.middle + shape.widthsMm.end) / 3;
  const edge = (side: -1 | 1, live: boolean): Point[] => {
    const phase = [1, 2, 3].map((salt) => steady(name, salt * side) * Math.PI * 2);
    return Array.from({ length: STEPS + 1 }, (_, index) => {
      const t = index / STEPS;
      const wave = phase.reduce(
        (sum, start, k) => sum + Math.sin(t * Math.PI * 2 * (k * 1.3 + 0.7) + start) / (k + 1),
        0,
      );
      const lean = live ? wave * mean * 0.04 * Math.sin(2 * Math.PI * t) ** 2 : 0;
      return { x: t * shape.lengthMm, y: side * (Math.max(0, widthAt(shape.widthsMm, t)) / 2) + lean };
    });
  };
  const left = edge(-1, shape.liveEdges.left);
  const right = edge(1, shape.liveEdges.right);
  const widest = Math.max(...left.map(({ y }) => -y), ...right.map(({ y }) => y)) * 2;
  return { left, right, widestMm: widest };
}

/** The points of a line part of the way across the piece: 0 is the left edge, 1 the right. */
export function lineAcross({ left, right }: PieceOutline, across: number): Point[] {
  return left.map((point, index) => {
    const other = right[index] ?? point;
    return { x: point.x, y: point.y + (other.y - point.y) * across };
  });
}

/** Points as the rest of an SVG path, after its `M`: `joinPoints([{ x: 0, y: 1 }, { x: 2, y: 3 }])` is `0.0 1.0L2.0 3.0`. */
export function joinPoints(points: readonly Point[]): string {
  return points.map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L');
}
