import type { DefectPlace } from '@/shared/outline/defect';
import { type Outline, type Ring, ringsOf } from '@/shared/outline/outline';
import type { Point } from '@/shared/outline/point';

/** A length of the drawing in millimetres, one decimal: micrometres are finer than any screen. */
const mm = (micrometres: number) => Math.round(micrometres / 100) / 10;

/** A point in SVG's own way round: millimetres, y downwards, so that left of the chalk line is up. */
export const inSvg = ({ x, y }: Point) => ({ x: mm(x), y: mm(-y) + 0 });

/** A closed line as the data of an SVG path. `[(0,0) (1000,0) (0,2000)]` in micrometres is `M0 0L1 0L0 -2Z`. */
export function ringPath(ring: Ring): string {
  return `M${ring.map((point) => pair(inSvg(point))).join('L')}Z`;
}

/** A line through points that stays open. */
export function openPath(points: readonly Point[]): string {
  return points.length ? `M${points.map((point) => pair(inSvg(point))).join('L')}` : '';
}

/** Every line of an outline in one path; the gaps run the other way and stay open with the even-odd rule. */
export function outlinePath(outline: Outline): string {
  return ringsOf(outline).map(ringPath).join('');
}

export function linePath(from: Point, to: Point): string {
  return `M${pair(inSvg(from))}L${pair(inSvg(to))}`;
}

/** The path of a defect's place, a circle as two arcs. */
export function placePath(place: DefectPlace): string {
  if (place.shape === 'polygon') return ringPath(place.ring);
  const { x, y } = inSvg(place.centre);
  const r = mm(place.radius);
  return `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
}

const pair = ({ x, y }: { x: number; y: number }) => `${x} ${y}`;
