import { partOf } from '@/app/_server/pull/paired-part';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import { readContainers } from '@/app/_server/stock/read-containers';
import { Prisma } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { assess } from '@/shared/shelf-life/assess';
import { heardInspections } from '@/shared/shelf-life/heard-inspections';
import type { Limit } from '@/shared/shelf-life/types/limit';

/** Two lots on hand that rest on a test pour of the two together, part A first, and the day it holds to. */
export type PairToRetest = {
  lots: readonly [PairLot, PairLot];
  until: CalendarDate;
  /** Of each sort of container that rests on it, or is the other half of one that does, the first. */
  stockIds: readonly number[];
};
export type PairLot = { lotId: number; productId: number; product: string; code: string | null };

const MOST = 500;
const MOST_CONTAINERS = 5000;

/**
 * Every pair of lots with something left of both, of which at least one rests on the test pour that the two passed
 * together: it is, or would be, past its own limit without it. What is held, spoilt or failed since is another matter.
 */
export async function pairsToRetest(book: OpenBook, today: CalendarDate): Promise<PairToRetest[]> {
  const onHand = { containers: { some: { stock: { quantity: { gt: 0 } } } } };
  const passed = await book.read.inspection.findMany({
    where: {
      passed: true,
      validUntil: { not: null },
      lot: { product: { part: 'A' }, ...onHand },
      pairLot: { is: onHand },
    },
    distinct: ['lotId', 'pairLotId'],
    orderBy: [{ lotId: 'asc' }, { pairLotId: 'asc' }],
    take: MOST,
    select: { lotId: true, pairLotId: true },
  });
  const pairs = passed.flatMap(({ lotId, pairLotId }) => (pairLotId === null ? [] : [{ lotId, pairLotId }]));
  if (pairs.length === 0) return [];
  const lotIds = [...new Set(pairs.flatMap(({ lotId, pairLotId }) => [lotId, pairLotId]))];
  const lines = await readContainers(
    book.read,
    Prisma.sql`c."lotId" IN (${Prisma.join(lotIds)}) AND s."quantity" > 0`,
    { order: Prisma.sql`ORDER BY c."stockId"`, most: MOST_CONTAINERS },
  );
  const ofLot = new Map<number, ContainerLine[]>();
  for (const line of lines) ofLot.set(line.lotId, [...(ofLot.get(line.lotId) ?? []), line]);
  return pairs.flatMap(({ lotId, pairLotId }) =>
    retestOf(unlike(ofLot.get(lotId)), unlike(ofLot.get(pairLotId)), today),
  );
}

function retestOf(as: readonly ContainerLine[], bs: readonly ContainerLine[], today: CalendarDate): PairToRetest[] {
  const stockIds = new Set<number>();
  let until: CalendarDate | undefined;
  for (const a of as) {
    for (const b of bs) {
      const limits = [restsOn(a, b, today), restsOn(b, a, today)];
      for (const limit of limits) {
        if (!limit) continue;
        until = until && until > limit.lastGoodDay ? until : limit.lastGoodDay;
        for (const { stockId } of [a, b]) stockIds.add(stockId);
      }
    }
  }
  const [a] = as;
  const [b] = bs;
  return a && b && until ? [{ lots: [lotOf(a), lotOf(b)], until, stockIds: [...stockIds] }] : [];
}

/** One of each sort: sealed tins of a lot that nothing was seen in stand alike, and one of them answers for all. */
function unlike(lines: readonly ContainerLine[] = []): ContainerLine[] {
  const sorts = new Map<string, ContainerLine>();
  for (const line of lines) {
    const { opened, conditions, hold, statedOpenedLife } = line.candidate.container;
    const own = heardInspections(line.candidate).map(({ id }) => id);
    const sort = JSON.stringify([opened, conditions, hold, statedOpenedLife, own]);
    if (!sorts.has(sort)) sorts.set(sort, line);
  }
  return [...sorts.values()];
}

/** The limit of the pair that one half rests on, mixed with the other; undefined where it needs none, or is no good anyway. */
function restsOn(line: ContainerLine, other: ContainerLine, today: CalendarDate): Limit | undefined {
  const { system } = other.candidate.policy;
  if (!system) return undefined;
  const { limits, reasons } = assess({
    ...line.candidate,
    purpose: 'client',
    dayOfUse: today,
    today,
    pairedWith: partOf(system, other),
  });
  if (reasons.some(({ weight, code }) => weight === 'stop' && code !== 'past-limit')) return undefined;
  return limits.find(({ effective, from }) => effective && from.together);
}

const lotOf = ({ lotId, productId, product, lotCode }: ContainerLine): PairLot => ({
  lotId,
  productId,
  product,
  code: lotCode,
});
