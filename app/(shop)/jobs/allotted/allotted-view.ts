import { itemsOfTakes, type TakenItem } from '@/app/_server/allocation/items-of-takes';
import type { ReadAllocation } from '@/app/_server/allocation/read-allocation';
import { sayMoved } from '@/app/(shop)/jobs/allotted/say-moved';
import type { AllocationContainer, AllocationNeed, Take } from '@/shared/allocation/allocation-ask';
import { goodUntil } from '@/shared/allocation/good-until';
import { opensOf } from '@/shared/allocation/opens-of';
import { shortOf } from '@/shared/allocation/short-of';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

export type TinView = {
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

/** What one way gives a need: its tins, and what cannot be had. */
type OneWay = { tins: TinView[]; short: string };

type AllottedNeed = OneWay & {
  id: string;
  what: string;
  day: string;
  amount: string;
  /** What would be taken by hand where that is something else, and how far it differs; none where it is the same. */
  byHand: (OneWay & { differs: string }) | undefined;
};

export type AllottedJob = {
  jobId: number;
  name: string;
  needs: AllottedNeed[];
  /** What one press promises: as it was worked out, and as it would be taken by hand, where that is something else. */
  items: readonly TakenItem[];
  byHand: readonly TakenItem[] | undefined;
};

export type AllottedContext = { prefer: UnitSystem; today: CalendarDate; order: DateOrder; currency: string };

/** Who gets which tin, job by job in the order of their first day, in words; beside it who would get which by hand. */
export function allottedJobs(read: ReadAllocation, context: AllottedContext): AllottedJob[] {
  const { ask, allocation, byHand, stood } = read;
  const jobOf = new Map(stood.needs.map(({ need }) => [String(need.id), need]));
  const [best, hand] = [wayOf(read, allocation.takes, context), wayOf(read, byHand, context)];
  const [items, itemsByHand] = [itemsOfTakes(read, allocation.takes), itemsOfTakes(read, byHand)];
  const jobs = new Map<number, AllottedJob>();
  for (const need of [...ask.needs].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0))) {
    const facts = jobOf.get(need.id);
    if (!facts) continue;
    const { jobId, job: name } = facts;
    const job = jobs.get(jobId) ?? { jobId, name, needs: [], items: items.get(jobId) ?? [], byHand: undefined };
    const differs = sayMoved(need, { best: allocation.takes, byHand }, context);
    if (differs) job.byHand = itemsByHand.get(jobId) ?? [];
    job.needs.push({
      id: need.id,
      what: need.what,
      day: sayDays(need, context),
      amount: printQuantity(amountOf(need.unit, need.amount), need.unit, context),
      ...best(need),
      byHand: differs ? { ...hand(need), differs } : undefined,
    });
    jobs.set(jobId, job);
  }
  return [...jobs.values()];
}

/** "27 Nov"; "27 Nov, good to 29 Nov" where another lift or coat comes after it. */
function sayDays({ on, goodTo = on }: AllocationNeed, { today, order }: AllottedContext): string {
  const date = (day: CalendarDate) => sayDate(day, { order, today });
  return goodTo > on ? `${date(on)}, good to ${date(goodTo)}` : date(on);
}

/** One way to give out the tins, need by need. */
function wayOf({ ask, stood }: ReadAllocation, takes: readonly Take[], { prefer, today, order }: AllottedContext) {
  const tins = new Map(ask.containers.map((one) => [one.id, one]));
  const labels = new Map(stood.stock.map(({ stockId, label }) => [String(stockId), label]));
  const opened = new Map(opensOf(ask, takes).map(({ containerId, on }) => [containerId, on]));
  const short = new Map(shortOf(ask, takes).map(({ needId, amount }) => [needId, amount]));
  return (need: AllocationNeed): OneWay => {
    const say = (amount: number) => printQuantity(amountOf(need.unit, amount), need.unit, { prefer });
    const missing = short.get(need.id);
    const tinOf = (tin: AllocationContainer, amount: number): TinView => {
      const on = opened.get(tin.id);
      const until = on ? goodUntil(tin, on) : tin.lastGoodDay;
      return {
        containerId: tin.id,
        label: labels.get(tin.id) ?? '',
        code: tin.label,
        amount: say(amount),
        where: [tin.lotWords, tin.place].filter(Boolean).join(', '),
        until: until ? `${on ? 'once opened, ' : ''}good to ${sayDate(until, { order, today })}` : 'keeps',
        opens: on === need.on,
      };
    };
    return {
      short: missing ? `${say(missing)} of it cannot be had` : '',
      tins: takes.flatMap(({ needId, containerId, amount }) => {
        const tin = tins.get(containerId);
        return needId === need.id && tin ? [tinOf(tin, amount)] : [];
      }),
    };
  };
}
