import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { TreatmentKind } from '@/shared/shelf-life/conditions-after';

export type TreatmentLine = {
  id: number;
  label: string;
  kind: TreatmentKind;
  doneOn: CalendarDate;
  tenthsC: number | null;
  minutes: number | null;
  note: string;
  who: string;
};

const MOST = 100;

/** What was done to a container, or to any container of a lot, newest first; what was undone is left out. */
export async function treatmentsOf(
  book: OpenBook,
  of: { stockId: number } | { lotId: number },
): Promise<TreatmentLine[]> {
  const rows = await book.read.treatment.findMany({
    where: {
      entry: { reversedBy: null },
      ...('stockId' in of ? { stockId: of.stockId } : { stock: { container: { lotId: of.lotId } } }),
    },
    orderBy: { id: 'desc' },
    take: MOST,
    select: {
      id: true,
      kind: true,
      doneOn: true,
      tenthsC: true,
      minutes: true,
      note: true,
      stock: { select: { label: true } },
      entry: { select: { who: true } },
    },
  });
  return rows.map(({ stock, entry, ...row }) => ({
    ...row,
    kind: row.kind as TreatmentKind,
    doneOn: row.doneOn as CalendarDate,
    label: stock.label ?? '',
    who: entry.who,
  }));
}
