import { holdWhy } from '@/app/_server/pull/hold-why';
import { type InspectionLine, inspectionsOf } from '@/app/_server/stock/container-page';
import {
  type ContainerLine,
  containerLine,
  judgeableSelect,
  lotDatesOf,
  policyOf,
  policySelect,
} from '@/app/_server/stock/judgeable';
import type { LotDatesInput } from '@/app/_server/stock/lot-dates';
import { type StillHeld, stillHeld } from '@/app/_server/trace/still-held';
import type { OpenBook } from '@/prisma/open-book';
import type { HoldState } from '@/shared/shelf-life/types/lot-facts';
import type { Policy } from '@/shared/shelf-life/types/policy';

export type LotPage = {
  lotId: number;
  code: string | null;
  product: { id: number; name: string; maker: string };
  policy: Policy;
  dates: LotDatesInput;
  hold: HoldState;
  /** What was written when the lot was held. */
  heldBecause: string;
  /** What presses of a trace still hold of the lot and its containers, with how much each holds in all. */
  held: (StillHeld & { inAll: number })[];
  containers: ContainerLine[];
  inspections: InspectionLine[];
};

/** Everything about one lot but its history. */
export async function lotPage(book: OpenBook, lotId: number): Promise<LotPage | undefined> {
  const row = await book.read.lot.findUnique({
    where: { stockId: lotId },
    include: { stock: { select: { hold: true } }, product: { select: policySelect } },
  });
  if (!row) return undefined;
  const hold = row.stock.hold as HoldState;
  const [containers, inspections, heldBecause] = await Promise.all([
    book.read.container.findMany({ where: { lotId }, select: judgeableSelect, orderBy: { stockId: 'asc' }, take: 500 }),
    inspectionsOf(book, lotId),
    holdWhy(book.read, lotId, hold),
  ]);
  return {
    lotId,
    code: row.code,
    product: { id: row.product.id, name: row.product.name, maker: row.product.maker },
    policy: policyOf(row.product),
    dates: lotDatesOf(row),
    hold,
    heldBecause,
    held: await heldByTraces(book, [lotId, ...containers.map(({ stockId }) => stockId)]),
    containers: containers.map(containerLine),
    inspections,
  };
}

async function heldByTraces(book: OpenBook, stockIds: readonly number[]): Promise<LotPage['held']> {
  const held = await stillHeld(book.read, { stockIds });
  const presses = [...new Set(held.map(({ entryId }) => entryId))];
  const counts = new Map(
    await Promise.all(
      presses.map(async (entryId) => [entryId, (await stillHeld(book.read, { entryId })).length] as const),
    ),
  );
  return held.map((each) => ({ ...each, inAll: counts.get(each.entryId) ?? 1 }));
}
