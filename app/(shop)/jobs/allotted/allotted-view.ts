import type { ReadAllocation } from '@/app/_server/allocation/read-allocation';
import type { AllocationContainer, AllocationNeed, Take } from '@/shared/allocation/allocation-ask';
import { compareAllocations } from '@/shared/allocation/compare-allocations';
import { goodUntil } from '@/shared/allocation/good-until';
import { measureAllocation } from '@/shared/allocation/measure-allocation';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import type { CurrencyCode } from '@/shared/units/currency';
import { minorUnits } from '@/shared/units/minor-units';
import { printMoney } from '@/shared/units/print-money';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

type TinView = {
  containerId: string;
  label: string;
  code: string;
  amount: string;
  /** "lot 25F118, Cabinet 2". */
  where: string;
  /** "good to 4 Feb"; "opened on 3 Dec it is good to 3 Jan". */
  until: string;
  opens: boolean;
};

type AllottedNeed = { id: string; what: string; day: string; amount: string; tins: TinView[]; short: string };

export type AllottedJob = {
  jobId: number;
  name: string;
  needs: AllottedNeed[];
  /** What one press promises. */
  items: { label: string; amount: number; needId: number }[];
};

type Context = { prefer: UnitSystem; today: CalendarDate; order: DateOrder; currency: string };

/** Who gets which tin, job by job in the order of their first day, in words. */
export function allottedJobs(read: ReadAllocation, context: Context): AllottedJob[] {
  const { ask, allocation, stood } = read;
  const tins = new Map(ask.containers.map((one) => [one.id, one]));
  const stock = new Map(stood.stock.map((one) => [String(one.stockId), one]));
  const opened = new Map(allocation.opens.map(({ containerId, on }) => [containerId, on]));
  const jobOf = new Map(stood.needs.map(({ need }) => [String(need.id), need]));
  const jobs = new Map<number, AllottedJob>();
  for (const need of [...ask.needs].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0))) {
    const facts = jobOf.get(need.id);
    if (!facts) continue;
    const takes = allocation.takes.filter(({ needId }) => needId === need.id);
    const job = jobs.get(facts.jobId) ?? { jobId: facts.jobId, name: facts.job, needs: [], items: [] };
    jobs.set(facts.jobId, job);
    job.needs.push(needView(need, takes, { tins, stock, opened, short: allocation.short, ...context }));
    for (const { containerId, amount } of takes) {
      const one = stock.get(containerId);
      const tin = tins.get(containerId);
      if (!one || !tin) continue;
      // Back into the unit it is kept in, rounded up: promised is never less than needed, and never more than is there.
      const whole = tin.unit === one.unit ? amount : Math.min(one.left, Math.ceil((amount * one.left) / tin.left));
      job.items.push({ label: one.label, amount: whole, needId: facts.id });
    }
  }
  return [...jobs.values()];
}

type NeedContext = Context & {
  tins: ReadonlyMap<string, AllocationContainer>;
  stock: ReadonlyMap<string, { label: string }>;
  opened: ReadonlyMap<string, CalendarDate>;
  short: ReadAllocation['allocation']['short'];
};

function needView(need: AllocationNeed, takes: readonly Take[], context: NeedContext): AllottedNeed {
  const { prefer, today, order, tins, opened } = context;
  const say = (amount: number) => printQuantity(amountOf(need.unit, amount), need.unit, { prefer });
  const short = context.short.find(({ needId }) => needId === need.id);
  return {
    id: need.id,
    what: need.what,
    day: sayDate(need.on, { order, today }),
    amount: say(need.amount),
    short: short ? `${say(short.amount)} of it cannot be had` : '',
    tins: takes.flatMap(({ containerId, amount }) => {
      const tin = tins.get(containerId);
      if (!tin) return [];
      const on = opened.get(containerId);
      const until = on ? goodUntil(tin, on) : tin.lastGoodDay;
      return [
        {
          containerId,
          label: context.stock.get(containerId)?.label ?? '',
          code: tin.label,
          amount: say(amount),
          where: [tin.lotWords, tin.place].filter(Boolean).join(', '),
          until: until ? `${on ? 'once opened, ' : ''}good to ${sayDate(until, { order, today })}` : 'keeps',
          opens: on === need.on,
        },
      ];
    }),
  };
}

export type Compared = { term: string; best: string; byHand: string }[];

/** The best way and a careful hand's beside each other, in the order in which they count. */
export function comparedView({ ask, allocation, byHand }: ReadAllocation, { currency }: Context): Compared {
  const hand = measureAllocation(ask, byHand);
  const best = allocation.measures;
  const short = (measures: typeof best) =>
    measures.short.length === 0
      ? 'nothing'
      : `${measures.short.length} ${measures.short.length === 1 ? 'day' : 'days'}`;
  const waste = ({ waste: amount, wasteBy }: typeof best) =>
    wasteBy === 'value'
      ? printMoney(minorUnits(Math.round(amount / 1e6)), currency as CurrencyCode)
      : amount === 0
        ? 'none'
        : `${Math.round(amount / 1e5) / 10} kg or L`;
  return [
    { term: 'Short on', best: short(best), byHand: short(hand) },
    { term: 'Surfaces of more than one lot', best: String(best.splitSurfaces), byHand: String(hand.splitSurfaces) },
    { term: 'Passes its limit unused', best: waste(best), byHand: waste(hand) },
    { term: 'Sealed tins opened', best: String(best.opened), byHand: String(hand.opened) },
  ];
}

/** Which of the two is better, in one sentence. */
export function saidDifference({ ask, allocation, byHand }: ReadAllocation): string {
  const { better } = compareAllocations(ask, allocation.takes, byHand);
  if (better === 'alike') return 'Taking what expires first, tin by tin, comes to the same.';
  return 'Taking what expires first, tin by tin, is worse in the first line that differs.';
}
