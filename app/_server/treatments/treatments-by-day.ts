import type { Pen } from '@/app/_server/ledger/write-entry';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import type { TreatmentKind } from '@/shared/shelf-life/conditions-after';
import type { Moment, TreatmentThen } from '@/shared/shelf-life/conditions-by-day';
import type { Condition } from '@/shared/shelf-life/types/container-facts';

/** What a treatment can take away, so that the day it was seen counts. */
const CLEARED: readonly Condition[] = ['crystals', 'settled'];

/** What was done to a container, and when what can be cleared was last seen in it, each with its day. */
export async function treatmentsByDay(
  pen: Pen,
  container: { stockId: number; receivedOn: string },
): Promise<{ past: TreatmentThen[]; seen: Map<Condition, Moment> }> {
  const rows = await pen.tx.treatment.findMany({
    where: { stockId: container.stockId, entry: { reversedBy: null } },
    orderBy: { id: 'asc' },
    select: { kind: true, doneOn: true, entryId: true },
  });
  const past = rows.map(({ kind, doneOn, entryId }) => ({
    kind: kind as TreatmentKind,
    on: doneOn as CalendarDate,
    entry: entryId,
  }));
  const seen = new Map<Condition, Moment>();
  for (const condition of CLEARED) {
    const sightings = [
      ...(condition === 'crystals' ? past.filter(({ kind }) => kind === 'crystals-seen') : []),
      ...(await notedOf(pen, container, condition)),
    ];
    const last = sightings.sort((a, b) => (a.on === b.on ? a.entry - b.entry : a.on < b.on ? -1 : 1)).at(-1);
    if (last) seen.set(condition, { on: last.on, entry: last.entry });
  }
  return { past, seen };
}

/** When a condition was noted other than by a treatment, which says its own day. */
async function notedOf(
  pen: Pen,
  { stockId, receivedOn }: { stockId: number; receivedOn: string },
  condition: Condition,
): Promise<Moment[]> {
  const rows = await pen.tx.movement.findMany({
    where: {
      stockId,
      conditionTo: { contains: condition },
      NOT: { conditionFrom: { contains: condition } },
      // What a reversal brought back was seen when it was first noted.
      reversesId: null,
      reversedBy: null,
      entry: { kind: { not: 'treated' } },
    },
    select: { entryId: true, entry: { select: { kind: true, happenedAt: true } } },
  });
  return rows.map(({ entryId, entry: { kind, happenedAt } }) => ({
    // What came in with it was seen when it came, whenever that was written.
    on: kind === 'received' ? (receivedOn as CalendarDate) : dateIn(pen.book.timeZone, happenedAt),
    entry: entryId,
  }));
}
