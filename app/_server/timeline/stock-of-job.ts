import { type DryBy, dryBy, emcByPlace } from '@/app/_server/fits/dry-by';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import { type PieceLine, pieceLine, pieceSelect } from '@/app/_server/stock/load-piece';
import { readContainers } from '@/app/_server/stock/read-containers';
import { STANDS } from '@/app/_server/timeline/standing';
import { Prisma } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Purpose } from '@/shared/shelf-life/types/verdict';
import type { AmountOf, StockUnit } from '@/shared/units/stock-unit';
import { amountOf } from '@/shared/units/stock-unit';
import { WETTEST_TENTHS } from '@/shared/wood/judge-piece';

/** A material the job needs, in the unit its stock is counted in where that can be reckoned. */
export type NeedToJudge = {
  readonly id: number;
  readonly stepId: number | null;
  /** What it is called: the product, or the part of a system. */
  readonly name: string;
  readonly unit: StockUnit;
  readonly amount: AmountOf<StockUnit>;
  readonly colourShows: boolean;
  /** What is promised to this need of each container. */
  readonly promised: ReadonlyMap<number, number>;
  /** Containers it may come from, with what no other job was promised of each. */
  readonly from: readonly { readonly line: ContainerLine; readonly free: number; readonly density: number | null }[];
};

/** A piece of wood promised to the job, and when it will be dry. */
export type PieceToJudge = { readonly line: PieceLine; readonly dry: DryBy };

/** The stock that hangs on the days of a job, read once; judging it for other days asks nothing more. */
export type StockOfJob = {
  readonly jobId: number;
  readonly purpose: Purpose;
  readonly dayOfUse: CalendarDate;
  readonly today: CalendarDate;
  readonly needs: readonly NeedToJudge[];
  readonly pieces: readonly PieceToJudge[];
};

const MOST_CONTAINERS = 500;
const MOST_PIECES = 100;

/** Reads what the job needs, what is promised to it, and what else could be taken. */
export async function stockOfJob(
  book: OpenBook,
  job: { id: number; purpose: Purpose; dayOfUse: CalendarDate },
  today: CalendarDate,
): Promise<StockOfJob> {
  const tx = book.read;
  const [rows, pieceRows] = await Promise.all([
    tx.need.findMany({
      where: { jobId: job.id, kind: 'material', ...STANDS },
      orderBy: { id: 'asc' },
      select: {
        id: true,
        stepId: true,
        unit: true,
        amount: true,
        productId: true,
        systemId: true,
        resinPart: true,
        product: { select: { name: true } },
        system: { select: { name: true } },
        promiseLines: { select: { stockId: true, delta: true } },
        lift: { select: { weighed: { where: { entry: { reversedBy: null } }, select: { part: true, massMg: true } } } },
      },
    }),
    tx.piece.findMany({
      where: { stock: { ownerJobId: job.id, quantity: { gt: 0 } } },
      select: pieceSelect,
      orderBy: { stockId: 'asc' },
      take: MOST_PIECES,
    }),
  ]);
  const products = await tx.product.findMany({
    where: {
      OR: [
        { id: { in: [...new Set(rows.flatMap(({ productId }) => productId ?? []))] } },
        { systemId: { in: [...new Set(rows.flatMap(({ systemId }) => systemId ?? []))] } },
      ],
    },
    select: { id: true, densityGramsPerLitre: true, systemId: true, part: true },
  });
  const lines =
    products.length === 0
      ? []
      : await readContainers(
          tx,
          Prisma.sql`s."quantity" > 0 AND c."productId" IN (${Prisma.join(products.map(({ id }) => id))})`,
          { order: Prisma.sql`ORDER BY c."stockId"`, most: MOST_CONTAINERS },
        );
  const elsewhere = await tx.promised.findMany({
    where: { stockId: { in: lines.map(({ stockId }) => stockId) }, NOT: { jobId: job.id }, amount: { gt: 0 } },
    select: { stockId: true, amount: true },
  });
  const taken = new Map<number, number>();
  for (const { stockId, amount } of elsewhere) taken.set(stockId, (taken.get(stockId) ?? 0) + Number(amount));
  const productOf = new Map(products.map((product) => [product.id, product]));
  const pieces = pieceRows.map(pieceLine);
  const emc = await emcByPlace(book, pieces, today);
  return {
    jobId: job.id,
    purpose: job.purpose,
    dayOfUse: job.dayOfUse,
    today,
    needs: rows.map((row) => {
      const from = lines
        .filter(({ productId }) => {
          const product = productOf.get(productId);
          if (row.productId !== null) return productId === row.productId;
          return product?.systemId === row.systemId && product?.part === row.resinPart;
        })
        .map((line) => ({
          line,
          free: Math.max(0, line.left - (taken.get(line.stockId) ?? 0)),
          density: productOf.get(line.productId)?.densityGramsPerLitre ?? null,
        }));
      const promised = new Map<number, number>();
      for (const { stockId, delta } of row.promiseLines) {
        promised.set(stockId, (promised.get(stockId) ?? 0) + Number(delta));
      }
      const unit = row.unit as StockUnit;
      // What was weighed out for a lift that is not poured yet is not needed a second time.
      const weighed = (row.lift?.weighed ?? [])
        .filter(({ part }) => part === row.resinPart)
        .reduce((sum, { massMg }) => sum + Number(massMg), 0);
      return {
        id: row.id,
        stepId: row.stepId,
        name: row.product?.name ?? `${row.system?.name ?? ''}, part ${row.resinPart ?? ''}`,
        unit,
        amount: amountOf(unit, Math.max(0, Number(row.amount) - weighed)),
        colourShows: from.some(({ line }) => line.candidate.policy.colourShows),
        promised,
        from,
      };
    }),
    pieces: pieces.map((line) => ({
      line,
      dry: dryBy(line, emc.get(line.placeLabel ?? ''), { targetTenths: WETTEST_TENTHS, by: today }),
    })),
  };
}
