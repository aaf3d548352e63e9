import type Database from 'better-sqlite3';
import { searchWords } from '@/app/_server/find/search-words';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { writeOpened } from '@/shared/ledger/opened';
import { unwrap } from '@/shared/result/result';
import { mintOwnLabel } from '@/shared/scan-codes/mint-own-label';
import type { OwnLabelKind } from '@/shared/scan-codes/own-label';
import type { BigProduct } from './big-catalogue';

/** A thing that moves, with its balance as it stands. */
export type BigThing = {
  id: number;
  label: string;
  productId: number | null;
  size: number;
  quantity: number;
  placeId: number | null;
  condition: string;
  opened: string | null;
  lastMovementId: number;
};

type Change = Partial<Pick<BigThing, 'quantity' | 'placeId' | 'condition' | 'opened'>>;
type EntryFields = { jobId?: number; productId?: number | null; placeId?: number; stockId?: number; verdict?: string };
type Row = Record<string, string | number | null>;

/** Writes rows of a book straight into its tables, keeping the ledger's rules as the commands keep them. */
export class BigLedger {
  entries = 0;
  movements = 0;
  private serial = 0;
  private line = 0;
  private key = '';
  private readonly ids = new Map<string, number>();
  private readonly things: BigThing[] = [];
  private readonly systems = new Map<string, number>();
  private readonly statements = new Map<string, Database.Statement>();

  constructor(
    private readonly db: Database.Database,
    private readonly random: () => number,
    /** The day on which everything is written until it is moved on. */
    public day: CalendarDate,
  ) {
    this.add('Book', {
      id: 1,
      name: 'Big shop',
      timeZone: 'Europe/London',
      units: 'metric',
      currency: 'EUR',
      dateOrder: 'day-first',
      createdAt: this.instant(),
    });
    this.enter('book-begun', {}, { name: 'Big shop' });
  }

  addPlace(name: string, kind: string, parentId: number | null): number {
    const id = this.next('Place');
    const label = this.mint('place');
    this.add('Place', { id, parentId, name, kind, label });
    this.index('place', id, [name, kind, label]);
    this.enter('place-added', { placeId: id }, { placeId: id, label, name });
    return id;
  }

  addProduct(
    given: Omit<BigProduct, 'id'> & {
      kind: string;
      lifeMonths: number;
      part: string | null;
      system: string | null;
      gtin: string;
    },
  ): BigProduct {
    const id = this.next('Product');
    const { name, maker, kind, unit, packageSize, part } = given;
    this.add('Product', {
      id,
      name,
      maker,
      kind,
      unit,
      packageSize,
      part,
      densityGramsPerLitre: unit === 'piece' ? null : 1050,
      policyKind: kind === 'abrasive' ? 'keeps' : 'inspectable',
      statedLifeCount: given.lifeMonths,
      statedLifeUnit: 'month',
      statedLifeBasis: 'data-sheet',
      openedLifeCount: kind === 'abrasive' ? null : 6,
      openedLifeUnit: kind === 'abrasive' ? null : 'month',
      openedLifeBasis: 'data-sheet',
      careWindowDays: 14,
      colourShows: kind === 'pigment' || kind === 'varnish' ? 1 : 0,
      systemId: given.system ? this.systemId(given.system) : null,
      hazards: kind === 'resin-b' ? 'GHS05,GHS07' : 'GHS07',
      createdAt: this.instant(),
    });
    this.index('product', id, [name, maker, given.gtin]);
    this.enter('product-taught', { productId: id }, { productId: id, name });
    this.add('Code', { value: given.gtin, productId: id, packageSize, entryId: this.entries });
    return { ...given, id };
  }

  addJob(name: string, purpose: string, dayOfUse: CalendarDate, open: boolean): void {
    const id = this.next('Job');
    const state = open ? 'open' : 'done';
    const stage = open ? 'agreed' : 'delivered';
    this.add('Job', { id, name, purpose, client: '', dayOfUse, state, stage, createdAt: this.instant() });
    this.index('job', id, [name]);
    this.enter('job-added', { jobId: id }, { jobId: id, name });
  }

  addLot(product: BigProduct, code: string, madeOn: CalendarDate, bestBefore: CalendarDate | null): number {
    const stockId = this.next('Stock');
    this.add('Stock', { id: stockId, kind: 'lot', label: null });
    this.add('Lot', {
      stockId,
      productId: product.id,
      code,
      madeOn,
      madePrecision: 'day',
      madeConfirmed: 1,
      bestBefore,
      bestPrecision: bestBefore && 'day',
      bestConfirmed: bestBefore ? 1 : 0,
    });
    this.index('lot', stockId, [code]);
    return stockId;
  }

  addContainer(product: BigProduct, lotId: number): BigThing {
    const thing = this.thing(this.mint('container'), product.id, product.packageSize);
    this.addStock(thing, 'container');
    const { id: stockId, size } = thing;
    this.add('Container', { stockId, lotId, productId: product.id, size, receivedOn: this.day });
    return thing;
  }

  addPiece(species: string, flitch: string, flitchNumber: number): BigThing {
    const thing = this.thing(this.mint('slab'), null, 1);
    this.addStock(thing, 'piece');
    const width = 350_000_000 + Math.floor(this.random() * 400) * 1_000_000;
    this.add('Piece', {
      stockId: thing.id,
      form: 'slab',
      species,
      lengthNm: 2_000_000_000 + Math.floor(this.random() * 2000) * 1_000_000,
      widthStartNm: width,
      widthMiddleNm: width - 20_000_000,
      widthEndNm: width + 40_000_000,
      thicknessNm: 54_000_000,
      flitch,
      flitchNumber,
      receivedOn: this.day,
    });
    this.index('piece', thing.id, [species, 'slab', flitch, thing.label]);
    return thing;
  }

  inspect(product: BigProduct, lotId: number, passed: boolean): void {
    const words = `Inspection ${passed ? 'passed' : 'failed'}`;
    this.enter('inspected', { productId: product.id, stockId: lotId }, { lotId, madeOn: this.day, passed });
    this.add('Inspection', {
      lotId,
      entryId: this.entries,
      kind: 'inspection',
      madeOn: this.day,
      passed: passed ? 1 : 0,
      validUntil: addDays(this.day, 180),
      method: words,
    });
  }

  /** A pull for a job, with a verdict kept as long as a real one is. */
  pull(thing: BigThing, jobId: number, asked: number): void {
    const dayOfUse = addDays(this.day, 14);
    const limit = { basis: 'made-on-life', lastGoodDay: dayOfUse, from: this.day, effective: true, confirmed: true };
    const verdict = { word: 'use', dayOfUse, limits: [limit, limit], governing: limit, daysLeft: 30, reasons: [] };
    const answer = { label: thing.label, left: thing.quantity - asked, word: 'use', overridden: false };
    this.enter('pulled', { jobId, productId: thing.productId, verdict: 'use' }, answer, {
      purpose: 'client',
      asked,
      verdict: { ...verdict, override: 'not-needed' },
    });
    const opened = thing.opened ?? writeOpened({ on: this.day, sureness: 'known' });
    this.move(thing, { quantity: thing.quantity - asked, opened });
  }

  enter(kind: string, fields: EntryFields, answer: unknown, verdictJson?: unknown): void {
    this.entries += 1;
    this.line = 0;
    this.key = `${this.hex(8)}-${this.hex(4)}-4${this.hex(3)}-8${this.hex(3)}-${this.hex(12)}`;
    const { jobId = null, productId = null, placeId = null, stockId = null, verdict = null } = fields;
    this.add('Entry', {
      id: this.entries,
      key: this.key,
      request: `${this.hex(8)}${this.hex(8)}`.repeat(4),
      kind,
      happenedAt: this.instant(),
      writtenAt: this.instant(),
      who: 'Maker',
      device: 'iPhone',
      jobId,
      productId,
      placeId,
      stockId,
      answer: JSON.stringify(answer),
      verdict,
      verdictJson: verdictJson === undefined ? null : JSON.stringify(verdictJson),
    });
  }

  move(thing: BigThing, change: Change): void {
    const before = { ...thing };
    Object.assign(thing, change);
    this.movements += 1;
    this.line += 1;
    thing.lastMovementId = this.movements;
    this.add('Movement', {
      id: this.movements,
      entryId: this.entries,
      key: `${this.key}/${this.line}`,
      stockId: thing.id,
      quantityDelta: thing.quantity - before.quantity,
      placeFromId: before.placeId,
      placeToId: thing.placeId,
      conditionFrom: before.condition,
      conditionTo: thing.condition,
      openedFrom: before.opened,
      openedTo: thing.opened,
    });
  }

  /** Writes the balances and the book's own counts. Once, at the end. */
  finish(): void {
    const balance = this.db.prepare(
      'UPDATE "Stock" SET "quantity" = ?, "placeId" = ?, "condition" = ?, "opened" = ?, "lastMovementId" = ? WHERE "id" = ?',
    );
    for (const one of this.things) {
      balance.run(one.quantity, one.placeId, one.condition, one.opened, one.lastMovementId, one.id);
    }
    this.db.prepare('UPDATE "Book" SET "revision" = ?, "labelSerial" = ?').run(this.entries, this.serial);
  }

  private thing(label: string, productId: number | null, size: number): BigThing {
    const id = this.next('Stock');
    const bare = { quantity: 0, placeId: null, condition: '', opened: null, lastMovementId: 0 };
    const thing = { id, label, productId, size, ...bare };
    this.things.push(thing);
    return thing;
  }

  private addStock({ id, label }: BigThing, kind: string): void {
    this.add('Stock', { id, kind, label });
  }

  private next(table: string): number {
    const id = (this.ids.get(table) ?? 0) + 1;
    this.ids.set(table, id);
    return id;
  }

  private systemId(name: string): number {
    const known = this.systems.get(name);
    if (known !== undefined) return known;
    const id = this.systems.size + 1;
    this.systems.set(name, id);
    this.add('ResinSystem', { id, name });
    return id;
  }

  private mint(kind: OwnLabelKind): string {
    const { code } = unwrap(mintOwnLabel(kind, this.serial));
    this.serial += 1;
    return code;
  }

  private index(kind: string, refId: number, texts: string[]): void {
    for (const word of new Set(texts.flatMap(searchWords))) this.add('SearchWord', { word, kind, refId });
  }

  private add(table: string, row: Row): void {
    // Every row of a table is written with the same columns.
    let statement = this.statements.get(table);
    if (!statement) {
      const names = Object.keys(row);
      const columns = names.map((each) => `"${each}"`).join(', ');
      statement = this.db.prepare(`INSERT INTO "${table}" (${columns}) VALUES (${names.map(() => '?').join(', ')})`);
      this.statements.set(table, statement);
    }
    statement.run(Object.values(row));
  }

  private instant(): string {
    return `${this.day}T09:00:00.000+00:00`;
  }

  private hex(digits: number): string {
    return Math.floor(this.random() * 16 ** Math.min(digits, 8))
      .toString(16)
      .padStart(digits, '0');
  }
}
