import { instantOf } from '@/app/_server/ledger/instant-of';
import { Prisma } from '@/prisma/generated/client';
import type { WriteTransaction } from '@/prisma/open-book';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { noonIn } from '@/shared/calendar/noon-in';
import { leavesHotRags } from '@/shared/hazards/self-heating';
import { MATERIAL_KIND_IDS } from '@/shared/shelf-life/material-kinds';

/** A finish that was taken today or yesterday and leaves rags that can catch fire. */
export type RagsOut = {
  entryId: number;
  productId: number;
  product: string;
  kind: string;
  job: string | null;
  on: CalendarDate;
};

/** What takes some out of a container without wetting a rag. */
const NO_RAGS = ['discarded', 'weighed', 'stocktake-posted', 'reversed', 'received'];
const KINDS = MATERIAL_KIND_IDS.filter(leavesHotRags);

/**
 * The oils and varnishes taken today or yesterday, newest first, since somebody last said that the rags are laid out.
 * Only containers whose last movement is that new are looked into, so that it does not grow with the book.
 */
export async function ragsOut(
  tx: Pick<WriteTransaction, 'movement' | 'entry' | '$queryRaw'>,
  { today, timeZone }: { today: CalendarDate; timeZone: string },
): Promise<RagsOut[]> {
  const since = addDays(today, -1);
  const containers = await tx.$queryRaw<{ stockId: number; writtenAt: unknown }[]>`
    SELECT s."id" AS "stockId", e."writtenAt"
    FROM "Product" p
    JOIN "Container" c ON c."productId" = p."id"
    JOIN "Stock" s ON s."id" = c."stockId"
    JOIN "Movement" m ON m."id" = s."lastMovementId"
    JOIN "Entry" e ON e."id" = m."entryId"
    WHERE p."kind" IN (${Prisma.join(KINDS)})`;
  // Finding the day of an instant is slow: the hour is only roughly midnight here, and the day is looked at below.
  const from = noonIn(timeZone, since).getTime() - 14 * 3_600_000;
  const lately = containers.filter(({ writtenAt }) => instantOf(writtenAt) >= from);
  if (lately.length === 0) return [];
  const taken = await tx.movement.findMany({
    where: {
      stockId: { in: lately.map(({ stockId }) => stockId) },
      quantityDelta: { lt: 0 },
      reversesId: null,
      reversedBy: null,
      entry: { kind: { notIn: NO_RAGS } },
    },
    orderBy: { id: 'desc' },
    take: 200,
    select: {
      entry: { select: { id: true, happenedAt: true, job: { select: { name: true } } } },
      stock: { select: { container: { select: { product: { select: { id: true, name: true, kind: true } } } } } },
    },
  });
  const out = taken.flatMap(({ entry, stock }): RagsOut[] => {
    const on = dateIn(timeZone, entry.happenedAt);
    const product = stock.container?.product;
    if (on < since || !product) return [];
    return [
      {
        entryId: entry.id,
        productId: product.id,
        product: product.name,
        kind: product.kind,
        job: entry.job?.name ?? null,
        on,
      },
    ];
  });
  const oldest = out.at(-1)?.entryId;
  if (oldest === undefined) return [];
  const laid = await tx.entry.findFirst({
    where: { id: { gt: oldest }, kind: 'rags-laid-out', reversedBy: null },
    orderBy: { id: 'desc' },
    select: { id: true },
  });
  return out.filter(({ entryId }) => entryId > (laid?.id ?? 0));
}
