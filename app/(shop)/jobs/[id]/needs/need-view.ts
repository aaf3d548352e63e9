import type { BookHead } from '@/app/_server/book/read-book';
import type { JoinedNeeds } from '@/app/_server/needs/join-needs';
import type { NeedsOfJob } from '@/app/_server/needs/read-needs';
import { sayAmount, sayCost, sayNeed, sayPackages } from '@/app/(shop)/jobs/[id]/needs/say-need';
import { addDays } from '@/shared/calendar/add-days';
import { sayDate } from '@/shared/calendar/say-date';
import type { Part } from '@/shared/promise/material-need';
import type { CurrencyCode } from '@/shared/units/currency';
import { printMoney } from '@/shared/units/print-money';

type PartView = { label: string; words: string };
/** A row of the table: how much, and where it is. */
type RowView = { kind: RowKind; term: string; amount: string; share: number; parts: PartView[]; says: string };
type RowKind = 'used' | 'reserved' | 'failing' | 'have' | 'elsewhere' | 'arriving' | 'short';

/** What a job needs of one thing as the page shows it: everything in words, and the shares of its bar. */
export type NeedView = {
  /** The first need of it. */
  id: number;
  needs: { id: number; words: string; planned: boolean }[];
  amount: string;
  name: string;
  size: string;
  /** For which days, steps, parts and surfaces. */
  forWhat: string[];
  notes: string[];
  word: 'done' | 'kept' | 'free' | 'coming' | 'short';
  state: string;
  rows: RowView[];
  buy: { what: string; life: string; price: string } | null;
  cost: { term: string; value: string }[];
  mixed: boolean;
  uncounted: string[];
  /** What of its promises can be released. */
  held: { label: string; needId?: number }[];
  hasFree: boolean;
};

/** The standing of what a job needs of one thing, in words. */
export function needView(
  { needs, together: { need, used, standing, buy, cost } }: JoinedNeeds,
  jobs: NeedsOfJob['jobs'],
  head: BookHead,
): NeedView {
  const { units: prefer, dateOrder: order, today } = head;
  const currency = head.currency as CurrencyCode;
  const { amount, unit } = need;
  const say = (value: number, rounding: 'nearest' | 'down' | 'up' = 'nearest') =>
    unit === 'piece' && need.wood ? String(value) : sayAmount(value, unit, prefer, rounding);
  const date = (day: typeof today) => sayDate(day, { order, today });
  const sum = (parts: readonly { amount: number }[]) => parts.reduce((total, part) => total + part.amount, 0);
  const partsOf = (parts: readonly Part[]): PartView[] =>
    parts.map((part) => ({
      label: part.label,
      words: [
        need.wood || parts.length === 1 ? '' : say(part.amount, 'down'),
        part.lastGoodDay ? `good to ${date(part.lastGoodDay)}` : '',
      ]
        .filter(Boolean)
        .join(', '),
    }));
  const row = (kind: RowKind, term: string, value: number, parts: PartView[], says = ''): RowView[] =>
    value === 0 ? [] : [{ kind, term, amount: say(value), share: Math.min(1, value / amount), parts, says }];
  const elsewhere = standing.elsewhere.map(({ jobId, amount: held }) => {
    const job = jobs.get(jobId);
    return `${say(held)} for ${job?.name ?? 'another job'}${job ? `, ${date(job.day)}` : ''}`;
  });
  const reserved = sum(standing.reserved);
  const have = sum(standing.have);
  const arriving = sum(standing.arriving);
  const rows = [
    ...row('used', need.wood ? 'Taken' : 'Used', used, []),
    ...row('reserved', 'Promised to this job', reserved, partsOf(standing.reserved)),
    ...row('failing', 'Promised, but not good by then', sum(standing.failing), partsOf(standing.failing)),
    ...row('have', 'Have, free', have, partsOf(standing.have)),
    ...row(
      'arriving',
      'Arriving in time',
      arriving,
      [],
      standing.arriving.map((each) => `${say(each.amount)} on ${date(each.on)}`).join(', '),
    ),
    ...row('short', 'Short', standing.short, []),
    ...row('elsewhere', 'Reserved for another', sum(standing.elsewhere), [], elsewhere.join('; ')),
  ];
  const open = amount - used - reserved;
  const word =
    open <= 0 ? (used >= amount ? 'done' : 'kept') : standing.short > 0 ? 'short' : arriving > 0 ? 'coming' : 'free';
  const state = {
    done: need.wood ? 'Taken' : 'Used',
    kept: 'Promised',
    free: 'On hand, not promised',
    coming: 'Waits for an order',
    short: `${say(standing.short, 'up')} short`,
  }[word];
  const sayFor = ({ need: one }: JoinedNeeds['needs'][number]) => {
    // The card says what it is already.
    const name = one.product?.name ?? '';
    const short = (words: string) => words.replace(`${name}, `, '').replace(`${name} on `, '');
    const step = one.step === null ? 'day of use' : short(one.step);
    return [step, one.surface ? short(one.surface) : '', one.part ?? '']
      .filter((words, nr, all) => words && !all.slice(0, nr).some((before) => before.includes(words)))
      .join(', ');
  };
  // A lift that is poured before the last one needs what is good to the last: said where the two days differ.
  const sayDays = ({ need: { on, goodTo, stepDone, liftPoured } }: JoinedNeeds['needs'][number]) =>
    goodTo > on && !stepDone && !liftPoured ? `${date(on)}, good to ${date(goodTo)}` : date(on);
  return {
    id: need.id,
    needs: needs.map((each) => ({
      id: each.need.id,
      words: needs.length === 1 ? '' : `${say(each.need.amount)}, ${date(each.need.on)}, ${sayFor(each)}`,
      planned: each.need.liftId !== null,
    })),
    ...sayNeed(need, prefer),
    forWhat: needs.map((each) =>
      needs.length === 1
        ? `${sayDays(each)}, ${sayFor(each)}`
        : `${say(each.need.amount)} on ${sayDays(each)}, ${sayFor(each)}`,
    ),
    notes: [...new Set(needs.map((each) => each.need.note).filter(Boolean))],
    word,
    state,
    rows,
    buy: buy
      ? {
          what: `${buy.packages ? `${sayPackages(buy.packages, buy.unit, prefer)}${need.wood ? '' : ` of ${buy.product}`}` : buy.product}, here by ${date(buy.by)}`,
          life: buy.keeps
            ? ''
            : buy.careDays > 0
              ? `Good to ${date(buy.goodTo)} at the least; to ${date(addDays(buy.goodTo, buy.careDays))}, and it is no Care.`
              : `Good to ${date(buy.goodTo)} at the least.`,
          price:
            buy.price === undefined
              ? 'No price is in the book.'
              : `${printMoney(buy.price, currency)} at what was last paid${buy.lastPaidOn ? `, ${date(buy.lastPaidOn)}` : ''}.`,
        }
      : null,
    cost: [
      { term: 'In hand, as paid', value: reserved + have > 0 ? sayCost(cost.inHand, currency) : '' },
      { term: 'To come, as last paid', value: arriving + standing.short > 0 ? sayCost(cost.toCome, currency) : '' },
      {
        term: 'At risk',
        value: standing.short > 0 || standing.failing.length > 0 ? sayCost(cost.atRisk, currency) : '',
      },
    ].filter((each) => each.value !== ''),
    mixed: standing.lotsMixed,
    uncounted: [...standing.uncounted],
    held: needs.flatMap((each) =>
      [...each.standing.reserved, ...each.standing.failing].map(({ label }) => ({
        label,
        ...(need.wood ? {} : { needId: each.need.id }),
      })),
    ),
    hasFree: have > 0,
  };
}
