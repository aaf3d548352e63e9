import type { Outline } from '@/shared/outline/outline';
import { placesAlong, type RunStretch, stretchesBetween } from '@/shared/outline/wood-runs-at';

/** A usable width and where along the line it is, in micrometres. */
export type WidthAt = { readonly width: number; readonly at: number };

/**
 * The narrowest and the widest usable width between `from` and `to` along the line (the whole slab unless told), where
 * the usable width is the widest unbroken run across at each place. Exact up to the rounding of a double: edges are
 * straight between their points, so it is enough to look where an edge turns, on both sides of a step, and where two runs
 * are equally wide. The first such place along the line is named. Undefined when nothing of the slab lies between.
 */
export function usableWidths(
  outline: Outline,
  { from = -Infinity, to = Infinity }: { readonly from?: number; readonly to?: number } = {},
): { readonly narrowest: WidthAt; readonly widest: WidthAt } | undefined {
  const places = placesAlong(outline);
  const found: WidthAt[] = [];
  for (let nr = 0; nr + 1 < places.length; nr += 1) {
    const [start, end] = [places[nr] ?? 0, places[nr + 1] ?? 0];
    if (end <= from || start >= to) continue;
    const runs = stretchesBetween(outline, start, end);
    const part = (x: number) => (x - start) / (end - start);
    const lo = Math.max(0, part(from));
    const hi = Math.min(1, part(to));
    for (const at of [lo, ...equalParts(runs).filter((one) => one > lo && one < hi), hi]) {
      const width = runs.reduce((widest, run) => Math.max(widest, widthOf(run, at)), 0);
      found.push({ width, at: start + at * (end - start) });
    }
  }
  const [first, ...others] = found;
  if (!first) return undefined;
  return {
    narrowest: others.reduce((best, one) => (one.width < best.width ? one : best), first),
    widest: others.reduce((best, one) => (one.width > best.width ? one : best), first),
  };
}

function widthOf({ start, end }: RunStretch, part: number): number {
  return (start.to - start.from) * (1 - part) + (end.to - end.from) * part;
}

/** Where two runs of one stretch are equally wide, as parts of the stretch. */
function equalParts(runs: readonly RunStretch[]): readonly number[] {
  return runs.flatMap((one, nr) =>
    runs.slice(nr + 1).flatMap((two) => {
      const [atStart, atEnd] = [widthOf(one, 0) - widthOf(two, 0), widthOf(one, 1) - widthOf(two, 1)];
      return atStart * atEnd < 0 ? [atStart / (atStart - atEnd)] : [];
    }),
  );
}
