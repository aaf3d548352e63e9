import type { ContainerLine } from '@/app/_server/stock/judgeable';
import { type PieceLine, pieceLine, pieceSelect } from '@/app/_server/stock/load-piece';
import { containersToJudge } from '@/app/_server/watch/containers-to-judge';
import { FORGOTTEN_DAYS, WATCH_LISTS, type WatchList, watchListOf } from '@/app/_server/watch/watch-list';
import type { OpenBook } from '@/prisma/open-book';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { daysBetween } from '@/shared/calendar/days-between';
import { judge } from '@/shared/shelf-life/judge';
import type { Verdict } from '@/shared/shelf-life/types/verdict';
import { shareOfCost } from '@/shared/units/share-of-cost';

/** Containers of one lot that need the same thing for the same reason; most often one. */
export type Watched = {
  /** The first of them. */
  line: ContainerLine;
  verdict: Verdict;
  count: number;
  openedDays?: number;
  /** What is left of them has cost, minor units of the book's currency, as far as it is known. */
  costMinor: number;
};

/** One list: its groups, the most urgent first, and how many containers they are in all. */
type WatchedList = { groups: Watched[]; containers: number; costMinor: number };

/** What needs attention. A container stands in the first list that fits it. */
export type Watch = {
  lists: Record<WatchList, WatchedList>;
  heldPieces: PieceLine[];
  heldPieceCount: number;
  /** How many containers are in the shop; every one of them was looked at. */
  containers: number;
};

const MOST_PIECES = 100;

/** Looks at every container in the shop as for a client's piece today, and sorts out what needs attention. */
export async function readWatch(
  book: OpenBook,
  { today, timeZone, currency }: { today: CalendarDate; timeZone: string; currency?: string },
): Promise<Watch> {
  const held = { stock: { hold: { not: 'free' }, quantity: { gt: 0 } } };
  const [toJudge, containers, pieces, heldPieceCount] = await Promise.all([
    containersToJudge(book, today),
    book.read.stock.count({ where: { kind: 'container', quantity: { gt: 0 } } }),
    book.read.piece.findMany({ where: held, select: pieceSelect, take: MOST_PIECES, orderBy: { stockId: 'asc' } }),
    book.read.piece.count({ where: held }),
  ]);
  const longAgo = addDays(today, -FORGOTTEN_DAYS);
  const groups = new Map<string, Watched & { list: WatchList }>();
  for (const { line, movedAt, cost } of toJudge) {
    const verdict = judge({ ...line.candidate, purpose: 'client', dayOfUse: today, today });
    const openedOn = line.candidate.container.opened?.on;
    // Finding the day of an instant is slow, and matters only for what has stood open for long.
    const movedOn = openedOn && openedOn < longAgo && movedAt ? dateIn(timeZone, new Date(movedAt)) : undefined;
    const list = watchListOf(verdict, { openedOn, movedOn, today });
    if (!list) continue;
    const key = groupKey(list, line, verdict);
    const known = groups.get(key);
    const costMinor = cost?.currency === currency ? costOfLeft(line, cost?.minor) : 0;
    if (known) {
      known.count += 1;
      known.costMinor += costMinor;
    } else
      groups.set(key, {
        list,
        line,
        verdict,
        count: 1,
        costMinor,
        openedDays: openedOn ? daysBetween(openedOn, today) : undefined,
      });
  }
  const lists = Object.fromEntries(
    WATCH_LISTS.map((list) => [list, { groups: [], containers: 0, costMinor: 0 }]),
  ) as unknown as Watch['lists'];
  for (const { list, ...group } of groups.values()) {
    lists[list].groups.push(group);
    lists[list].containers += group.count;
    lists[list].costMinor += group.costMinor;
  }
  for (const list of WATCH_LISTS) lists[list].groups.sort(ORDER[list]);
  return { lists, heldPieces: pieces.map(pieceLine), heldPieceCount, containers };
}

const costOfLeft = ({ left, size }: ContainerLine, minor = 0n) =>
  size > 0 ? shareOfCost(minor, { left: BigInt(left), size: BigInt(size) }) : 0;

/** What is the lot's own matter is one line, however many containers it has; what is the container's is a line each. */
function groupKey(list: WatchList, line: ContainerLine, verdict: Verdict): string {
  const worst = verdict.reasons[0];
  // A lot that is held is one matter, whenever each of its containers would end.
  if (list === 'on-hold' && worst && 'scope' in worst && worst.scope === 'lot') {
    return `${list} lot ${line.lotId} ${worst.code}`;
  }
  const ofLot =
    list === 'undated' ||
    list === 'unconfirmed' ||
    list === 'retest' ||
    // Once opened, each has a day of its own.
    ((list === 'expired' || list === 'expiring') && !line.candidate.container.opened);
  return ofLot
    ? `${list} lot ${line.lotId} ${worst?.code} ${verdict.governing?.lastGoodDay}`
    : `${list} ${line.stockId}`;
}

const lastGoodDay = (one: Watched) => one.verdict.governing?.lastGoodDay ?? '';
const byLimit = (a: Watched, b: Watched) =>
  lastGoodDay(a).localeCompare(lastGoodDay(b)) || a.line.stockId - b.line.stockId;
const byName = (a: Watched, b: Watched) =>
  a.line.product.localeCompare(b.line.product) || a.line.stockId - b.line.stockId;

const ORDER: Record<WatchList, (a: Watched, b: Watched) => number> = {
  'on-hold': byName,
  spoilt: byName,
  retest: byLimit,
  expired: byLimit,
  expiring: byLimit,
  forgotten: (a, b) => (b.openedDays ?? 0) - (a.openedDays ?? 0) || a.line.stockId - b.line.stockId,
  undated: byName,
  unconfirmed: byName,
};
