import type { TraceNode } from '@/app/_server/trace/name-things';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { TreatmentKind } from '@/shared/shelf-life/conditions-after';
import { type TraceKey, traceKey } from '@/shared/trace/trace-graph';

/** A test of a lot or of one container of it, or something that was done to a container. */
export type Bearing = { on: TraceKey; id: string; day: CalendarDate } & (
  | { of: 'test'; kind: 'inspection' | 'test-pour'; passed: boolean; result: string; together: string | null }
  | { of: 'treatment'; kind: TreatmentKind; note: string }
);

const MOST = 500;

/** The tests and treatments of the lots and containers of a trace, newest first; what was undone is left out. */
export async function whatBearsOn(book: OpenBook, nodes: readonly TraceNode[]): Promise<Bearing[]> {
  const ids = (kind: TraceNode['kind']) => nodes.flatMap((node) => (node.kind === kind ? node.id : []));
  const [lots, containers] = [ids('lot'), ids('container')];
  const isHere = new Set(containers);
  const newest = { orderBy: { id: 'desc' }, take: MOST } as const;
  const [tests, treatments] = await Promise.all([
    book.read.inspection.findMany({
      where: { lotId: { in: lots }, entry: { reversedBy: null } },
      ...newest,
      select: {
        id: true,
        lotId: true,
        containerId: true,
        kind: true,
        madeOn: true,
        passed: true,
        result: true,
        pairLot: { select: { code: true, product: { select: { name: true } } } },
      },
    }),
    book.read.treatment.findMany({
      where: { stockId: { in: containers }, entry: { reversedBy: null } },
      ...newest,
      select: { id: true, stockId: true, kind: true, doneOn: true, note: true },
    }),
  ]);
  const all: Bearing[] = [
    ...tests
      .filter(({ containerId }) => containerId === null || isHere.has(containerId))
      .map(
        ({ id, lotId, containerId, kind, madeOn, passed, result, pairLot }): Bearing => ({
          on: containerId === null ? traceKey('lot', lotId) : traceKey('container', containerId),
          id: `test ${id}`,
          day: madeOn as CalendarDate,
          of: 'test',
          kind: kind === 'test-pour' ? 'test-pour' : 'inspection',
          passed,
          result,
          together: pairLot && `${pairLot.product.name}${pairLot.code ? `, lot ${pairLot.code}` : ''}`,
        }),
      ),
    ...treatments.map(
      ({ id, stockId, kind, doneOn, note }): Bearing => ({
        on: traceKey('container', stockId),
        id: `treatment ${id}`,
        day: doneOn as CalendarDate,
        of: 'treatment',
        kind: kind as TreatmentKind,
        note,
      }),
    ),
  ];
  return all.sort((a, b) => (a.day < b.day ? 1 : a.day > b.day ? -1 : 0));
}
