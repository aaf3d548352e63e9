import type { Outline } from '@/shared/outline/outline';
import { placeOfPoint } from '@/shared/outline/place-of-point';
import type { Point } from '@/shared/outline/point';
import { placesAlong, stretchesBetween } from '@/shared/outline/wood-runs-at';

/**
 * A place well inside the wood, in whole micrometres: the middle of the widest run across, half way between two turns of
 * an edge, the nearest to half its length of those at least two thirds as wide as the widest. A slab of 2000 × 500 mm from
 * the start of its line has its place at (1 000 000, 0). Where to number it, and a place to know it by.
 */
export function placeInside(outline: Outline): Point {
  const places = placesAlong(outline);
  const middle = ((places[0] ?? 0) + (places.at(-1) ?? 0)) / 2;
  const runs = places.slice(1).flatMap((end, nr) => {
    const start = places[nr] ?? 0;
    const x = Math.round(start < middle && middle < end ? middle : (start + end) / 2);
    const part = (x - start) / (end - start || 1);
    return stretchesBetween(outline, start, end).map((run) => {
      const low = run.start.from + (run.end.from - run.start.from) * part;
      const high = run.start.to + (run.end.to - run.start.to) * part;
      return { at: { x, y: Math.round((low + high) / 2) + 0 }, wide: high - low };
    });
  });
  const inside = runs.filter(({ at }) => placeOfPoint(outline, at) === 'inside');
  const widest = Math.max(0, ...inside.map(({ wide }) => wide));
  const good = inside.filter(({ wide }) => wide * 3 >= widest * 2);
  const [best] = good.sort((a, b) => Math.abs(a.at.x - middle) - Math.abs(b.at.x - middle) || b.wide - a.wide);
  return best?.at ?? outline.ring[0] ?? { x: 0, y: 0 };
}
