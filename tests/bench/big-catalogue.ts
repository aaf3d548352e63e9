import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { gtinCheckDigit } from '@/shared/scan-codes/gtin-check-digit';
import { pick } from '../support/scan-codes/seeded-random';
import type { BigLedger } from './big-ledger';

export type BigProduct = {
  id: number;
  name: string;
  maker: string;
  unit: string;
  packageSize: number;
  /** Sealed life, days. */
  lifeDays: number;
};

const PRODUCTS = 300;
const PLACES = 60;
const KINDS = ['resin-a', 'resin-b', 'hardwax-oil', 'varnish', 'waterborne', 'pva', 'pigment', 'abrasive'] as const;
const SAY = {
  'resin-a': 'Casting resin part A',
  'resin-b': 'Hardener part B',
  'hardwax-oil': 'Hardwax oil',
  varnish: 'Varnish',
  waterborne: 'Waterborne lacquer',
  pva: 'Wood glue',
  pigment: 'Pigment paste',
  abrasive: 'Abrasive discs',
} as const;
const MAKERS = ['Tarn', 'Ember Works', 'Northlight', 'Fenland', 'Corrie', 'Quayside'];
const SHADES = ['clear', 'amber', 'smoke', 'satin', 'matt', 'gloss', 'slow', 'fast', 'thin', 'thick'];

/** The products with their codes, the places and the jobs of a big book. */
export function addCatalogue(
  ledger: BigLedger,
  random: () => number,
  { today, jobs }: { today: CalendarDate; jobs: number },
): { products: BigProduct[]; places: number[]; jobs: number } {
  const places: number[] = [];
  for (let nr = 0; nr < PLACES; nr += 1) {
    const parentId = nr < 6 ? null : (places[nr % 6] ?? null);
    const kind = nr < 6 ? 'room' : pick(random, ['shelf', 'cabinet', 'rack']);
    places.push(ledger.addPlace(`${kind === 'room' ? 'Room' : 'Bay'} ${nr + 1}`, kind, parentId));
  }
  const products: BigProduct[] = [];
  for (let nr = 0; nr < PRODUCTS; nr += 1) {
    const kind = KINDS[nr % KINDS.length] ?? 'varnish';
    const part = kind === 'resin-a' ? 'A' : kind === 'resin-b' ? 'B' : null;
    const months = kind === 'abrasive' ? 60 : 12 + Math.floor(random() * 24);
    products.push(
      ledger.addProduct({
        name: `${SAY[kind]} ${pick(random, SHADES)} ${nr + 1}`,
        maker: pick(random, MAKERS),
        kind,
        unit: kind === 'abrasive' ? 'piece' : kind.startsWith('resin') ? 'mg' : 'uL',
        packageSize: kind === 'abrasive' ? 50 : pick(random, [500_000, 1_000_000, 2_500_000]),
        lifeMonths: months,
        lifeDays: months * 30,
        part,
        system: part ? `System ${Math.floor(nr / KINDS.length) + 1}` : null,
        gtin: gtinOf(nr),
      }),
    );
  }
  for (let nr = 0; nr < jobs; nr += 1) {
    const dayOfUse = addDays(today, Math.floor(random() * 900) - 840);
    ledger.addJob(`Table ${nr + 1}`, pick(random, ['client', 'client', 'own']), dayOfUse, dayOfUse >= today);
  }
  return { products, places, jobs };
}

/** A GTIN of the GS1 prefix 952, which is kept for examples, in its fourteen digits. */
function gtinOf(nr: number): string {
  const body = `952${String(nr).padStart(9, '0')}`;
  return `0${body}${gtinCheckDigit(body)}`;
}
