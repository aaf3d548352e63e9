import type { NeedToJudge, PieceToJudge, StockOfJob } from '@/app/_server/timeline/stock-of-job';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { judge } from '@/shared/shelf-life/judge';
import { suggestContainers } from '@/shared/shelf-life/suggest-containers';
import type { Verdict, VerdictWord } from '@/shared/shelf-life/types/verdict';
import { dayThatCounts } from '@/shared/timeline/last-use';
import { inOrder, type Step } from '@/shared/timeline/step';
import { inStockUnit } from '@/shared/units/in-stock-unit';
import { type AmountOf, amountOf, type StockUnit } from '@/shared/units/stock-unit';
import { judgePiece } from '@/shared/wood/judge-piece';

/** One verdict that hangs on a day of the time line. The key stays the same when the day moves. */
export type StockVerdict = {
  readonly key: string;
  readonly stepId: number | null;
  /** The day it was judged for. */
  readonly day: CalendarDate;
  readonly word: VerdictWord;
  readonly label: OwnLabelCode | null;
  readonly name: string;
} & (
  | {
      /** A container promised to the job, or the best there is where none is. */
      readonly of: 'container';
      readonly promised: boolean;
      readonly amount: number;
      readonly unit: StockUnit;
      readonly verdict: Verdict;
    }
  | { readonly of: 'short'; readonly amount: number; readonly unit: StockUnit }
  | {
      readonly of: 'piece';
      readonly why: 'held' | 'dry' | 'dry-late' | 'dry-unsure' | 'dry-unknown' | 'no-reading-asked';
      readonly dryOn: CalendarDate | null;
    }
);

/**
 * Judges everything that hangs on a time line for the days its steps stand on: for each need of a step that is not done,
 * the containers promised to it, else the best that are free on the day, and what is short; for each piece, whether it will
 * be dry on the day it is first worked with. A pour's resin is judged for its last lift, a finish for its last coat.
 */
export function judgeStock(stock: StockOfJob, steps: readonly Step[]): StockVerdict[] {
  const byId = new Map(steps.map((step) => [step.id, step]));
  const verdicts: StockVerdict[] = [];
  const toJudge = stock.needs.flatMap((need) => {
    const step = need.stepId === null ? undefined : byId.get(need.stepId);
    if (step && step.doneOn !== null) return [];
    return [{ need, own: step?.day ?? stock.dayOfUse, day: step ? dayThatCounts(step, steps) : stock.dayOfUse }];
  });
  toJudge.sort((a, b) => (a.own < b.own ? -1 : a.own > b.own ? 1 : a.need.id - b.need.id));
  const spoken = new Map<number, number>();
  for (const { need } of toJudge) for (const [stockId, amount] of need.promised) add(spoken, stockId, amount);
  for (const { need, day } of toJudge) verdicts.push(...ofNeed(need, day, stock, spoken));
  const first = inOrder(steps).find(
    ({ kind, doneOn }) => doneOn === null && ['seal', 'lift', 'flatten', 'assembly'].includes(kind),
  );
  const worked = inOrder(steps).find(({ kind, doneOn }) => kind === 'wood-dry' && doneOn === null) ?? first;
  for (const piece of stock.pieces) {
    verdicts.push(ofPiece(piece, first?.day ?? stock.dayOfUse, worked?.id ?? null, stock));
  }
  return verdicts;
}

const add = (sums: Map<number, number>, stockId: number, amount: number) =>
  sums.set(stockId, (sums.get(stockId) ?? 0) + amount);

/** `spoken`: what of each container is promised to the job or was offered to a need before this one; it grows. */
function ofNeed(
  need: NeedToJudge,
  day: CalendarDate,
  { purpose, today }: StockOfJob,
  spoken: Map<number, number>,
): StockVerdict[] {
  const { id, stepId } = need;
  const common = { stepId, day };
  const verdicts: StockVerdict[] = [];
  let rest: number = need.amount;
  /** An amount of a container's own unit, as the need counts. */
  const asNeeded = (amount: number, unit: StockUnit, density: number | null) => {
    const read = inStockUnit(amountOf(unit, amount), unit, need.unit, density);
    return read.ok ? read.value : 0;
  };
  for (const { line, density } of need.from) {
    const amount = need.promised.get(line.stockId) ?? 0;
    if (amount <= 0) continue;
    const verdict = judge({ ...line.candidate, purpose, dayOfUse: day, today, asked: amount });
    verdicts.push({
      ...common,
      key: `need ${id} container ${line.stockId}`,
      of: 'container',
      word: verdict.word,
      label: line.label,
      name: line.product,
      promised: true,
      amount,
      unit: line.unit,
      verdict,
    });
    rest -= asNeeded(amount, line.unit, density);
  }
  if (rest <= 0) return verdicts;
  const [one] = need.from;
  const unit = one?.line.unit ?? need.unit;
  const asked = inStockUnit(amountOf(need.unit, rest), need.unit, unit, one?.density ?? null);
  const wanted = asked.ok ? asked.value : undefined;
  const suggestion =
    wanted === undefined
      ? undefined
      : suggestContainers({
          candidates: need.from
            .filter(({ line, free }) => line.unit === unit && free > (spoken.get(line.stockId) ?? 0))
            .map(({ line, free }) => ({
              ...line.candidate,
              container: {
                ...line.candidate.container,
                left: Math.max(0, free - (spoken.get(line.stockId) ?? 0)),
              },
            })),
          asked: wanted,
          dayOfUse: day,
          today,
          purpose,
          colourShows: need.colourShows,
        });
  for (const take of suggestion?.containers ?? []) {
    const found = need.from.find(({ line }) => String(line.stockId) === take.containerId);
    if (!found) continue;
    add(spoken, found.line.stockId, take.take);
    const verdict = judge({ ...found.line.candidate, purpose, dayOfUse: day, today });
    verdicts.push({
      ...common,
      key: `need ${id} free ${found.line.stockId}`,
      of: 'container',
      word: verdict.word,
      label: found.line.label,
      name: found.line.product,
      promised: false,
      amount: take.take,
      unit,
      verdict,
    });
  }
  const missing: AmountOf<StockUnit> | number =
    wanted === undefined ? rest : wanted - (suggestion?.containers ?? []).reduce((sum, { take }) => sum + take, 0);
  if (missing > 0) {
    const passedOver = bestPassedOver(need, day, { purpose, today }, spoken);
    if (passedOver) {
      const { line, left, verdict } = passedOver;
      verdicts.push({
        ...common,
        key: `need ${id} free ${line.stockId}`,
        of: 'container',
        word: verdict.word,
        label: line.label,
        name: line.product,
        promised: false,
        amount: left,
        unit: line.unit,
        verdict,
      });
    }
    verdicts.push({
      ...common,
      key: `need ${id} short`,
      of: 'short',
      word: 'stop',
      label: null,
      name: need.name,
      amount: missing,
      unit: wanted === undefined ? need.unit : unit,
    });
  }
  return verdicts;
}

/** Of the containers that are not good on the day the one that lasts longest, so that it is seen why it is not offered. */
function bestPassedOver(
  need: NeedToJudge,
  day: CalendarDate,
  { purpose, today }: Pick<StockOfJob, 'purpose' | 'today'>,
  spoken: ReadonlyMap<number, number>,
) {
  return need.from
    .map(({ line, free }) => ({ line, left: free - (spoken.get(line.stockId) ?? 0) }))
    .filter(({ left }) => left > 0)
    .map((one) => ({ ...one, verdict: judge({ ...one.line.candidate, purpose, dayOfUse: day, today }) }))
    .filter(({ verdict }) => verdict.word === 'stop')
    .sort((a, b) => ((a.verdict.governing?.lastGoodDay ?? '') < (b.verdict.governing?.lastGoodDay ?? '') ? 1 : -1))[0];
}

function ofPiece(
  { line, dry }: PieceToJudge,
  day: CalendarDate,
  stepId: number | null,
  stock: StockOfJob,
): StockVerdict {
  const common = {
    key: `piece ${line.stockId}`,
    stepId,
    day,
    of: 'piece' as const,
    label: line.label,
    name: `${line.species} ${line.form}`,
    dryOn: dry.known ? dry.dates.likely : null,
  };
  const stops = judgePiece(line.facts, stock.today, stock.jobId).reasons.some(({ weight }) => weight === 'stop');
  if (stops) return { ...common, word: 'stop', why: 'held' };
  if (line.form === 'sheet') return { ...common, word: 'use', why: 'no-reading-asked' };
  if (!dry.known) return { ...common, word: 'care', why: 'dry-unknown' };
  const { likely, latest } = dry.dates;
  if (likely === null || likely > day) return { ...common, word: 'stop', why: 'dry-late' };
  if (latest === null || latest > day) return { ...common, word: 'care', why: 'dry-unsure' };
  return { ...common, word: 'use', why: 'dry' };
}
