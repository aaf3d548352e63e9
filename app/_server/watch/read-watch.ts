import { type ContainerLine, containerLine, judgeableSelect } from '@/app/_server/stock/judgeable';
import { type PieceLine, pieceLine, pieceSelect } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { daysBetween } from '@/shared/calendar/days-between';
import { judge } from '@/shared/shelf-life/judge';
import type { Verdict } from '@/shared/shelf-life/types/verdict';

export type Watched = { line: ContainerLine; verdict: Verdict };

/** What needs attention. A container stands in the first list that fits it. */
export type Watch = {
  onHold: Watched[];
  /** Spoilt, or past its limit. */
  expired: Watched[];
  /** Its limit falls within the next 60 days, or within the material's own care window. */
  expiring: Watched[];
  /** Opened more than 60 days ago and not touched since. */
  forgotten: (Watched & { openedDays: number })[];
  /** No limit is known. */
  undated: Watched[];
  /** Dates a code gave that no person has confirmed. */
  unconfirmed: Watched[];
  heldPieces: PieceLine[];
  /** How many containers are in the shop, and how many of them were looked at. */
  containers: number;
  looked: number;
};

const SOON_DAYS = 60;
const FORGOTTEN_DAYS = 60;
const MOST = 5000;

/** Judges every container in the shop as for a client job today, and sorts out what needs attention. */
export async function readWatch(book: OpenBook, today: CalendarDate): Promise<Watch> {
  const watch: Watch = {
    onHold: [],
    expired: [],
    expiring: [],
    forgotten: [],
    undated: [],
    unconfirmed: [],
    heldPieces: [],
    containers: await book.read.stock.count({ where: { kind: 'container', quantity: { gt: 0 } } }),
    looked: 0,
  };
  const rows = await book.read.container.findMany({
    where: { stock: { quantity: { gt: 0 } } },
    orderBy: { stockId: 'asc' },
    take: MOST,
    select: judgeableSelect,
  });
  watch.looked = rows.length;
  const lines = rows.map(containerLine);
  const touched = await lastTouched(
    book,
    lines.filter((line) => line.candidate.container.opened).map((line) => line.stockId),
  );
  const soon = addDays(today, SOON_DAYS);
  for (const line of lines) {
    const verdict = judge({ ...line.candidate, purpose: 'client', dayOfUse: today, today });
    const codes = new Set(verdict.reasons.map((reason) => reason.code));
    const watched = { line, verdict };
    const opened = line.candidate.container.opened;
    const openedDays = opened ? daysBetween(opened.on, today) : 0;
    const untouched = (touched.get(line.stockId) ?? 0) <= Date.parse(addDays(today, -FORGOTTEN_DAYS));
    if (codes.has('on-hold') || codes.has('quarantine') || codes.has('recalled')) watch.onHold.push(watched);
    else if (
      codes.has('past-limit') ||
      codes.has('gelled') ||
      codes.has('skinned-through') ||
      codes.has('frozen-ruined')
    ) {
      watch.expired.push(watched);
    } else if (codes.has('limit-near') || (verdict.governing && verdict.governing.lastGoodDay <= soon))
      watch.expiring.push(watched);
    else if (opened && openedDays > FORGOTTEN_DAYS && untouched) watch.forgotten.push({ ...watched, openedDays });
    else if (codes.has('date-unknown') || codes.has('inspection-failed')) watch.undated.push(watched);
    else if (codes.has('date-unconfirmed')) watch.unconfirmed.push(watched);
  }
  const byLimit = (a: Watched, b: Watched) =>
    (a.verdict.governing?.lastGoodDay ?? '').localeCompare(b.verdict.governing?.lastGoodDay ?? '');
  watch.expiring.sort(byLimit);
  watch.expired.sort(byLimit);
  watch.forgotten.sort((a, b) => b.openedDays - a.openedDays);
  const held = await book.read.piece.findMany({
    where: { stock: { hold: { not: 'free' }, quantity: { gt: 0 } } },
    select: pieceSelect,
    take: 200,
  });
  watch.heldPieces = held.map(pieceLine);
  return watch;
}

/** When each thing was last moved, as milliseconds. */
async function lastTouched(book: OpenBook, stockIds: number[]): Promise<Map<number, number>> {
  const rows = await book.read.stock.findMany({
    where: { id: { in: stockIds } },
    select: { id: true, lastMovementId: true },
  });
  const movements = await book.read.movement.findMany({
    where: { id: { in: rows.map((row) => row.lastMovementId) } },
    select: { stockId: true, entry: { select: { happenedAt: true } } },
  });
  return new Map(movements.map((row) => [row.stockId, row.entry.happenedAt.getTime()]));
}
