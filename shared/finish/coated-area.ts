import { topArea } from '@/shared/fit/top-area';
import { type HalfSizes, halfSizes, type TopShape } from '@/shared/fit/top-shape';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';

/** A part of a job as far as its surface goes. `shape` is empty where it is no top: it is then taken for a board. */
export type CoatedPart = {
  readonly shape: '' | 'rectangle' | 'round' | 'oval' | 'superellipse';
  readonly count: number;
  readonly length: Nanometres | null;
  readonly width: Nanometres | null;
  readonly thickness: Nanometres | null;
};

/** A squarer oval as the workshop draws it, where no exponent was said. */
const SUPERELLIPSE = 2.5;

/**
 * The surface of a part, square millimetres: one face or both of each, and its edges where the thickness is known.
 * Undefined where a length it needs is missing or cannot be. A round of 1 m and 40 mm, both faces: 2 × π/4 m² and π m of
 * edge, 1.6965 m².
 */
export function coatedArea(part: CoatedPart, faces: 1 | 2): number | undefined {
  const shape = shapeOf(part);
  const sizes = shape && halfSizes(shape);
  if (!sizes?.ok) return undefined;
  const face = topArea(sizes.value) / 1e6;
  const edge = part.thickness === null ? 0 : (perimeter(sizes.value) / 1e3) * (part.thickness / 1e6);
  return part.count * (faces * face + edge);
}

function shapeOf({ shape, length, width }: CoatedPart): TopShape | undefined {
  if (length === null) return undefined;
  if (shape === 'round') return { kind: 'round', diameter: length };
  if (width === null) return undefined;
  if (shape === 'oval') return { kind: 'oval', length, width };
  if (shape === 'superellipse') return { kind: 'superellipse', length, width, exponent: SUPERELLIPSE };
  return { kind: 'rectangle', length, width, cornerRadius: nanometres(0) };
}

/** Round the edge, micrometres: exact for a rectangle, along many short chords for a curve. */
function perimeter(sizes: HalfSizes): number {
  if (sizes.curve === 'corners') return 4 * (sizes.a + sizes.b) - (8 - 2 * Math.PI) * sizes.r;
  const { a, b, n } = sizes;
  const power = (value: number) => Math.sign(value) * Math.abs(value) ** (2 / n);
  const at = (nr: number) => {
    const angle = (nr / CHORDS) * 2 * Math.PI;
    return [a * power(Math.cos(angle)), b * power(Math.sin(angle))] as const;
  };
  let length = 0;
  for (let nr = 0; nr < CHORDS; nr += 1) {
    const [x, y] = at(nr);
    const [nextX, nextY] = at(nr + 1);
    length += Math.hypot(nextX - x, nextY - y);
  }
  return length;
}

const CHORDS = 4096;
