import type { JudgedPiece } from '@/app/_server/fits/what-fits';
import { isStraight } from '@/app/(shop)/on-hand/fits/is-straight';
import { leastMissing } from '@/app/(shop)/on-hand/fits/say-fit';
import { drawnShape, WHOLE } from '@/shared/fit/drawn-shape';
import type { HalfSizes } from '@/shared/fit/top-shape';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { woodRunsAt } from '@/shared/outline/wood-runs-at';

type At = { readonly x: number; readonly y: number };

/** A drawing of one piece and the top on it, in millimetres, x along the piece and y down the page. */
export type FitView = {
  readonly wood: readonly At[];
  /** The long edges, each from start to end, the left one first; the left lies up the page. */
  readonly edges: readonly [readonly At[], readonly At[]];
  readonly top: readonly At[];
  /** Solid: it fits. Dashed: it fits, with a condition. Dotted: it does not. */
  readonly line: 'solid' | 'dashed' | 'dotted';
  /** Where the wood is too narrow: the places on its two edges; none on a straight board. */
  readonly tight: readonly At[];
  /** Around wood and top. */
  readonly box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  /** Around the top alone. */
  readonly topBox: { readonly x: number; readonly width: number; readonly height: number };
};

const MOST_POINTS = 180;

/**
 * Draws what was judged: the very outline that was searched, the top at its best place, or, where it nearly fits, the
 * whole top asked for where the smaller one would lie. Undefined for a no, which has no place.
 */
export function fitView(
  { outline, judged: { fit }, conditions }: Pick<JudgedPiece, 'outline' | 'judged' | 'conditions'>,
  sizes: HalfSizes,
): FitView | undefined {
  if (fit.answer === 'no') return undefined;
  const least = fit.answer === 'nearly' ? leastMissing(fit.missing) : undefined;
  const place = fit.answer === 'yes' ? fit.place : least?.top.found;
  if (!place) return undefined;
  const wood = outline.ring.map(onPage);
  const top = thinned(drawnShape(sizes, WHOLE, place.placement)).map(onPage);
  const bounds = boundsOf(outline.ring);
  const at = least?.lacks === 'width' && !isStraight(outline) ? bounds.left + least.top.at / 1000 : undefined;
  const run = at === undefined ? undefined : woodRunsAt(outline, at)[0];
  return {
    wood,
    edges: [edgeOf(outline.ring, 1), edgeOf(outline.ring, -1)],
    top,
    line: fit.answer === 'nearly' ? 'dotted' : conditions.length > 0 ? 'dashed' : 'solid',
    tight: run && at !== undefined ? [run.to, run.from].map((y) => onPage({ x: at, y })) : [],
    box: boxOf([...wood, ...top]),
    topBox: boxOf(top),
  };
}

function onPage({ x, y }: At): At {
  return { x: x / 1000, y: -y / 1000 };
}

function edgeOf(ring: readonly At[], side: 1 | -1): readonly At[] {
  return ring
    .filter(({ y }) => y * side > 0)
    .sort((a, b) => a.x - b.x)
    .map(onPage);
}

/** Fewer points of a curve, none of a shape with corners: a screen shows no more. */
function thinned(points: readonly At[]): readonly At[] {
  const every = Math.ceil(points.length / MOST_POINTS);
  return points.filter((_, nr) => nr % every === 0);
}

function boxOf(points: readonly At[]) {
  const { left, right, bottom, top } = boundsOf(points);
  return { x: left, y: bottom, width: right - left, height: top - bottom };
}
