import type { OpenBook } from '@/prisma/open-book';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** A container as the ledger alone has it: by its movements and its promise lines, none of the kept balances. */
type LedgerTin = { id: number; label: string; left: number; promised: number; byJob: number[] };

/** What is in each container, and promised of it, all and by job. */
export async function tinsByLedger(
  book: OpenBook,
  labels: readonly string[],
  jobIds: readonly number[],
): Promise<LedgerTin[]> {
  const rows = await book.read.stock.findMany({
    where: { label: { in: [...labels] } },
    orderBy: { id: 'asc' },
    select: {
      id: true,
      label: true,
      movements: { select: { quantityDelta: true } },
      promiseLines: { select: { delta: true, jobId: true } },
    },
  });
  const sum = (list: readonly bigint[]) => Number(list.reduce((total, each) => total + each, 0n));
  return rows.map(({ id, label, movements, promiseLines }) => ({
    id,
    label: label ?? '',
    left: sum(movements.map(({ quantityDelta }) => quantityDelta)),
    promised: sum(promiseLines.map(({ delta }) => delta)),
    byJob: jobIds.map((jobId) => sum(promiseLines.flatMap((line) => (line.jobId === jobId ? [line.delta] : [])))),
  }));
}

/** Whether each piece is there, and the job it is in or for, by its movements in their order. */
export async function piecesByLedger(book: OpenBook, labels: readonly string[]) {
  const rows = await book.read.stock.findMany({
    where: { label: { in: [...labels] } },
    orderBy: { id: 'asc' },
    select: {
      label: true,
      movements: { orderBy: { id: 'asc' }, select: { quantityDelta: true, jobFromId: true, jobToId: true } },
    },
  });
  return rows.map(({ label, movements }) => ({
    label: label ?? '',
    left: movements.reduce((total, { quantityDelta }) => total + Number(quantityDelta), 0),
    jobId: movements.reduce<number | null>(
      (job, { jobFromId, jobToId }) => (jobFromId === jobToId ? job : jobToId),
      null,
    ),
  }));
}

export type LedgerSupply = { left: number; promised: number; until: CalendarDate };
export type LedgerDemand = { on: CalendarDate; goodTo: CalendarDate; amount: number };

/**
 * The curve of what can be promised, from what is in containers that end on known days and what others want of them: its
 * steps by the definition, each amount a largest flow from containers to demands. Shares no code with what it checks.
 */
export function curveByLedger(
  supplies: readonly LedgerSupply[],
  demands: readonly LedgerDemand[],
  today: CalendarDate,
) {
  const there = supplies.filter(({ left, until }) => left > 0 && until >= today);
  const days = [...new Set([today, ...there.map(({ until }) => addDays(until, 1))])].sort();
  return days.map((from) => {
    const good = there.filter(({ until }) => until >= from);
    const sum = (of: (one: LedgerSupply) => number) => good.reduce((total, one) => total + of(one), 0);
    const free = freeByLedger(there, demands, { on: from, goodTo: from });
    const [all, promised] = [sum(({ left }) => left), sum((one) => one.promised)];
    return { from, good: all, promised, kept: all - promised - free, free };
  });
}

/** How much more could be had for a day, good to another, and what others want of it be met no less. */
export function freeByLedger(
  supplies: readonly LedgerSupply[],
  demands: readonly LedgerDemand[],
  day: { on: CalendarDate; goodTo: CalendarDate },
): number {
  const more = { ...day, amount: supplies.reduce((total, { left }) => total + left, 0) };
  return largestFlow(supplies, [...demands, more]) - largestFlow(supplies, demands);
}

/** Ford and Fulkerson's augmenting paths, shortest first, over a matrix of what still fits. */
function largestFlow(supplies: readonly LedgerSupply[], demands: readonly LedgerDemand[]): number {
  const sink = 1 + supplies.length + demands.length;
  const room = Array.from({ length: sink + 1 }, () => new Array<number>(sink + 1).fill(0));
  const put = (from: number, to: number, amount: number) => {
    const row = room[from];
    if (row) row[to] = (row[to] ?? 0) + amount;
  };
  supplies.forEach(({ left, promised, until }, s) => {
    put(0, 1 + s, left - promised);
    demands.forEach(({ goodTo }, d) => {
      if (until >= goodTo) put(1 + s, 1 + supplies.length + d, left);
    });
  });
  for (const [d, { amount }] of demands.entries()) put(1 + supplies.length + d, sink, amount);
  for (let total = 0; ; ) {
    const cameBy = new Map<number, number>([[0, -1]]);
    for (const at of cameBy.keys())
      room[at]?.forEach((left, to) => {
        if (left > 0 && !cameBy.has(to)) cameBy.set(to, at);
      });
    if (!cameBy.has(sink)) return total;
    const path: [number, number][] = [];
    for (let to = sink; to !== 0; to = cameBy.get(to) ?? 0) path.push([cameBy.get(to) ?? 0, to]);
    const sent = Math.min(...path.map(([from, to]) => room[from]?.[to] ?? 0));
    for (const [from, to] of path) {
      put(from, to, -sent);
      put(to, from, sent);
    }
    total += sent;
  }
}
