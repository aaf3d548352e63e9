import { areaBefore } from '@/shared/fit/area-before';
import type { SlabToSearch } from '@/shared/fit/fit-request';
import type { Placement } from '@/shared/fit/search-places';
import { topArea } from '@/shared/fit/top-area';
import type { HalfSizes } from '@/shared/fit/top-shape';
import { outlineArea } from '@/shared/outline/outline-area';
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

/** What each part counts for. Common practice: first keep a usable offcut, then the figure, then the run of the grain. */
const SCORE_WEIGHTS = { offcut: 0.5, figure: 0.4, straight: 0.1 } as const;

/**
 * A function that scores places of one top on one slab. The wood left over is the same wherever the top lies; what
 * differs is how much of it stays together, so the larger of the two ends, sawn square off the line beyond the top,
 * is counted against all that is left. The figure is judged by how far its line passes from the top's middle line at both
 * ends, on average. `count` is how many pieces of this size the top takes (2 for a pair).
 */
export function scorer(slab: SlabToSearch, sizes: HalfSizes, window: number, pieceArea = topArea(sizes)) {
  const whole = outlineArea(slab.outline) * 1e6;
  const areaUpTo = areaBefore(slab.outline);
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
      const offcut = left > 0 ? Math.min(1, offcutArea / left) : 1;
      const centred = Math.max(0, 1 - off / sizes.b);
      const straight = window > 0 ? 1 - Math.abs(angle) / window : 1;
      const score = SCORE_WEIGHTS.offcut * offcut + SCORE_WEIGHTS.figure * centred + SCORE_WEIGHTS.straight * straight;
      return { score, offcut, figure: centred, straight, offcutArea: offcutArea / 1e6, wasteArea: left / 1e6 };
    },
  };
}
