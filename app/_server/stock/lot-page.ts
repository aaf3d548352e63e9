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
  const [containers, inspections] = await Promise.all([
    book.read.container.findMany({ where: { lotId }, select: judgeableSelect, orderBy: { stockId: 'asc' }, take: 500 }),
    inspectionsOf(book, lotId),
  ]);
  return {
    lotId,
    code: row.code,
    product: { id: row.product.id, name: row.product.name, maker: row.product.maker },
    policy: policyOf(row.product),
    dates: lotDatesOf(row),
    hold: row.stock.hold as HoldState,
    containers: containers.map(containerLine),
    inspections,
  };
}
