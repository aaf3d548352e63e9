import Database from 'better-sqlite3';
import type { BookFiles } from '@/prisma/book-files';
import { prepareBook } from '@/prisma/prepare-book';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { pick, seededRandom } from '../support/scan-codes/seeded-random';
import { addCatalogue, type BigProduct } from './big-catalogue';
import { BigLedger, type BigThing } from './big-ledger';

export type BigBookSize = { containers: number; movements: number };

export type BigBook = {
  entries: number;
  movements: number;
  containers: number;
  pieces: number;
  /** Containers with something left, each with how much. */
  onHand: { label: string; left: number }[];
  jobs: number;
};

const SEED = 20_261_125;
/** The days before the last one over which the book was written. */
const SPAN_DAYS = 900;
const FLAW = ['crystals', 'haze', 'settled', 'darkened', 'stored-out-of-range'];

/**
 * Writes a whole book of a size in one transaction, by the rules the commands keep: labels minted in turn, entries
 * numbered without gaps, every movement from where the last one ended, the balances beside them, the search words.
 * The same seed gives the same book; only its dates move with `today`.
 */
export async function writeBigBook(files: BookFiles, size: BigBookSize, today: CalendarDate): Promise<BigBook> {
  await prepareBook(files);
  const db = new Database(files.database);
  // Nothing to roll back to: a book half made is thrown away.
  db.pragma('journal_mode = OFF');
  db.pragma('synchronous = OFF');
  db.pragma('cache_size = -1000000');
  const made = db.transaction(() => fill(db, size, today))();
  db.pragma('synchronous = FULL');
  db.pragma('journal_mode = WAL');
  db.close();
  return made;
}

function fill(db: Database.Database, size: BigBookSize, today: CalendarDate): BigBook {
  const random = seededRandom(SEED);
  const ledger = new BigLedger(db, random, addDays(today, -SPAN_DAYS));
  const { products, places, jobs } = addCatalogue(ledger, random, { today, jobs: Math.ceil(size.containers / 50) });
  const pieces = addPieces(ledger, random, places, Math.ceil(size.containers / 100));
  const live: BigThing[] = [];
  let containers = 0;
  while (containers < size.containers || ledger.movements < size.movements) {
    ledger.day = addDays(today, Math.floor((ledger.movements / size.movements) * SPAN_DAYS) - SPAN_DAYS);
    const dueContainers = (ledger.movements / size.movements) * size.containers;
    if (containers < size.containers && (containers <= dueContainers || live.length < 5)) {
      const count = Math.min(1 + Math.floor(random() * 6), size.containers - containers);
      live.push(...receive(ledger, random, pick(random, products), pick(random, places), count));
      containers += count;
    } else {
      const at = Math.floor(random() * live.length);
      const thing = live[at];
      if (!thing) throw new Error('Nothing is left to take from: the book needs more containers for its movements.');
      act(ledger, random, thing, places, jobs);
      if (thing.quantity === 0) {
        live[at] = live[live.length - 1] ?? thing;
        live.pop();
      }
    }
  }
  ledger.finish();
  return {
    entries: ledger.entries,
    movements: ledger.movements,
    containers,
    pieces,
    jobs,
    onHand: live.map(({ label, quantity }) => ({ label, left: quantity })),
  };
}

function receive(
  ledger: BigLedger,
  random: () => number,
  product: BigProduct,
  placeId: number,
  count: number,
): BigThing[] {
  const madeOn = addDays(ledger.day, -Math.floor(random() * 120));
  const code = `${ledger.day.slice(2, 4)}${pick(random, 'ABCDEFGH')}-${Math.floor(random() * 1e6)}`;
  const lotId = ledger.addLot(product, code, madeOn, random() < 0.6 ? addDays(madeOn, product.lifeDays) : null);
  const things = Array.from({ length: count }, () => ledger.addContainer(product, lotId));
  ledger.enter(
    'received',
    { productId: product.id },
    { lotId, containers: things.map(({ id, label }) => [id, label]) },
  );
  for (const thing of things) ledger.move(thing, { quantity: product.packageSize, placeId });
  if (random() < 0.05) ledger.inspect(product, lotId, random() < 0.8);
  return things;
}

/** One act on a container, as a working week mixes them: mostly pulls, some moves, now and then a flaw or a weighing. */
function act(ledger: BigLedger, random: () => number, thing: BigThing, places: number[], jobs: number): void {
  const kind = random();
  if (kind < 0.1) {
    const placeId = pick(random, places);
    if (placeId !== thing.placeId) {
      ledger.enter('moved', { placeId }, { label: thing.label });
      ledger.move(thing, { placeId });
      return;
    }
  }
  if (kind > 0.98 && thing.condition === '') {
    const condition = pick(random, FLAW);
    ledger.enter('condition-noted', {}, { label: thing.label });
    ledger.move(thing, { condition });
    return;
  }
  const portion = Math.ceil((thing.size / 9) * (0.5 + random()));
  const left = Math.max(0, thing.quantity - portion);
  if (kind > 0.9) {
    ledger.enter('weighed', { productId: thing.productId }, { label: thing.label, delta: left - thing.quantity });
    ledger.move(thing, { quantity: left });
    return;
  }
  ledger.pull(thing, 1 + Math.floor(random() * jobs), thing.quantity - left);
}

function addPieces(ledger: BigLedger, random: () => number, places: number[], count: number): number {
  const species = ['Walnut', 'White oak', 'Elm', 'Ash', 'Cherry', 'Sycamore'];
  for (let nr = 0; nr < count; nr += 1) {
    const piece = ledger.addPiece(pick(random, species), `F${1 + Math.floor(nr / 8)}`, (nr % 8) + 1);
    ledger.enter('received', {}, { pieces: [{ stockId: piece.id, label: piece.label }] });
    ledger.move(piece, { quantity: 1, placeId: pick(random, places) });
  }
  return count;
}
