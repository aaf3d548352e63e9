import { isDrawn, type TypedLine } from '@/app/(shop)/pieces/[label]/cut/typed-cut';
import { writePoint } from '@/app/(shop)/pieces/[label]/marks/write-point';
import { fenceLine } from '@/shared/outline/fence-line';
import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import type { Point } from '@/shared/outline/point';
import type { UnitSystem } from '@/shared/units/unit-system';

/** The line with a tap on the drawing taken into it: a distance is set, of a drawn line another point is added. */
export function tapLine(line: TypedLine, at: Point, outline: Outline, prefer: UnitSystem): TypedLine {
  if (isDrawn(line)) {
    const point = writePoint(at, prefer);
    return { ...line, points: line.points.trim() === '' ? point : `${line.points.trimEnd()}\n${point}` };
  }
  return { ...line, distance: written(farOf(line, at, outline), prefer) };
}

function farOf({ way, from }: TypedLine, at: Point, outline: Outline): number {
  const { left, right } = boundsOf(outline.ring);
  if (way === 'cross') return from === 'end' ? right - at.x : at.x - left;
  if (from !== 'left' && from !== 'right') return at.y;
  const [a, b] = fenceLine(outline, from, 0);
  const off = ((b.x - a.x) * (at.y - a.y) - (b.y - a.y) * (at.x - a.x)) / Math.hypot(b.x - a.x, b.y - a.y);
  return from === 'left' ? -off : off;
}

/** One number as `writePoint` writes the two of a point. */
const written = (um: number, prefer: UnitSystem) =>
  writePoint({ x: Math.round(um), y: 0 }, prefer)
    .split(';')[0]
    ?.trim() ?? '';
