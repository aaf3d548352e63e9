import { type Outline, ringsOf, sidesOf } from '@/shared/outline/outline';

/** An unbroken stretch of wood across the slab, from the lower `y` to the upper, in micrometres. */
export type WoodRun = { readonly from: number; readonly to: number };

/** A run over a stretch of the line on which both its edges are straight. */
export type RunStretch = { readonly start: WoodRun; readonly end: WoodRun };

/**
 * The runs of wood across the slab at `x` micrometres along the line, from right to left. Where a step or a vertical end
 * stands at `x`, the wood just after it counts (just before it at the far end), so a step has one answer. None outside.
 * A slab forked by a crotch has two runs there.
 */
export function woodRunsAt(outline: Outline, x: number): readonly WoodRun[] {
  const places = placesAlong(outline);
  const next = places.find((place) => place > x);
  const [first, last] = [places[0], places.at(-1)];
  if (first === undefined || last === undefined || x < first || x > last) return [];
  const back = places.filter((place) => place <= x && place < last).at(-1) ?? first;
  return stretchesBetween(outline, back, next ?? last).map(({ start, end }) =>
    between(start, end, (x - back) / ((next ?? last) - back)),
  );
}

/** Every distance along the line at which an edge turns, in order, each once. */
export function placesAlong(outline: Outline): readonly number[] {
  return [...new Set(ringsOf(outline).flatMap((ring) => ring.map(({ x }) => x)))].sort((a, b) => a - b);
}

/** The runs between two neighbours of `placesAlong`, from right to left; no edge turns between them. */
export function stretchesBetween(outline: Outline, from: number, to: number): readonly RunStretch[] {
  const heights = ringsOf(outline)
    .flatMap(sidesOf)
    .filter(([a, b]) => Math.min(a.x, b.x) <= from && Math.max(a.x, b.x) >= to && a.x !== b.x)
    .map(([a, b]) => {
      const at = (x: number) => a.y + ((x - a.x) / (b.x - a.x)) * (b.y - a.y);
      return { start: at(from), end: at(to) };
    })
    .sort((one, two) => one.start + one.end - two.start - two.end);
  const stretches: RunStretch[] = [];
  for (let nr = 0; nr + 1 < heights.length; nr += 2) {
    const [low, high] = [heights[nr], heights[nr + 1]];
    if (low && high)
      stretches.push({ start: { from: low.start, to: high.start }, end: { from: low.end, to: high.end } });
  }
  return stretches;
}

function between(a: WoodRun, b: WoodRun, part: number): WoodRun {
  return { from: a.from + (b.from - a.from) * part, to: a.to + (b.to - a.to) * part };
}
