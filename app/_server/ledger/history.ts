import { entriesOf, type HistoryOf } from '@/app/_server/ledger/entries-of';
import { isChangeOfJob } from '@/app/_server/ledger/is-change-of-job';
import { restsOnItsEntry } from '@/app/_server/ledger/reversible-kinds';
import { hasFactsToUndo } from '@/app/_server/ledger/undo-facts';
import type { OpenBook } from '@/prisma/open-book';
import type { VerdictWord } from '@/shared/shelf-life/types/verdict';
import type { StockUnit } from '@/shared/units/stock-unit';

/** One line of a movement, ready to be said. */
export type HistoryMovement = {
  label: string | null;
  stockKind: string;
  unit: StockUnit | null;
  quantityDelta: number;
  placeFrom: string | null;
  placeTo: string | null;
  conditionFrom: string;
  conditionTo: string;
  holdFrom: string;
  holdTo: string;
  jobFrom: string | null;
  jobTo: string | null;
  openedFrom: string | null;
  openedTo: string | null;
};

/** One entry of the book, ready to be shown. */
export type HistoryEntry = {
  id: number;
  kind: string;
  /** ISO 8601 instants. */
  happenedAt: string;
  writtenAt: string;
  who: string;
  device: string;
  why: string;
  reference: string;
  verdict: VerdictWord | null;
  overridden: { madeOn: string; note: string } | null;
  job: { id: number; name: string } | null;
  product: string | null;
  place: string | null;
  /** The entry this one undoes. */
  reverses: number | null;
  /** The cut this one undid: which, and of which piece. */
  undidCut: { kind: string; label: string } | null;
  /** The entry that undid this one. */
  reversedBy: number | null;
  canReverse: boolean;
  movements: HistoryMovement[];
  /** How many movements it has beside these. */
  moreMovements: number;
  photos: string[];
};

const PAGE = 30;
/** An arrival of hundreds is one entry: so many of its movements are said, and how many more there are. */
const MOST_MOVEMENTS = 50;

/** Entries, newest first, a page at a time: `before` is the id of the last one seen. */
export async function history(
  book: OpenBook,
  of: HistoryOf,
  before?: number,
): Promise<{ entries: HistoryEntry[]; more: boolean }> {
  const ids = await entriesOf(book, of, before, PAGE + 1);
  const rows = await book.read.entry.findMany({
    where: { id: { in: ids.slice(0, PAGE) } },
    orderBy: { id: 'desc' },
    select: {
      id: true,
      kind: true,
      happenedAt: true,
      writtenAt: true,
      who: true,
      device: true,
      why: true,
      reference: true,
      verdict: true,
      reversesId: true,
      reverses: {
        select: { cut: { select: { kind: true, parent: { select: { stock: { select: { label: true } } } } } } },
      },
      reversedBy: { select: { id: true } },
      job: { select: { id: true, name: true } },
      product: { select: { name: true } },
      place: { select: { name: true } },
      overrideInspection: { select: { madeOn: true, note: true } },
      photos: { select: { file: true } },
      _count: { select: { movements: true, promiseLines: true } },
      movements: {
        orderBy: { id: 'asc' },
        take: MOST_MOVEMENTS,
        select: {
          quantityDelta: true,
          conditionFrom: true,
          conditionTo: true,
          holdFrom: true,
          holdTo: true,
          openedFrom: true,
          openedTo: true,
          placeFrom: { select: { name: true } },
          placeTo: { select: { name: true } },
          jobFrom: { select: { name: true } },
          jobTo: { select: { name: true } },
          stock: {
            select: { label: true, kind: true, container: { select: { product: { select: { unit: true } } } } },
          },
        },
      },
    },
  });
  const entries = rows.map(
    (row): HistoryEntry => ({
      id: row.id,
      kind: row.kind,
      happenedAt: row.happenedAt.toISOString(),
      writtenAt: row.writtenAt.toISOString(),
      who: row.who,
      device: row.device,
      why: row.why,
      reference: row.reference,
      verdict: row.verdict as VerdictWord | null,
      overridden: row.overrideInspection,
      job: row.job,
      product: row.product?.name ?? null,
      place: row.place?.name ?? null,
      reverses: row.reversesId,
      undidCut: row.reverses?.cut
        ? { kind: row.reverses.cut.kind, label: row.reverses.cut.parent.stock.label ?? '' }
        : null,
      reversedBy: row.reversedBy?.id ?? null,
      canReverse:
        row.reversedBy === null &&
        (row.movements.length + row._count.promiseLines > 0 || restsOnItsEntry(row) || hasFactsToUndo(row)) &&
        !isChangeOfJob(row) &&
        !row.reverses?.cut,
      movements: row.movements.map((line) => ({
        label: line.stock.label,
        stockKind: line.stock.kind,
        unit: (line.stock.container?.product.unit ??
          (line.stock.kind === 'piece' ? 'piece' : null)) as StockUnit | null,
        quantityDelta: Number(line.quantityDelta),
        placeFrom: line.placeFrom?.name ?? null,
        placeTo: line.placeTo?.name ?? null,
        conditionFrom: line.conditionFrom,
        conditionTo: line.conditionTo,
        holdFrom: line.holdFrom,
        holdTo: line.holdTo,
        jobFrom: line.jobFrom?.name ?? null,
        jobTo: line.jobTo?.name ?? null,
        openedFrom: line.openedFrom,
        openedTo: line.openedTo,
      })),
      moreMovements: row._count.movements - row.movements.length,
      photos: row.photos.map((photo) => photo.file),
    }),
  );
  return { entries, more: ids.length > PAGE };
}
