import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { OwnLabelKind } from '@/shared/scan-codes/own-label';
import { readScan } from '@/shared/scan-codes/read-scan';
import type { Gs1Reading, Malformed, ScanInput } from '@/shared/scan-codes/scan-reading';

/** What a label said beside the product: lot, dates, and what it looked like. */
export type LabelSays = {
  gtin?: string;
  lot?: string;
  serial?: string;
  dates: Gs1Reading['dates'];
  measures: Gs1Reading['measures'];
};

/** What a scan means in this book, and so what can be done with it. */
export type ScanMeaning =
  | { kind: 'container' | 'piece'; label: string; stockId: number }
  | { kind: 'place'; label: string; name: string }
  | { kind: 'product'; code: string; productId: number; name: string; packageSize: number; says: LabelSays }
  /** A product's code that was never taught; `code` is what to teach. */
  | { kind: 'unknown-product'; code: string; says: LabelSays }
  /** A GS1 label without its product: only a lot or dates. */
  | { kind: 'label-without-product'; says: LabelSays }
  /** A label of ours that this book never gave. */
  | { kind: 'not-in-book'; label: string; labelKind: OwnLabelKind }
  | { kind: 'unknown'; code: string; malformed?: Malformed };

const NOTHING: LabelSays = { dates: {}, measures: [] };

/** Reads a scan and finds what it means in the book. Writes nothing. */
export async function lookUpScan(book: OpenBook, scan: ScanInput, today: CalendarDate): Promise<ScanMeaning> {
  const reading = readScan(scan, { today });
  if (reading.kind === 'own') return ownLabel(book, reading.code, reading.label);
  const says: LabelSays =
    reading.kind === 'gs1'
      ? {
          gtin: reading.gtin,
          lot: reading.lot,
          serial: reading.serial,
          dates: reading.dates,
          measures: reading.measures,
        }
      : NOTHING;
  const code = reading.kind === 'gs1' ? reading.canonical : reading.kind === 'gtin' ? reading.gtin14 : reading.code;
  if (code === undefined) return { kind: 'label-without-product', says };
  const taught = code === '' ? undefined : await taughtMeaning(book, code);
  if (taught) return taught.kind === 'product' ? { ...taught, code, says } : taught;
  if (reading.kind === 'gs1' || reading.kind === 'gtin') return { kind: 'unknown-product', code, says };
  return { kind: 'unknown', code, malformed: reading.kind === 'unknown' ? reading.malformed : undefined };
}

async function taughtMeaning(book: OpenBook, value: string) {
  const row = await book.read.code.findUnique({
    where: { value },
    select: {
      packageSize: true,
      product: { select: { id: true, name: true, packageSize: true } },
      place: { select: { label: true, name: true } },
      stock: { select: { id: true, label: true, kind: true } },
    },
  });
  if (row?.product) {
    const packageSize = Number(row.packageSize ?? row.product.packageSize);
    return { kind: 'product' as const, productId: row.product.id, name: row.product.name, packageSize };
  }
  if (row?.place) return { kind: 'place' as const, ...row.place };
  if (row?.stock?.label) {
    const kind = row.stock.kind === 'piece' ? ('piece' as const) : ('container' as const);
    return { kind, label: row.stock.label, stockId: row.stock.id };
  }
  return undefined;
}

async function ownLabel(book: OpenBook, label: string, labelKind: OwnLabelKind): Promise<ScanMeaning> {
  if (labelKind === 'place') {
    const place = await book.read.place.findUnique({ where: { label }, select: { label: true, name: true } });
    return place ? { kind: 'place', ...place } : { kind: 'not-in-book', label, labelKind };
  }
  const [stock] = await book.read.$queryRaw<{ id: number }[]>`SELECT "id" FROM "Stock" WHERE "label" = ${label}`;
  if (!stock) return { kind: 'not-in-book', label, labelKind };
  return { kind: labelKind === 'container' ? 'container' : 'piece', label, stockId: stock.id };
}
