import type { JudgedPiece, WhatFits } from '@/app/_server/fits/what-fits';
import { type FitView, fitView } from '@/app/(shop)/on-hand/fits/fit-view';
import { onTheRule } from '@/app/(shop)/on-hand/fits/on-the-rule';
import { sayCondition, sayHold, sayOnWood, sayRank, sayWouldGive } from '@/app/(shop)/on-hand/fits/say-fit';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
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
  readonly label: string;
  readonly title: string;
  readonly words: string;
  readonly view: FitView | undefined;
  readonly liveEdges: { readonly left: boolean; readonly right: boolean };
  /** The drawing in words. */
  readonly drawn: string;
  /** Facts beside the drawing, the size first. */
  readonly facts: readonly string[];
  readonly conditions: readonly string[];
  readonly standing: { readonly word: 'use' | 'care' | 'stop'; readonly says: string };
  readonly cost: { readonly minor: MinorUnits; readonly currency: CurrencyCode } | null;
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
};

export function fitRow(
  piece: JudgedPiece,
  sizes: WhatFits['sizes'],
  { prefer, today, order, moisture }: RowContext,
): FitRow {
  const { line, judged, newest, conditions } = piece;
  const say = (length: Nanometres) => printLength(length, { prefer, style: 'inches' });
  const title = `${line.species} ${line.form}${line.flitchNumber === null ? '' : ` ${line.flitchNumber}`}`;
  const words = sayOnWood(piece, { prefer });
  const live = (['left', 'right'] as const).filter((side) => line.facts.flags.includes(`live-edge-${side}`));
  const size = sayPieceFace(line, { prefer });
  const widths = [line.widthStartNm, line.widthMiddleNm, line.widthEndNm].map(say).join(', ');
  return {
    label: line.label,
    title,
    words,
    view: fitView(piece, sizes),
    liveEdges: { left: live.includes('left'), right: live.includes('right') },
    drawn: `${title}, ${size}: ${words}`,
    facts: [
      size,
      `${say(line.thicknessNm)} rough → ${onTheRule(piece.thicknessLeft, 'down', prefer)} flattened`,
      newest ? `${newest.mcTenths / 10} % on ${sayDate(newest.takenOn, { order, today })}` : 'Moisture not read',
      ...(live.length ? [live.length === 2 ? 'Live edges on both sides' : `Live edge on the ${live[0]}`] : []),
      ...(judged.fit.answer === 'nearly' ? [sayWouldGive(judged.fit.missing, { prefer })] : []),
    ],
    conditions: conditions.map((condition) => sayCondition(condition, { prefer })),
    standing: standingOf(piece),
    cost: line.cost,
    waste: sayWaste(judged),
    why: sayRank(piece.reasons, { moisture, prefer }),
    how: [
      `Widths ${widths} at the start, half way and the end of ${say(line.lengthNm)}, joined by straight lines.`,
      `Thickness is less ${say(nanometres(FLATTENING))} for flattening both faces (common practice), with no warp measured.`,
      ...sayHow(piece, prefer),
    ],
  };
}

function standingOf({ line: { facts }, conditions }: JudgedPiece): FitRow['standing'] {
  if (facts.hold !== 'free') return { word: 'stop', says: sayHold(facts.hold) };
  if (facts.promisedTo) return { word: 'care', says: `promised to ${facts.promisedTo.name}` };
  return conditions.length > 0 ? { word: 'care', says: 'free, with care' } : { word: 'use', says: 'free' };
}

function sayWaste({ waste, offcut = 0 }: JudgedPiece['judged']): string | null {
  if (waste === undefined) return null;
  const percent = (part: number) => `${Math.round(part * 100)} %`;
  return `${percent(waste)} waste, ${percent(offcut)} kept as one offcut`;
}

function sayHow({ judged: { fit, spare } }: JudgedPiece, prefer: UnitSystem): readonly string[] {
  if (fit.answer === 'yes') {
    const { placement, scored } = fit.place;
    const turned = Math.abs((placement.angle * 180) / Math.PI);
    return [
      `The middle of the top lies ${onTheRule(nanometres(Math.round(placement.x * 1000)), 'down', prefer)} from the start, ${
        turned < 0.05 ? 'straight along the piece' : `turned ${turned.toFixed(1)}° on the piece`
      }.`,
      'Of the places that hold it, the one that keeps the largest offcut in one piece, then runs along the middle of the wood, then lies straightest.',
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
