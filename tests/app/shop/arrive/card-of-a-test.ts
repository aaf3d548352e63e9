import type { LabelSays } from '@/app/_server/codes/look-up-scan';
import type { Scanned } from '@/app/_server/codes/what-was-scanned';
import type { ArrivalProduct } from '@/app/_server/products/arrival-product';
import { type Card, newCard } from '@/app/(shop)/arrive/card';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';
import { readScan } from '@/shared/scan-codes/read-scan';
import { readCurrency } from '@/shared/units/currency';

export const TODAY = '2026-11-25' as CalendarDate;
export const day = (text: string) => text as CalendarDate;
export const SHOP = { today: TODAY, order: 'day-first', prefer: 'metric' } as const;
export const TYPING = { ...SHOP, currency: unwrap(readCurrency('USD')) };
/** GTIN-13 under the GS1 prefix 952, kept for demonstrations. */
export const GTIN = '09521234543213';

export const PRODUCT: ArrivalProduct = {
  productId: 7,
  name: 'Deep-pour resin, part A',
  maker: 'Tarn',
  kind: 'resin-a',
  unit: 'mg',
  packageSize: 2_500_000,
  policy: {
    kind: 'inspectable',
    statedLife: { count: 12, unit: 'month' },
    statedLifeBasis: 'data-sheet',
    openedLife: { count: 6, unit: 'month' },
    openedLifeBasis: 'data-sheet',
    careWindowDays: 14,
    freezingRuins: false,
    colourShows: true,
  },
  hazards: [],
  safetySheet: '',
  lots: [],
};

/** What a label in the bracketed form says, read as a scan of it is. */
export function saysOf(bracketed: string): LabelSays {
  const reading = readScan({ text: bracketed }, { today: TODAY });
  if (reading.kind !== 'gs1') throw new Error(`Not a GS1 label: ${bracketed}`);
  const { gtin, lot, serial, dates, measures } = reading;
  return { gtin, lot, serial, dates, measures };
}

/** A scan of the product's own code with more behind it: `(10)K26-114(17)270110`. */
export function scanOf(rest = '', product = PRODUCT): Scanned {
  return { kind: 'product', code: GTIN, product, says: saysOf(`(01)${GTIN}${rest}`) };
}

export const cardOf = (rest = '', change: Partial<Card> = {}): Card => ({
  ...newCard(PRODUCT, saysOf(`(01)${GTIN}${rest}`), { ...SHOP, placeLabel: '' }),
  ...change,
});
