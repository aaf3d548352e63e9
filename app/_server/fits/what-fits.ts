import {
  type AskedBeside,
  conditionsOfPiece,
  type FitCondition,
  newestWettest,
  thicknessLeft,
} from '@/app/_server/fits/conditions-of-piece';
import { fitPiece, type OutlineFit } from '@/app/_server/fits/fit-piece';
import { outlineOfPiece } from '@/app/_server/fits/outline-of-piece';
import { MOST_PIECES, piecesToFit } from '@/app/_server/fits/pieces-to-fit';
import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { type FitRequest, type FitRequestError, readRequest } from '@/shared/fit/fit-request';
import { type RankReason, rankSlabs, type SlabFacts } from '@/shared/fit/rank-slabs';
import type { HalfSizes } from '@/shared/fit/top-shape';
import type { Outline } from '@/shared/outline/outline';
import { ok, type Result } from '@/shared/result/result';
import { minorUnits } from '@/shared/units/minor-units';
import type { Nanometres } from '@/shared/units/nanometres';

/** A top, and which wood may be looked at for it. */
export type FitAsk = AskedBeside & {
  readonly request: FitRequest;
  /** As the book writes it; any where it is left out. */
  readonly species?: string | undefined;
  /** Leaves out what is promised to a job or held. */
  readonly freeOnly: boolean;
};

/** One piece that was judged, with everything behind its answer. */
export type JudgedPiece = {
  readonly line: PieceLine;
  readonly outline: Outline;
  readonly judged: OutlineFit;
  readonly thicknessLeft: Nanometres;
  readonly newest: { readonly takenOn: CalendarDate; readonly mcTenths: number } | undefined;
  readonly conditions: readonly FitCondition[];
  readonly reasons: readonly RankReason[];
};

export type WhatFits = {
  readonly sizes: HalfSizes;
  /** Yes and nearly, in the order a maker would take them. */
  readonly ranked: readonly JudgedPiece[];
  readonly noes: readonly JudgedPiece[];
  /** Pieces whose widths make no outline. */
  readonly unmeasured: readonly PieceLine[];
  readonly looked: number;
  readonly total: number;
  /** Why fewer were looked at than there are; undefined where all were. */
  readonly cut?: 'most' | 'time';
};

export type FitLimits = {
  readonly most: number;
  readonly milliseconds: number;
  /** A clock in milliseconds from anywhere. */
  readonly clock: () => number;
};

const LIMITS: FitLimits = { most: MOST_PIECES, milliseconds: 4000, clock: () => performance.now() };

/**
 * Which pieces in stock a top can be cut from, ranked, and which not. At most 400 pieces, the largest first, and no new
 * piece is begun after four seconds; `looked`, `total` and `cut` say what that left out. Pieces of one outline are judged
 * once. Fails with the part of the request that cannot be. Other requests are answered in between.
 */
export async function whatFits(
  book: OpenBook,
  ask: FitAsk,
  { today, currency }: { readonly today: CalendarDate; readonly currency: string },
  limits: Partial<FitLimits> = {},
): Promise<Result<WhatFits, FitRequestError>> {
  const request = readRequest(ask.request);
  if (!request.ok) return request;
  const { most, milliseconds, clock } = { ...LIMITS, ...limits };
  const { pieces, total } = await piecesToFit(book, { species: ask.species, freeOnly: ask.freeOnly, most });
  const begun = clock();
  const known = new Map<string, OutlineFit>();
  const judged: Omit<JudgedPiece, 'reasons'>[] = [];
  const unmeasured: PieceLine[] = [];
  let looked = 0;
  for (const line of pieces) {
    if (clock() - begun > milliseconds) break;
    looked += 1;
    const outline = outlineOfPiece(line);
    if (!outline.ok) {
      unmeasured.push(line);
      continue;
    }
    const key = [line.lengthNm, line.widthStartNm, line.widthMiddleNm, line.widthEndNm].join(' ');
    const fit = known.get(key) ?? fitPiece(line.label, outline.value, request.value);
    if (!known.has(key)) {
      known.set(key, fit);
      await new Promise((resolve) => setImmediate(resolve));
    }
    judged.push({
      line,
      outline: outline.value,
      judged: fit,
      thicknessLeft: thicknessLeft(line),
      newest: newestWettest(line),
      conditions: conditionsOfPiece(line, ask, today),
    });
  }
  const byId = new Map(judged.map((piece) => [piece.line.label as string, piece]));
  const inOrder = rankSlabs(judged.map((piece) => factsOf(piece, ask, currency))).flatMap(({ id, reasons }) => {
    const piece = byId.get(id);
    return piece ? [{ ...piece, reasons }] : [];
  });
  const cut = looked < pieces.length ? ('time' as const) : total > pieces.length ? ('most' as const) : undefined;
  return ok({
    sizes: request.value.sizes,
    ranked: inOrder.filter(({ judged: { fit } }) => fit.answer !== 'no'),
    noes: inOrder.filter(({ judged: { fit } }) => fit.answer === 'no'),
    unmeasured,
    looked,
    total,
    ...(cut && { cut }),
  });
}

/**
 * What the ranking is told. A piece that is wet has no day it will be dry: that takes its room's air, which is not asked.
 * Of one whose reading is too old to go by it is not known.
 */
function factsOf(piece: Omit<JudgedPiece, 'reasons'>, ask: FitAsk, currency: string): SlabFacts {
  const { line, judged, conditions } = piece;
  const { wasteArea, offcutArea, offcut = 0 } = judged;
  const cost = line.cost?.currency === currency ? line.cost.minor : undefined;
  const isWet = conditions.some(({ code }) => code === 'wet');
  const isKnown = !conditions.some(({ code }) => code === 'no-reading' || code === 'reading-old');
  return {
    id: line.label,
    answer: judged.fit.answer,
    ...(wasteArea !== undefined && { wasteArea }),
    ...(offcutArea !== undefined && { offcutArea }),
    ...(isWet ? { dryInDays: Infinity } : isKnown && { dryInDays: 0 }),
    thicknessLeft: piece.thicknessLeft,
    ...(ask.thickness !== undefined && { thicknessWanted: ask.thickness }),
    // The offcut kept carries its own part of the cost.
    ...(cost !== undefined && { price: minorUnits(Math.round(cost * (1 - offcut))) }),
    promised: line.facts.promisedTo !== undefined || line.facts.hold !== 'free',
  };
}
