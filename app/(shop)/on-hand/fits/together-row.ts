import type { JudgedTogether, Member } from '@/app/_server/fits/what-pairs';
import {
  type FitRow,
  type RowContext,
  sayDry,
  sayRests,
  sayThickness,
  standingOf,
  titleOf,
} from '@/app/(shop)/on-hand/fits/fit-row';
import { riverOf, riverView, togetherViews } from '@/app/(shop)/on-hand/fits/fit-view';
import { onTheRule } from '@/app/(shop)/on-hand/fits/on-the-rule';
import { leastMissing, sayCondition, sayRank, sayWouldGive } from '@/app/(shop)/on-hand/fits/say-fit';
import { sayMass } from '@/app/(shop)/pieces/say-mass';
import type { ReadRequest } from '@/shared/fit/fit-request';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { minorUnits } from '@/shared/units/minor-units';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import { printQuantity } from '@/shared/units/print-quantity';
import { microlitres } from '@/shared/units/stock-unit';
import { sayPieceFace } from '@/shared/wood/say-piece-size';

/** Two pieces that make a top together, or one sawn in two, in words. */
export function togetherRow(together: JudgedTogether, request: ReadRequest, context: RowContext): FitRow {
  const { members, judged, areSisters, topGrams } = together;
  const { prefer, moisture } = context;
  const [one, two] = members;
  const say = (length: Nanometres) => printLength(length, { prefer, style: 'inches' });
  const words = sayWords(together, context);
  const titles = members.map(({ line }) => titleOf(line));
  const standings = members.map(standingOf);
  const worst =
    standings.find(({ word }) => word === 'stop') ?? standings.find(({ word }) => word === 'care') ?? standings[0];
  const costs = members.map(({ line }) => line.cost);
  const cost = costs.find((each) => each !== null);
  const priced = costs.filter((each) => each !== null && each.currency === cost?.currency);
  const unpriced = costs.length - priced.length;
  return {
    id: together.id,
    members: members.map(({ line }, nr) => ({ label: line.label, title: titles[nr] ?? '' })),
    words,
    views: togetherViews(together, request.sizes),
    river: riverView(together, request),
    pour:
      judged.of === 'river' && judged.fit.answer === 'yes'
        ? { of: 'river', labels: members.map(({ line }) => line.label), marks: [] }
        : undefined,
    drawn: `${titles.join(' and ')}: ${words}`,
    facts: [
      two ? (areSisters ? 'Sisters from one log' : 'Two pieces of one wood') : 'One piece, sawn down its length',
      ...members.map((member) => sayMember(member, context, say)),
      ...(topGrams === undefined ? [] : [`The wood of the top weighs about ${sayMass(topGrams / 1000, prefer)}`]),
      ...sayRiver(judged, prefer),
      ...(judged.of === 'pair' && judged.fit.answer === 'nearly' ? [sayWouldGive(judged.fit.missing, { prefer })] : []),
    ],
    conditions: members.flatMap(({ line, conditions }) =>
      conditions.map((condition) => `${printOwnLabel(line.label)}: ${sayCondition(condition, context)}`),
    ),
    standing: worst ?? { word: 'use', says: 'free' },
    cost: cost
      ? { minor: minorUnits(priced.reduce((sum, each) => sum + (each?.minor ?? 0), 0)), currency: cost.currency }
      : null,
    costNote: cost && unpriced > 0 ? 'and one without a price in the book' : null,
    waste: null,
    why: sayRank(together.reasons, { moisture, prefer }),
    how: [
      ...members.map(({ line }) => `${printOwnLabel(line.label)}: ${sayRests(line, say)} ${sayThickness(line, say)}`),
      judged.of === 'pair'
        ? 'Each half lies at one place in both sisters, whose chalk lines begin at one end, so that they mirror one another. Both were checked again by a second test that shares nothing with the search.'
        : 'The back of each piece was checked by a second test that shares nothing with the search; the river was measured at every turn of both banks, its resin by the outlines themselves. Which banks go together was looked for on a grid: a yes is a yes, a no among banks is a search and no proof.',
      ...(one && areSisters ? ['Sisters are taken together, so no pair is split.'] : []),
    ],
  };
}

function sayWords({ judged, members }: JudgedTogether, { prefer }: RowContext): string {
  const careful = members.some(({ conditions }) => conditions.length > 0);
  const fits = careful ? 'fits, with care' : 'fits';
  if (judged.of === 'pair') {
    if (judged.fit.answer === 'yes') return `${fits}, bookmatched`;
    if (judged.fit.answer === 'no') return 'does not fit';
    const least = leastMissing(judged.fit.missing);
    const by = (length: Nanometres) => onTheRule(length, 'up', prefer);
    if (least.lacks === 'both') return 'nearly, as a smaller top';
    return `nearly: ${by(least.top.by)} too ${least.lacks === 'width' ? 'narrow' : 'short'}`;
  }
  if (judged.fit.answer === 'yes') return `${fits}, with a river`;
  if (judged.fit.answer === 'no') return 'does not fit';
  const { length, width } = judged.fit.largest;
  return `nearly: ${onTheRule(length, 'down', prefer)} × ${onTheRule(width, 'down', prefer)} would fit`;
}

/** The search lets a micrometre go: what was asked for is not said to be less for it. */
const HAIR = 1;

function sayRiver(judged: JudgedTogether['judged'], prefer: RowContext['prefer']): readonly string[] {
  const river = judged.of === 'river' ? riverOf(judged.fit) : undefined;
  if (!river) return [];
  const { narrowest, widest } = river.fit.river;
  const width = (um: number, way: 'down' | 'up') => onTheRule(nanometres(Math.round(um) * 1000), way, prefer);
  const resin = printQuantity(microlitres(Math.round(river.fit.resin)), 'uL', { prefer });
  return [
    `River ${width(narrowest + HAIR, 'down')} to ${width(widest, 'up')} wide`,
    `${resin} of resin as deep as the top, before leakage and what stays in the cups`,
  ];
}

function sayMember(member: Member, { prefer, today, order }: RowContext, say: (length: Nanometres) => string): string {
  const { line, newest, thicknessLeft } = member;
  const read = newest ? `${newest.mcTenths / 10} %` : 'moisture not read';
  const dry = sayDry(member, { today, order }).map((each) => `, ${each.charAt(0).toLowerCase()}${each.slice(1)}`);
  return `${printOwnLabel(line.label)}: ${sayPieceFace(line, { prefer })}, ${say(line.thicknessNm)} rough → ${onTheRule(thicknessLeft, 'down', prefer)}, ${read}${dry.join('')}`;
}
