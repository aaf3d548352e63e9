import type { FitAsk } from '@/app/_server/fits/fit-ask';
import { layInLog } from '@/app/_server/fits/lay-in-log';
import { riverPairs, sisterPairs } from '@/app/_server/fits/pairs-to-fit';
import { searchInOrder } from '@/app/_server/fits/search-in-order';
import type { SearchTask } from '@/app/_server/fits/search-task';
import { slabToSearch } from '@/app/_server/fits/slab-to-search';
import { weighTop } from '@/app/_server/fits/weigh-top';
import {
  dryFacts,
  type FitContext,
  type FitLimits,
  type Judge,
  type JudgedPiece,
  type WhatFits,
  whyCut,
} from '@/app/_server/fits/what-fits';
import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { FitAnswer } from '@/shared/fit/fit-answer';
import type { ReadRequest, SlabToSearch } from '@/shared/fit/fit-request';
import type { RiverAnswer } from '@/shared/fit/fit-river';
import { type RankReason, rankSlabs, type SlabFacts } from '@/shared/fit/rank-slabs';
import { topArea } from '@/shared/fit/top-area';
import type { Laid } from '@/shared/outline/lay-anew';
import { outlineArea } from '@/shared/outline/outline-area';
import { minorUnits } from '@/shared/units/minor-units';
import { nanometres } from '@/shared/units/nanometres';

/** One member of a pair, judged for itself. */
export type Member = Omit<JudgedPiece, 'judged' | 'reasons' | 'topGrams'> & { readonly slab: SlabToSearch };

type Together = readonly [Member] | readonly [Member, Member];

/** Two pieces, or one sawn in two, that were judged together. */
export type JudgedTogether = {
  readonly id: string;
  readonly members: Together;
  readonly judged:
    | { readonly of: 'pair'; readonly fit: FitAnswer }
    | { readonly of: 'river'; readonly fit: RiverAnswer };
  /** Sisters that lay side by side, or are kept as a pair. */
  readonly areSisters: boolean;
  readonly topGrams: number | undefined;
  readonly reasons: readonly RankReason[];
};

type Given = {
  readonly ask: FitAsk;
  readonly request: ReadRequest;
  readonly context: FitContext;
  readonly within: FitLimits;
  readonly judge: Judge;
  readonly total: number;
  readonly packs: number;
  /** Where in its log each piece lies; of a bookmatch. */
  readonly places: ReadonlyMap<number, Laid>;
};

/** Which two pieces make the top together, the best first. No pair is begun after the time is up. */
export async function whatPairs(pieces: readonly PieceLine[], given: Given): Promise<WhatFits> {
  const { ask, request, within, judge, total, packs, places } = given;
  const members = new Map<number, Member>();
  const unmeasured: PieceLine[] = [];
  for (const line of pieces) {
    const slab = slabToSearch(line);
    if (!slab) unmeasured.push(line);
    else {
      const { thicknessLeft, newest, conditions, dry } = judge(line);
      const laid = places.get(line.stockId);
      const [drawn, searched] = laid ? layInLog(line, slab, laid) : [line, slab];
      const { outline } = searched;
      members.set(line.stockId, { line: drawn, slab: searched, outline, thicknessLeft, newest, conditions, dry });
    }
  }
  const known = pieces.filter(({ stockId }) => members.has(stockId));
  const sisters = new Set(sisterPairs(known).map(idOf));
  const all = ask.make.of === 'pair' ? sisterPairs(known, ({ stockId }) => places.has(stockId)) : riverPairs(known);
  const sets = all.slice(0, within.most).flatMap((set) => {
    const [one, two] = set.flatMap(({ stockId }) => {
      const member = members.get(stockId);
      return member ? leavesAlone(member, set) : [];
    });
    if (!one) return [];
    const together: Together = two ? [one, two] : [one];
    const slabs: SearchTask['slabs'] = two ? [one.slab, two.slab] : [one.slab];
    return [{ id: idOf(set), together, task: { request: ask.request, make: ask.make, slabs } }];
  });
  const answers = searchInOrder(
    sets.map(({ task }) => task),
    within.search,
    within.atOnce,
  );
  const begun = within.clock();
  const found: Omit<JudgedTogether, 'reasons'>[] = [];
  let [looked, noes] = [0, 0];
  for (const { id, together } of sets) {
    if (within.clock() - begun > within.milliseconds || within.isStopped()) break;
    looked += 1;
    const next = await answers.next();
    if (next.done || next.value.of === 'one') throw new Error(`No answer came for ${id}.`);
    const judged = next.value;
    within.progress(looked, sets.length);
    if (judged.fit.answer === 'no') {
      noes += 1;
      continue;
    }
    const river = judged.of === 'river' && judged.fit.answer === 'yes' ? judged.fit.river.area / 1e6 : 0;
    found.push({
      id,
      members: together,
      judged,
      areSisters: sisters.has(id),
      topGrams: weighTop(together[0].line.species, request.sizes, ask, river),
    });
  }
  const byId = new Map(found.map((each) => [each.id, each]));
  const cut = whyCut(looked, sets.length, total > pieces.length ? all.length + 1 : all.length, within.isStopped());
  return {
    sizes: request.sizes,
    ranked: [],
    noes: [],
    together: rankSlabs(found.map((each) => factsOf(each, given))).flatMap(({ id, reasons }) => {
      const each = byId.get(id);
      return each ? [{ ...each, reasons }] : [];
    }),
    togetherNoes: noes,
    unmeasured,
    packs,
    looked,
    total: all.length,
    ...(cut && { cut }),
  };
}

/** With the caution that it would leave its sister alone, where that one is not taken with it. */
function leavesAlone(member: Member, set: readonly PieceLine[]): Member {
  const sister = member.line.pairedWith;
  if (!sister?.inStock || set.some(({ stockId }) => stockId === sister.stockId)) return member;
  return { ...member, conditions: [...member.conditions, { code: 'splits-pair', sister: sister.label }] };
}

const idOf = (set: readonly PieceLine[]) => set.map(({ label }) => label).join(' ');

/** The worse of the two counts: a pair is ready when both are, and promised when one is. */
function factsOf({ id, members, judged, topGrams }: Omit<JudgedTogether, 'reasons'>, given: Given): SlabFacts {
  const { ask, request, context } = given;
  const dry = members.map((member) => dryFacts(member, ask).dryInDays);
  const costs = members.map(({ line }) => (line.cost?.currency === context.currency ? line.cost.minor : undefined));
  const whole = members.reduce((sum, { outline }) => sum + outlineArea(outline), 0);
  const isKnown = costs.every((cost) => cost !== undefined);
  return {
    id,
    answer: judged.fit.answer,
    ...(judged.fit.answer === 'yes' && { wasteArea: Math.max(0, whole - topArea(request.sizes) / 1e6), offcutArea: 0 }),
    ...(dry.every((days) => days !== undefined) && { dryInDays: Math.max(...dry.map((days) => days ?? 0)) }),
    thicknessLeft: nanometres(Math.min(...members.map((member) => member.thicknessLeft))),
    ...(ask.thickness !== undefined && { thicknessWanted: ask.thickness }),
    ...(topGrams !== undefined && { weight: topGrams }),
    ...(ask.mostGrams !== undefined && { mostWeight: ask.mostGrams }),
    ...(isKnown && { price: minorUnits(costs.reduce<number>((sum, cost) => sum + (cost ?? 0), 0)) }),
    splitsPair: members.some(({ conditions }) => conditions.some(({ code }) => code === 'splits-pair')),
    ...(judged.of === 'river' && judged.fit.answer === 'yes' && { riverArea: judged.fit.river.area / 1e6 }),
    promised: members.some(({ line: { facts } }) => facts.promisedTo !== undefined || facts.hold !== 'free'),
  };
}
