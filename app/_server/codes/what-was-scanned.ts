import { type LabelSays, lookUpScan, type ScanMeaning } from '@/app/_server/codes/look-up-scan';
import { type ArrivalProduct, arrivalProduct } from '@/app/_server/products/arrival-product';
import { loadContainer } from '@/app/_server/stock/load-container';
import { loadPiece } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import type { ScanInput } from '@/shared/scan-codes/scan-reading';
import type { Nanometres } from '@/shared/units/nanometres';
import type { AmountOf, StockUnit } from '@/shared/units/stock-unit';
import type { PieceForm } from '@/shared/wood/piece';

export type ScannedContainer = {
  kind: 'container';
  label: OwnLabelCode;
  product: string;
  maker: string;
  lotCode: string | null;
  lotId: number;
  productId: number;
  left: AmountOf<StockUnit>;
  unit: StockUnit;
  place: string | null;
};

export type ScannedPiece = {
  kind: 'piece';
  label: OwnLabelCode;
  species: string;
  form: PieceForm;
  lengthNm: Nanometres;
  thicknessNm: Nanometres;
  place: string | null;
  gone: boolean;
};

/** What a scan means, with what a screen needs to say it and to go on with it. */
export type Scanned =
  | Exclude<ScanMeaning, { kind: 'product' } | { kind: 'container' | 'piece' }>
  | { kind: 'product'; code: string; product: ArrivalProduct; says: LabelSays }
  | ScannedContainer
  | ScannedPiece;

/** Looks a scan up and reads what stands behind it. Writes nothing. */
export async function whatWasScanned(book: OpenBook, scan: ScanInput, today: CalendarDate): Promise<Scanned> {
  const meaning = await lookUpScan(book, scan, today);
  if (meaning.kind === 'product') {
    const product = await arrivalProduct(book, meaning.productId);
    if (!product) return { kind: 'unknown-product', code: meaning.code, says: meaning.says };
    const { code, says, packageSize } = meaning;
    return { kind: 'product', code, says, product: { ...product, packageSize } };
  }
  if ('stockId' in meaning) return thing(book, meaning.kind, meaning.label);
  return meaning;
}

async function thing(book: OpenBook, kind: 'container' | 'piece', asked: string): Promise<Scanned> {
  if (kind === 'container') {
    const line = await loadContainer(book.read, asked);
    if (!line) return { kind: 'not-in-book', label: asked, labelKind: 'container' };
    const { label, product, maker, lotCode, lotId, productId, left, unit, place } = line;
    return { kind, label, product, maker, lotCode, lotId, productId, left, unit, place };
  }
  const line = await loadPiece(book.read, asked);
  if (!line) return { kind: 'not-in-book', label: asked, labelKind: 'slab' };
  const { label, species, form, lengthNm, thicknessNm, place, facts } = line;
  return { kind, label, species, form, lengthNm, thicknessNm, place, gone: !facts.inStock };
}
