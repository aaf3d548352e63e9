import { conditionsBeside, isAnsweredBy } from '@/app/_server/fits/conditions-beside';
import {
  conditionsOfPiece,
  type FitCondition,
  newestWettest,
  thicknessLeft,
} from '@/app/_server/fits/conditions-of-piece';
import { type DryBy, dryBy, emcByPlace } from '@/app/_server/fits/dry-by';
import type { FitAsk } from '@/app/_server/fits/fit-ask';
import type { OutlineFit } from '@/app/_server/fits/fit-piece';
import { MOST_PIECES, piecesToFit } from '@/app/_server/fits/pieces-to-fit';
import { placesInLog } from '@/app/_server/fits/place-in-log';
import { searchHere } from '@/app/_server/fits/search-here';
import { searchInOrder } from '@/app/_server/fits/search-in-order';
import type { Search, SearchTask } from '@/app/_server/fits/search-task';
import { searchKey, slabToSearch } from '@/app/_server/fits/slab-to-search';
import { weighTop } from '@/app/_server/fits/weigh-top';
import { type JudgedTogether, whatPairs } from '@/app/_server/fits/what-pairs';
import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { type FitRequestError, type ReadRequest, readRequest } from '@/shared/fit/fit-request';
import { type RankReason, rankSlabs, type SlabFacts } from '@/shared/fit/rank-slabs';
import type { HalfSizes } from '@/shared/fit/top-shape';
import type { Laid } from '@/shared/outline/lay-anew';
import type { Outline } from '@/shared/outline/outline';
import { ok, type Result } from '@/shared/result/result';
import { minorUnits } from '@/shared/units/minor-units';
import type { Nanometres } from '@/shared/units/nanometres';

/** One piece that was judged, with everything behind its answer. */
export type JudgedPiece = {
  readonly line: PieceLine;
  readonly outline: Outline;
  readonly judged: OutlineFit;
  readonly thicknessLeft: Nanometres;
  readonly newest: { readonly takenOn: CalendarDate; readonly mcTenths: number } | undefined;
  readonly conditions: readonly FitCondition[];
  /** Where a day to be dry by was asked for. */
  readonly dry: DryBy | undefined;
  /** Of the finished top in this wood, grams; undefined where it is not known. */
  readonly topGrams: number | undefined;
  readonly reasons: readonly RankReason[];
};

export type WhatFits = {
  readonly sizes: HalfSizes;
  /** Yes and nearly, in the order a maker would take them. */
  readonly ranked: readonly JudgedPiece[];
  readonly noes: readonly JudgedPiece[];
  /** The same of two pieces together, where that was asked for; then `ranked` and `noes` are empty. */
  readonly together: readonly JudgedTogether[];
  readonly togetherNoes: number;
  /** Pieces whose widths make no outline. */
  readonly unmeasured: readonly PieceLine[];
  /** Packs on hand of the wood asked for: their boards have no outline until they are taken out. */
  readonly packs: number;
  readonly looked: number;
  readonly total: number;
  /** Why fewer were looked at than there are; undefined where all were. */
  readonly cut?: 'most' | 'time' | 'stopped';
};

export type FitLimits = {
  readonly most: number;
  readonly milliseconds: number;
  /** A clock in milliseconds from anywhere. */
  readonly clock: () => number;
  /** Told how many are done, of how many, after each. */
  readonly progress: (done: number, of: number) => void;
  /** Whoever asked went away: what was found so far is all there is. */
  readonly isStopped: () => boolean;
  /** Who searches, and how many slabs are handed out to it at once. */
  readonly search: Search;
  readonly atOnce: number;
};

const LIMITS: Omit<FitLimits, 'search'> = {
  most: MOST_PIECES,
  milliseconds: 4000,
  clock: () => performance.now(),
  progress: () => undefined,
  isStopped: () => false,
  atOnce: 1,
};

/** The workshop as far as an answer depends on it. */
export type FitContext = { readonly today: CalendarDate; readonly currency: string };

/**
 * Which pieces in stock a top can be cut from, ranked, and which not; or which two together, where a bookmatched pair or
 * a river is asked for. At most 400 pieces, the largest first, and no new one is begun after four seconds unless told
 * otherwise; `looked`, `total` and `cut` say what that left out. Pieces of one outline are judged once, in this thread
 * unless `search` says where. Fails with the part of the request that cannot be. Other requests are answered in between.
 */
export async function whatFits(
  book: OpenBook,
  ask: FitAsk,
  context: FitContext,
  limits: Partial<FitLimits> = {},
): Promise<Result<WhatFits, FitRequestError>> {
  const request = readRequest(ask.request);
  if (!request.ok) return request;
  const within = { ...LIMITS, search: searchHere(), ...limits };
  const { pieces, total } = await piecesToFit(book, {
    species: ask.species,
    freeOnly: ask.freeOnly,
    most: within.most,
  });
  const rooms = ask.dryBy === undefined ? new Map<string, number>() : await emcByPlace(book, pieces, context.today);
  const judge = judgeOf(ask, request.value, context, rooms);
  const packs = await book.read.piece.count({
    where: { form: 'pack', stock: { quantity: { gt: 0 } }, ...(ask.species !== undefined && { species: ask.species }) },
  });
  if (ask.make.of !== 'one') {
    const places = ask.make.of === 'pair' ? await placesInLog(book, pieces) : new Map<number, Laid>();
    const given = { ask, request: request.value, context, within, judge, total, packs, places };
    return ok(await whatPairs(pieces, given));
  }
  const slabs = pieces.map((line) => {
    const slab = slabToSearch(line);
    return { line, slab, key: slab ? searchKey(slab) : '' };
  });
  const tasks = new Map<string, SearchTask>();
  for (const { slab, key } of slabs) {
    if (slab && !tasks.has(key)) tasks.set(key, { request: ask.request, make: ask.make, slabs: [slab] });
  }
  const answers = searchInOrder([...tasks.values()], within.search, within.atOnce);
  const begun = within.clock();
  const known = new Map<string, OutlineFit>();
  const judged: Omit<JudgedPiece, 'reasons'>[] = [];
  const unmeasured: PieceLine[] = [];
  let looked = 0;
  for (const { line, slab, key } of slabs) {
    if (within.clock() - begun > within.milliseconds || within.isStopped()) break;
    looked += 1;
    if (!slab) {
      unmeasured.push(line);
      continue;
    }
    if (!known.has(key)) {
      const next = await answers.next();
      if (!next.done && next.value.of === 'one') known.set(key, next.value.fit);
    }
    const fit = known.get(key);
    if (!fit) throw new Error(`No answer came for ${line.label}.`);
    within.progress(looked, pieces.length);
    const judgement = judge(line);
    const conditions = [...judgement.conditions, ...photoDoubt(line, fit.spare)];
    judged.push({ line, outline: slab.outline, judged: fit, ...judgement, conditions });
  }
  const byId = new Map(judged.map((piece) => [piece.line.label as string, piece]));
  const inOrder = rankSlabs(judged.map((piece) => factsOf(piece, ask, context.currency))).flatMap(({ id, reasons }) => {
    const piece = byId.get(id);
    return piece ? [{ ...piece, reasons }] : [];
  });
  const cut = whyCut(looked, pieces.length, total, within.isStopped());
  return ok({
    sizes: request.value.sizes,
    ranked: inOrder.filter(({ judged: { fit } }) => fit.answer !== 'no'),
    noes: inOrder.filter(({ judged: { fit } }) => fit.answer === 'no'),
    together: [],
    togetherNoes: 0,
    unmeasured,
    packs,
    looked,
    total,
    ...(cut && { cut }),
  });
}

/** That a photo is no truer than what there is to spare: what fits on the drawing may not fit on the wood. */
function photoDoubt({ shape }: PieceLine, spare: Nanometres | undefined): FitCondition[] {
  const error = shape?.source === 'photo' ? shape.errorNm : null;
  return error !== null && spare !== undefined && spare < error ? [{ code: 'photo-no-truer', error, spare }] : [];
}

/** Why fewer were looked at than there are; undefined where all were. */
export function whyCut(looked: number, of: number, total: number, isStopped: boolean): WhatFits['cut'] {
  if (looked < of) return isStopped ? 'stopped' : 'time';
  return total > of ? 'most' : undefined;
}

export type Judge = (
  line: PieceLine,
) => Pick<JudgedPiece, 'thicknessLeft' | 'newest' | 'conditions' | 'dry' | 'topGrams'>;

/** Everything about a piece that does not depend on where the top lies. */
function judgeOf(
  ask: FitAsk,
  { sizes }: ReadRequest,
  { today }: FitContext,
  rooms: ReadonlyMap<string, number>,
): Judge {
  return (line) => {
    const topGrams = weighTop(line.species, sizes, ask);
    // A sheet is made dry and flat.
    const isSheet = line.form === 'sheet';
    const dry =
      isSheet || ask.dryBy === undefined || ask.mostTenths === undefined
        ? undefined
        : dryBy(line, rooms.get(line.placeLabel ?? ''), { targetTenths: ask.mostTenths, by: ask.dryBy });
    const asItIs = conditionsOfPiece(line, isSheet ? { thickness: ask.thickness } : ask, today);
    return {
      thicknessLeft: thicknessLeft(line),
      newest: newestWettest(line),
      conditions: [
        ...(dry ? asItIs.filter((each) => !isAnsweredBy(dry, each)) : asItIs),
        ...conditionsBeside(line, ask, { dry, topGrams }),
      ],
      dry,
      topGrams,
    };
  };
}

/**
 * What the ranking is told. Without a day to be dry by, a piece that is wet has no day it will be dry; of one whose reading
 * is too old to go by it is not known.
 */
function factsOf(piece: Omit<JudgedPiece, 'reasons'>, ask: FitAsk, currency: string): SlabFacts {
  const { line, judged } = piece;
  const { wasteArea, offcutArea, offcut = 0 } = judged;
  const cost = line.cost?.currency === currency ? line.cost.minor : undefined;
  return {
    id: line.label,
    answer: judged.fit.answer,
    ...(wasteArea !== undefined && { wasteArea }),
    ...(offcutArea !== undefined && { offcutArea }),
    ...dryFacts(piece, ask),
    thicknessLeft: piece.thicknessLeft,
    ...(ask.thickness !== undefined && { thicknessWanted: ask.thickness }),
    ...(piece.topGrams !== undefined && { weight: piece.topGrams }),
    ...(ask.mostGrams !== undefined && { mostWeight: ask.mostGrams }),
    // The offcut kept carries its own part of the cost.
    ...(cost !== undefined && { price: minorUnits(Math.round(cost * (1 - offcut))) }),
    promised: line.facts.promisedTo !== undefined || line.facts.hold !== 'free',
    splitsPair: piece.conditions.some(({ code }) => code === 'splits-pair'),
  };
}

export function dryFacts(
  { dry, conditions }: Pick<JudgedPiece, 'dry' | 'conditions'>,
  ask: FitAsk,
): Pick<SlabFacts, 'dryInDays'> {
  if (ask.dryBy !== undefined && dry) {
    // Read too long ago to go by, it may be wet again.
    if (dry.known && !dry.isForecast && conditions.some(({ code }) => code === 'reading-old')) return {};
    if (dry.known) return { dryInDays: dry.daysLate };
    return dry.because === 'room-too-damp' ? { dryInDays: Infinity } : {};
  }
  const isWet = conditions.some(({ code }) => code === 'wet');
  const isKnown = !conditions.some(({ code }) => code === 'no-reading' || code === 'reading-old');
  return isWet ? { dryInDays: Infinity } : isKnown ? { dryInDays: 0 } : {};
}
