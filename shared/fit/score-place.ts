import { areaBefore } from '@/shared/fit/area-before';
import type { SlabToSearch } from '@/shared/fit/fit-request';
import type { Placement } from '@/shared/fit/search-places';
import { topArea } from '@/shared/fit/top-area';
import type { HalfSizes } from '@/shared/fit/top-shape';
import { outlineArea } from '@/shared/outline/outline-area';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { outlineCentroid } from '@/shared/outline/outline-centroid';

/** How good a place is, each part from 0 to 1, and the areas behind it in square millimetres. */
export type PlaceScore = {
  readonly score: number;
  /** The part of what is left over that stays in one piece at one end. */
  readonly offcut: number;
  /** 1 with the figure down the middle of the top, 0 where it is half the width off. */
  readonly figure: number;
  /** 1 with the grain along the length, 0 at the edge of the window. */
  readonly straight: number;
  readonly offcutArea: number;
  readonly wasteArea: number;
};

/** What a maker picks the best place by. */
export type BestBy = 'balanced' | 'waste' | 'offcut' | 'figure';

/**
 * What each part counts for. Balanced, common practice: first keep a usable offcut, then the figure, then the run of the
 * grain. By waste both ends left over count, by offcut only the larger one, by figure how near the middle it runs.
 */
const SCORE_WEIGHTS: Readonly<
  Record<BestBy, { readonly offcut: number; readonly figure: number; readonly straight: number }>
> = {
  balanced: { offcut: 0.5, figure: 0.4, straight: 0.1 },
  waste: { offcut: 0.9, figure: 0.05, straight: 0.05 },
  offcut: { offcut: 0.9, figure: 0.05, straight: 0.05 },
  figure: { offcut: 0.05, figure: 0.9, straight: 0.05 },
};

/** An end shorter than this is no offcut but waste: 300 mm, in micrometres. Common practice. */
const LEAST_OFFCUT = 300_000;

/**
 * A function that scores places of one top on one slab. The wood left over is the same wherever the top lies; what
 * differs is how much of it stays together, so the larger of the two ends, sawn square off the line beyond the top,
 * is counted against all that is left. The figure is judged by how far its line passes from the top's middle line at both
 * ends, on average. `count` is how many pieces of this size the top takes (2 for a pair).
 */
export function scorer(
  slab: SlabToSearch,
  sizes: HalfSizes,
  window: number,
  { pieceArea = topArea(sizes), best = 'balanced' }: { readonly pieceArea?: number; readonly best?: BestBy } = {},
) {
  const whole = outlineArea(slab.outline) * 1e6;
  const areaUpTo = areaBefore(slab.outline);
  const { left: start, right: end } = boundsOf(slab.outline.ring);
  const weights = SCORE_WEIGHTS[best];
  const middle = outlineCentroid(slab.outline);
  const figure = slab.figure ?? { from: middle, to: { x: middle.x + 1000, y: middle.y } };
  const [fx, fy] = [figure.to.x - figure.from.x, figure.to.y - figure.from.y];
  const figureLength = Math.hypot(fx, fy) || 1;
  const left = Math.max(0, whole - pieceArea);
  const offFigure = (x: number, y: number) => ((x - figure.from.x) * fy - (y - figure.from.y) * fx) / figureLength;
  const half = (angle: number) => {
    const [c, s] = [Math.abs(Math.cos(angle)), Math.abs(Math.sin(angle))];
    if (sizes.curve === 'corners') return (sizes.a - sizes.r) * c + (sizes.b - sizes.r) * s + sizes.r;
    const q = sizes.n / (sizes.n - 1);
    return ((sizes.a * c) ** q + (sizes.b * s) ** q) ** (1 / q);
  };
  return {
    /** How far the figure passes to one side of a place, with sign, in micrometres. */
    offFigure,
    score: ({ x, y, angle }: Placement): PlaceScore => {
      const reach = half(angle);
      const before = areaUpTo(x - reach);
      const after = whole - areaUpTo(x + reach);
      const offcutArea = Math.max(before, after);
      const [ax, ay] = [sizes.a * Math.cos(angle), sizes.a * Math.sin(angle)];
      const off = (Math.abs(offFigure(x + ax, y + ay)) + Math.abs(offFigure(x - ax, y - ay))) / 2;
      const ends = [
        x - reach - start >= LEAST_OFFCUT ? before : 0,
        end - x - reach >= LEAST_OFFCUT ? after : 0,
      ] as const;
      const kept = best === 'waste' ? ends[0] + ends[1] : offcutArea;
      const offcut = left > 0 ? Math.min(1, kept / left) : 1;
      const centred = Math.max(0, 1 - off / sizes.b);
      const straight = window > 0 ? 1 - Math.abs(angle) / window : 1;
      const score = weights.offcut * offcut + weights.figure * centred + weights.straight * straight;
      return { score, offcut, figure: centred, straight, offcutArea: offcutArea / 1e6, wasteArea: left / 1e6 };
    },
  };
}
