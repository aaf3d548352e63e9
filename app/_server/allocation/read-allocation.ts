import { allocationAskOf } from '@/app/_server/allocation/allocation-ask-of';
import { solveWithin } from '@/app/_server/allocation/solve-program';
import { type StoodNeeds, standNeeds } from '@/app/_server/needs/stand-needs';
import { standingNeeds } from '@/app/_server/needs/standing-needs';
import { newestSheet } from '@/app/_server/pours/sheet-of';
import type { OpenBook } from '@/prisma/open-book';
import { type Allocation, allocate } from '@/shared/allocation/allocate';
import type { AllocationAsk, Take } from '@/shared/allocation/allocation-ask';
import { firstExpiredByHand } from '@/shared/allocation/first-expired-by-hand';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';

/** How long one question may keep the server, seconds: what is not proved by then is said not to be. */
const SECONDS = 2;

/** The best way to give what is on hand to every open job, what a careful hand would do, and what both were worked out from. */
export type ReadAllocation = {
  ask: AllocationAsk;
  allocation: Allocation;
  byHand: readonly Take[];
  stood: StoodNeeds;
  /** Containers counted by volume with no density: they cannot be weighed out for a resin. */
  uncounted: readonly number[];
};

/** Allots resin and finish over all open jobs. Promises stay as they are; only what is not promised yet is allotted. */
export async function readAllocation(
  book: OpenBook,
  head: { today: CalendarDate; currency: string },
): Promise<ReadAllocation> {
  const tx = book.read;
  const needs = await standingNeeds(tx, { kind: 'material', job: { state: 'open' } });
  const stood = await standNeeds(tx, needs, head);
  const ids = stood.stock.map(({ stockId }) => stockId);
  const systemIds = [...new Set(needs.flatMap(({ system }) => system?.id ?? []))];
  const [places, sheets] = await Promise.all([
    tx.stock.findMany({ where: { id: { in: ids } }, select: { id: true, place: { select: { name: true } } } }),
    Promise.all(systemIds.map(async (id) => ({ id, sheet: await newestSheet(tx, id) }))),
  ]);
  const { ask, uncounted } = allocationAskOf(stood, new Map(places.map(({ id, place }) => [id, place?.name ?? ''])), {
    today: head.today,
    systemsOfSets: new Set(sheets.flatMap(({ id, sheet }) => (sheet?.facts.setsTogether ? id : []))),
  });
  const allocation = unwrap(await allocate(ask, solveWithin(SECONDS), { timeLimitSeconds: SECONDS }));
  return { ask, allocation, byHand: firstExpiredByHand(ask), stood, uncounted };
}
