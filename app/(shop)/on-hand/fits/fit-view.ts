import type { JudgedPiece } from '@/app/_server/fits/what-fits';
import type { JudgedTogether } from '@/app/_server/fits/what-pairs';
import type { RiverView } from '@/app/_ui/slab/river-drawing';
import { isStraight } from '@/app/(shop)/on-hand/fits/is-straight';
import { leastMissing } from '@/app/(shop)/on-hand/fits/say-fit';
import { drawnRiver } from '@/shared/fit/drawn-river';
import { drawnShape, type ShapePart, WHOLE } from '@/shared/fit/drawn-shape';
import type { ReadRequest } from '@/shared/fit/fit-request';
import { riverAsCut } from '@/shared/fit/fit-river';
import type { Placement } from '@/shared/fit/search-places';
import { type HalfSizes, stretched } from '@/shared/fit/top-shape';
import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import type { PieceMarks } from '@/shared/outline/piece-marks';
import type { Point } from '@/shared/outline/point';
import { woodRunsAt } from '@/shared/outline/wood-runs-at';

/** Solid: it fits. Dashed: it fits, with a condition. Dotted: it does not. */
type FitLine = 'solid' | 'dashed' | 'dotted';

/** One piece drawn with what is cut from it, in micrometres of its own drawing. */
export type FitView = {
  readonly label: string;
  readonly outline: Outline;
  readonly marks: PieceMarks;
  readonly live: { readonly left: boolean; readonly right: boolean };
  readonly top: readonly Point[];
  readonly line: FitLine;
  /** Only what lies on the wood is drawn of the top: the rest of it is river and the other piece. */
  readonly isPart: boolean;
  /** Where the wood is too narrow: the places on its two edges; none on a straight board. */
  readonly tight: readonly Point[];
};

const MOST_POINTS = 180;

/**
 * Draws what was judged: the very outline that was searched, the top at its best place, or, where it nearly fits, the
 * whole top asked for where the smaller one would lie. Undefined for a no, which has no place.
 */
export function fitView(
  {
    line: piece,
    outline,
    judged: { fit },
    conditions,
  }: Pick<JudgedPiece, 'line' | 'outline' | 'judged' | 'conditions'>,
  sizes: HalfSizes,
): FitView | undefined {
  if (fit.answer === 'no') return undefined;
  const least = fit.answer === 'nearly' ? leastMissing(fit.missing) : undefined;
  const place = fit.answer === 'yes' ? fit.place : least?.top.found;
  if (!place) return undefined;
  const at =
    least?.lacks === 'width' && !isStraight(outline) ? boundsOf(outline.ring).left + least.top.at / 1000 : undefined;
  const run = at === undefined ? undefined : woodRunsAt(outline, at)[0];
  return {
    ...drawnPiece(piece, outline),
    top: thinned(drawnShape(sizes, WHOLE, place.placement)),
    line: lineOf(fit.answer === 'yes', conditions.length > 0),
    isPart: false,
    tight: run && at !== undefined ? [run.to, run.from].map((y) => ({ x: at, y })) : [],
  };
}

/** Both pieces of a pair or a river, each with its part of the top on it. */
export function togetherViews({ members, judged }: JudgedTogether, sizes: HalfSizes): readonly FitView[] {
  const careful = members.some(({ conditions }) => conditions.length > 0);
  const view = (nr: 0 | 1, cut: HalfSizes, part: ShapePart, placement: Placement, isWhole: boolean): FitView[] => {
    const member = members[nr] ?? members[0];
    const top = thinned(drawnShape(cut, part, placement));
    return [
      {
        ...drawnPiece(member.line, member.outline),
        top,
        line: lineOf(isWhole, careful),
        isPart: judged.of === 'river',
        tight: [],
      },
    ];
  };
  if (judged.of === 'pair') {
    const { fit } = judged;
    if (fit.answer === 'no') return [];
    const least = fit.answer === 'nearly' ? leastMissing(fit.missing).top : undefined;
    const place = fit.answer === 'yes' ? fit.place : least?.found;
    if (!place) return [];
    return ([0, 1] as const).flatMap((nr) => view(nr, sizes, place.part, place.placement, fit.answer === 'yes'));
  }
  const river = riverOf(judged.fit);
  if (!river) return [];
  // The whole top, held where this piece gives its back: the bank and the river are seen inside it.
  return river.fit.pieces.flatMap(({ slab, part, placement }) =>
    view(slab, stretched(sizes, river.part, river.part), WHOLE, middleOf(part, placement), judged.fit.answer === 'yes'),
  );
}

/** The top as it will be: both banks with the river between them. */
export function riverView({ members, judged }: JudgedTogether, request: ReadRequest): RiverView | undefined {
  const river = judged.of === 'river' ? riverOf(judged.fit) : undefined;
  if (!river) return undefined;
  const [one, two] = members;
  return drawnRiver(riverAsCut(two ? [one.slab, two.slab] : [one.slab], request, river));
}

/** Where the middle of the top lies for a part that is held by its straight side. */
function middleOf(part: ShapePart, { x, y, angle }: Placement): Placement {
  if (part.part === 'whole') return { x, y, angle };
  const turned = angle + (part.over ? Math.PI : 0);
  return { x: x + part.from * Math.sin(turned), y: y - part.from * Math.cos(turned), angle };
}

type River = Extract<JudgedTogether['judged'], { of: 'river' }>['fit'];
type RiverYes = Extract<River, { answer: 'yes' }>;

/** The river that was found, and of which part of the size asked for. */
export function riverOf(fit: River): { readonly fit: RiverYes; readonly part: number } | undefined {
  if (fit.answer === 'yes') return { fit, part: 1 };
  return fit.answer === 'nearly' ? { fit: fit.largest.fit, part: fit.largest.part } : undefined;
}

function drawnPiece(line: JudgedPiece['line'], outline: Outline) {
  const has = (side: 'left' | 'right') => line.facts.flags.includes(`live-edge-${side}`);
  return { label: line.label, outline, marks: line.marks, live: { left: has('left'), right: has('right') } };
}

const lineOf = (isWhole: boolean, isCareful: boolean): FitLine =>
  isWhole ? (isCareful ? 'dashed' : 'solid') : 'dotted';

/** Fewer points of a curve, none of a shape with corners: a screen shows no more. Whole micrometres. */
function thinned(points: readonly Point[]): readonly Point[] {
  const every = Math.ceil(points.length / MOST_POINTS);
  return points.flatMap(({ x, y }, nr) => (nr % every === 0 ? [{ x: Math.round(x), y: Math.round(y) }] : []));
}
