import { type PromiseCurve, promiseCurves } from '@/app/_server/needs/promise-curves';
import { type StandingNeed, standNeeds } from '@/app/_server/needs/stand-needs';
import { standingNeeds } from '@/app/_server/needs/standing-needs';
import { standingOf } from '@/app/_server/promises/standing-of';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { StockUnit } from '@/shared/units/stock-unit';

/** Something a job is promised that none of its needs asks for. */
type LoosePromise = { label: string; name: string; amount: number; unit: StockUnit };

/** What a job needs and how that stands: on hand, before a quote and after. */
export type NeedsOfJob = {
  needs: StandingNeed[];
  curves: PromiseCurve[];
  /** The names of the jobs that hold something it could use. */
  jobs: ReadonlyMap<number, { name: string; day: CalendarDate }>;
  loose: LoosePromise[];
  /** Something free would be promised by one press. */
  canReserve: boolean;
  /** It is promised something that it has not used. */
  canRelease: boolean;
};

/** The needs of a job set against the stock as it stands now. */
export async function readNeeds(
  book: OpenBook,
  jobId: number,
  head: { today: CalendarDate; currency: string },
): Promise<NeedsOfJob> {
  const tx = book.read;
  const own = await standNeeds(tx, await standingNeeds(tx, { jobId }), head);
  const otherIds = [...new Set(own.needs.flatMap(({ standing }) => standing.elsewhere.map((each) => each.jobId)))];
  const [curves, others, standing, pieces] = await Promise.all([
    promiseCurves(tx, jobId, own, head),
    tx.job.findMany({ where: { id: { in: otherIds } }, select: { id: true, name: true, dayOfUse: true } }),
    standingOf(tx, { jobId }),
    tx.piece.findMany({
      where: { stock: { ownerJobId: jobId, quantity: { gt: 0 } } },
      orderBy: { stockId: 'asc' },
      select: { stockId: true, species: true, form: true, stock: { select: { label: true } } },
    }),
  ]);
  const placed = new Map<number, number>();
  for (const { standing: each } of own.needs)
    for (const part of [...each.reserved, ...each.failing])
      placed.set(part.stockId, (placed.get(part.stockId) ?? 0) + part.stockAmount);
  const held = new Map<number, number>();
  for (const each of standing) held.set(each.stockId, (held.get(each.stockId) ?? 0) + each.amount);
  const beyond = [...held].filter(([stockId, amount]) => amount > (placed.get(stockId) ?? 0));
  const containers = await tx.container.findMany({
    where: { stockId: { in: beyond.map(([stockId]) => stockId) } },
    select: { stockId: true, product: { select: { name: true, unit: true } }, stock: { select: { label: true } } },
  });
  const loose = [
    ...pieces
      .filter((piece) => !placed.has(piece.stockId))
      .map(
        (piece): LoosePromise => ({
          label: piece.stock.label ?? '',
          name: `${piece.species} ${piece.form}`,
          amount: 1,
          unit: 'piece',
        }),
      ),
    ...containers.map(
      (row): LoosePromise => ({
        label: row.stock.label ?? '',
        name: row.product.name,
        amount: (held.get(row.stockId) ?? 0) - (placed.get(row.stockId) ?? 0),
        unit: row.product.unit as StockUnit,
      }),
    ),
  ];
  return {
    needs: own.needs,
    curves,
    jobs: new Map(others.map((job) => [job.id, { name: job.name, day: job.dayOfUse as CalendarDate }])),
    loose,
    canReserve: own.needs.some((each) => each.standing.have.length > 0),
    canRelease: standing.length > 0 || pieces.length > 0,
  };
}
