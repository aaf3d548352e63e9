import type { JudgedPiece, WhatFits } from '@/app/_server/fits/what-fits';
import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { RiverView } from '@/app/_ui/slab/river-drawing';
import { fillsInTop } from '@/app/(shop)/on-hand/fits/fills-in-top';
import { type FitView, fitView } from '@/app/(shop)/on-hand/fits/fit-view';
import { onTheRule } from '@/app/(shop)/on-hand/fits/on-the-rule';
import type { FitPour } from '@/app/(shop)/on-hand/fits/pour-href';
import {
  type SaidDates,
  sayCondition,
  sayHold,
  sayOnWood,
  sayRank,
  sayWouldGive,
} from '@/app/(shop)/on-hand/fits/say-fit';
import { sayMass } from '@/app/(shop)/pieces/say-mass';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import type { BestBy } from '@/shared/fit/score-place';
import { countMarks } from '@/shared/outline/piece-marks';
import type { CurrencyCode } from '@/shared/units/currency';
import type { MinorUnits } from '@/shared/units/minor-units';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';
import { USUAL_PASSES } from '@/shared/wood/flatten-piece';
import { sayPieceFace } from '@/shared/wood/say-piece-size';

const FLATTENING = USUAL_PASSES.reduce((sum, { takes, faces }) => sum + takes * faces, 0);

/** A piece among the answers, in words. */
export type FitRow = {
  readonly id: string;
  /** The pieces it is cut from: one, or two that belong together. */
  readonly members: readonly { readonly label: string; readonly title: string }[];
  readonly words: string;
  /** A drawing for each cut, in order. */
  readonly views: readonly FitView[];
  /** The finished top, where a river runs through it. */
  readonly river: RiverView | undefined;
  /** What of it resin goes into, where the whole top fits. */
  readonly pour: FitPour | undefined;
  /** The drawing in words. */
  readonly drawn: string;
  /** Facts beside the drawing, the size first. */
  readonly facts: readonly string[];
  readonly conditions: readonly string[];
  readonly standing: { readonly word: 'use' | 'care' | 'stop'; readonly says: string };
  readonly cost: { readonly minor: MinorUnits; readonly currency: CurrencyCode } | null;
  /** That the cost is not the whole of it. */
  readonly costNote: string | null;
  readonly waste: string | null;
  readonly why: readonly string[];
  /** How it was searched and checked. */
  readonly how: readonly string[];
};

export type RowContext = {
  readonly prefer: UnitSystem;
  readonly today: CalendarDate;
  readonly order: DateOrder;
  /** Whether a moisture was asked for. */
  readonly moisture: boolean;
  readonly best: BestBy;
};

export function fitRow(
  piece: JudgedPiece,
  sizes: WhatFits['sizes'],
  { prefer, today, order, moisture, best }: RowContext,
): FitRow {
  const { line, judged, newest, conditions } = piece;
  const say = (length: Nanometres) => printLength(length, { prefer, style: 'inches' });
  const title = titleOf(line);
  const words = sayOnWood(piece, { prefer });
  const live = (['left', 'right'] as const).filter((side) => line.facts.flags.includes(`live-edge-${side}`));
  const size = sayPieceFace(line, { prefer });
  const view = fitView(piece, sizes);
  const marks = view && judged.fit.answer === 'yes' ? fillsInTop(line.marks, view.top) : [];
  return {
    id: line.label,
    members: [{ label: line.label, title }],
    words,
    views: view ? [view] : [],
    river: undefined,
    pour: marks.length > 0 ? { of: 'fills', labels: [line.label], marks } : undefined,
    drawn: `${title}, ${size}: ${words}`,
    facts: [
      size,
      `${say(line.thicknessNm)} rough → ${onTheRule(piece.thicknessLeft, 'down', prefer)} flattened`,
      newest ? `${newest.mcTenths / 10} % on ${sayDate(newest.takenOn, { order, today })}` : 'Moisture not read',
      ...(live.length ? [live.length === 2 ? 'Live edges on both sides' : `Live edge on the ${live[0]}`] : []),
      ...(piece.topGrams === undefined ? [] : [`The top weighs about ${sayMass(piece.topGrams / 1000, prefer)}`]),
      ...sayDry(piece, { today, order }),
      ...(judged.fit.answer === 'nearly' ? [sayWouldGive(judged.fit.missing, { prefer })] : []),
    ],
    conditions: conditions.map((condition) => sayCondition(condition, { prefer, today, order })),
    standing: standingOf(piece),
    cost: line.cost,
    costNote: null,
    waste: sayWaste(judged),
    why: sayRank(piece.reasons, { moisture, prefer }),
    how: [sayRests(line, say), sayThickness(line, say), ...sayHow(piece, prefer, best)],
  };
}

/** "Walnut slab 3", with its place in the flitch where it has one. */
export function titleOf(line: PieceLine): string {
  return `${line.species} ${line.form}${line.flitchNumber === null ? '' : ` ${line.flitchNumber}`}`;
}

/** On what the shape of a piece rests. */
export function sayRests(line: PieceLine, say: (length: Nanometres) => string): string {
  const marked = countMarks(line.marks);
  const marks =
    marked === 0
      ? 'Nothing is marked on it: look for checks and knots before you cut.'
      : `Its ${marked === 1 ? 'mark is' : `${marked} marks are`} kept clear of, filled or left as marked.`;
  if (line.shape) return `Its measured outline. ${marks}`;
  const widths = [line.widthStartNm, line.widthMiddleNm, line.widthEndNm].map(say).join(', ');
  return `Widths ${widths} at the start, half way and the end of ${say(line.lengthNm)}, joined by straight lines: measure its outline before cutting. ${marks}`;
}

export function sayThickness(line: PieceLine, say: (length: Nanometres) => string): string {
  if (line.form === 'sheet') return 'A sheet is flat as it comes: nothing is taken off for flattening.';
  const warp = [line.cupNm, line.bowNm, line.twistNm].some((each) => each !== null);
  return `Thickness is less ${say(nanometres(FLATTENING))} for flattening both faces (common practice), ${warp ? 'and its measured cup, bow and twist' : 'with no warp measured'}.`;
}

/** When it is dry, where a day was asked for and that is known. */
export function sayDry({ dry }: Pick<JudgedPiece, 'dry'>, dates: SaidDates): readonly string[] {
  if (!dry?.known || dry.daysLate > 0 || dry.dates.likely === null) return [];
  return [dry.reached ? 'Dry as it was last read' : `Dry about ${sayDate(dry.dates.likely, dates)}`];
}

export function standingOf({
  line: { facts },
  conditions,
}: Pick<JudgedPiece, 'line' | 'conditions'>): FitRow['standing'] {
  if (facts.hold !== 'free') return { word: 'stop', says: sayHold(facts.hold) };
  if (facts.promisedTo) return { word: 'care', says: `promised to ${facts.promisedTo.name}` };
  return conditions.length > 0 ? { word: 'care', says: 'free, with care' } : { word: 'use', says: 'free' };
}

function sayWaste({ waste, offcut = 0 }: JudgedPiece['judged']): string | null {
  if (waste === undefined) return null;
  const percent = (part: number) => `${Math.round(part * 100)} %`;
  return `${percent(waste)} waste, ${percent(offcut)} kept as one offcut`;
}

/** What the place was picked by, as it was asked for. */
const BEST_WORDS: Readonly<Record<BestBy, string>> = {
  balanced:
    'Of the places that hold it, the one that keeps the largest offcut in one piece, then runs along the middle of the wood, then lies straightest.',
  waste: 'Of the places that hold it, the one that leaves the least beyond the offcuts of 300 mm or more at both ends.',
  offcut: 'Of the places that hold it, the one that keeps the largest offcut in one piece.',
  figure: 'Of the places that hold it, the one with the figure nearest to its middle.',
};

function sayHow({ judged: { fit, spare } }: JudgedPiece, prefer: UnitSystem, best: BestBy): readonly string[] {
  if (fit.answer === 'yes') {
    const { placement, scored } = fit.place;
    const turned = Math.abs((placement.angle * 180) / Math.PI);
    return [
      `The middle of the top lies ${onTheRule(nanometres(Math.round(placement.x * 1000)), 'down', prefer)} from the start, ${
        turned < 0.05 ? 'straight along the piece' : `turned ${turned.toFixed(1)}° on the piece`
      }.`,
      BEST_WORDS[best],
      ...(spare === undefined
        ? []
        : [`At that place it could be ${onTheRule(spare, 'down', prefer)} wider with every allowance kept.`]),
      `Score ${scored.score.toFixed(2)} of 1: offcut ${scored.offcut.toFixed(2)}, middle ${scored.figure.toFixed(2)}, straight ${scored.straight.toFixed(2)}.`,
      'Checked again by a second test that shares nothing with the search: every side of the drawn top against every edge of the wood.',
    ];
  }
  const proof = `Every place and every angle allowed was ruled out, to ${fit.proof.tolerance / 1_000_000} mm, in ${fit.proof.stretches.toLocaleString('en')} ${fit.proof.stretches === 1 ? 'step' : 'steps'}.`;
  if (fit.answer === 'no') return [proof];
  return [
    proof,
    'The smaller tops named were found a place each, and each was checked again by a second test that shares nothing with the search. They are the largest at the angles tried, to a millimetre.',
  ];
}
