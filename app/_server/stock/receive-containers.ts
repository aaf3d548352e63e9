import type { Command } from '@/app/_server/act';
import { indexWords } from '@/app/_server/find/search-words';
import { type Pen, writeEntry } from '@/app/_server/ledger/write-entry';
import { holdWhy } from '@/app/_server/pull/hold-why';
import type { Refusal } from '@/app/_server/refusal';
import { joinConditions } from '@/app/_server/stock/conditions';
import { lotDatesOf } from '@/app/_server/stock/judgeable';
import {
  type LotDatesInput,
  lotDateColumns,
  refuseLotDates,
  refuseMadeAfterOpened,
  sameLotDate,
} from '@/app/_server/stock/lot-dates';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import type { Life } from '@/shared/calendar/life';
import { MOST_AT_ONCE } from '@/shared/labels/most-at-once';
import { type Opened, writeOpened } from '@/shared/ledger/opened';
import { err, ok, type Result } from '@/shared/result/result';
import type { Condition } from '@/shared/shelf-life/types/container-facts';
import type { HoldState } from '@/shared/shelf-life/types/lot-facts';
import type { StockUnit } from '@/shared/units/stock-unit';

/** Containers of one lot that came through the door together. */
export type ReceiveContainers = {
  productId: number;
  /** Null when no lot is printed. */
  lotCode: string | null;
  dates: LotDatesInput;
  count: number;
  /** What one holds when full, in the product's small unit. */
  size: number;
  /** What is in one now, where that is less: it was opened then, and `opened` says when. */
  left?: number;
  tareMg?: number;
  openedLife?: Life;
  /** What one cost, minor units of the book's currency. */
  costMinor?: number;
  receivedOn: CalendarDate;
  placeLabel?: string;
  opened?: Opened;
  conditions?: Condition[];
  hold?: 'free' | 'quarantine';
  reference?: string;
  /** The small unit the asker counted in; refused where the product is counted in another. */
  unit?: StockUnit;
};

export type Received = {
  entryId: number;
  lotId: number;
  containers: { stockId: number; label: string }[];
  /** How the lot was held when they came in, and what was written with that: they wait with it. */
  lotHold: HoldState;
  heldBecause: string;
};

/**
 * Puts containers into the book: their lot (found or new), one label each, one movement each. What comes in of a lot that is
 * held comes in free of a hold of its own: the lot's holds it, and the answer says so.
 */
export const receiveContainers: Command<ReceiveContainers, Received> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'received', request: input }, async (pen) => {
    const today = dateIn(pen.book.timeZone, pen.now);
    const product = await pen.tx.product.findUnique({
      where: { id: input.productId },
      select: { id: true, name: true, maker: true, tareMg: true, unit: true },
    });
    if (!product) return err({ code: 'not-found', field: 'productId' });
    if (input.unit && input.unit !== product.unit) return err({ code: 'unit-does-not-fit', field: 'size' });
    const left = input.left ?? input.size;
    if (!Number.isSafeInteger(input.size) || input.size <= 0)
      return err({ code: 'not-an-exact-amount', field: 'size' });
    if (!Number.isSafeInteger(left) || left <= 0) return err({ code: 'not-an-exact-amount', field: 'left' });
    if (left > input.size) return err({ code: 'not-enough-left', field: 'left' });
    if (!Number.isInteger(input.count) || input.count < 1 || input.count > MOST_AT_ONCE)
      return err({ code: 'absurd-count', field: 'count' });
    if (input.receivedOn > today) return err({ code: 'received-in-the-future', field: 'receivedOn' });
    if (input.opened && input.opened.on > today) return err({ code: 'opened-in-the-future', field: 'opened' });
    if (left < input.size && !input.opened) return err({ code: 'part-used-needs-opened', field: 'opened' });
    const place = input.placeLabel
      ? await pen.tx.place.findUnique({ where: { label: input.placeLabel }, select: { id: true } })
      : undefined;
    if (input.placeLabel && !place) return err({ code: 'not-found', field: 'placeLabel' });
    const lot = await lotFor(pen, input, product, today);
    if (!lot.ok) return lot;
    const containers: Received['containers'] = [];
    for (let nr = 0; nr < input.count; nr += 1) {
      const label = await pen.mintLabel('container');
      const { id: stockId } = await pen.tx.stock.create({ data: { kind: 'container', label }, select: { id: true } });
      await pen.tx.container.create({
        data: {
          stockId,
          lotId: lot.value,
          productId: product.id,
          size: BigInt(input.size),
          tareMg: input.tareMg === undefined ? product.tareMg : BigInt(input.tareMg),
          openedLifeCount: input.openedLife?.count,
          openedLifeUnit: input.openedLife?.unit,
          costMinor: input.costMinor === undefined ? null : BigInt(input.costMinor),
          currency: input.costMinor === undefined ? null : pen.book.currency,
          receivedOn: input.receivedOn,
        },
        select: { stockId: true },
      });
      containers.push({ stockId, label });
    }
    const { hold } = await pen.tx.stock.findUniqueOrThrow({ where: { id: lot.value }, select: { hold: true } });
    const answer: Received = {
      entryId: pen.entryId,
      lotId: lot.value,
      containers,
      lotHold: hold as HoldState,
      heldBecause: await holdWhy(pen.tx, lot.value, hold),
    };
    await pen.enter({ productId: product.id, reference: input.reference ?? '' }, answer);
    for (const { stockId } of containers) {
      const moved = await pen.move(stockId, {
        quantityDelta: left,
        placeId: place?.id ?? null,
        condition: joinConditions(input.conditions ?? []),
        hold: input.hold ?? 'free',
        opened: input.opened ? writeOpened(input.opened) : null,
      });
      if (!moved.ok) return moved;
    }
    return ok(answer);
  });

async function lotFor(
  pen: Pen,
  input: ReceiveContainers,
  product: { id: number; name: string; maker: string },
  today: CalendarDate,
): Promise<Result<number, Refusal>> {
  const refusal = refuseLotDates(input.dates, today, input.opened);
  if (refusal) return err(refusal);
  const code = input.lotCode?.trim() || null;
  const known = code
    ? await pen.tx.lot.findUnique({ where: { productId_code: { productId: product.id, code } } })
    : null;
  if (!known) {
    const { id } = await pen.tx.stock.create({ data: { kind: 'lot' }, select: { id: true } });
    await pen.tx.lot.create({
      data: { stockId: id, productId: product.id, code, ...lotDateColumns(input.dates) },
      select: { stockId: true },
    });
    await indexWords(pen.tx, 'lot', id, [code ?? 'unmarked']);
    return ok(id);
  }
  const dates = (await stands(pen, known.stockId)) ? joinDates(lotDatesOf(known), input.dates, code) : ok(input.dates);
  if (!dates.ok) return dates;
  const impossible =
    refuseLotDates(dates.value, today, input.opened) ??
    (await refuseMadeAfterOpened(pen.tx, known.stockId, dates.value.madeOn));
  if (impossible) return err(impossible);
  await pen.tx.lot.update({
    where: { stockId: known.stockId },
    data: lotDateColumns(dates.value),
    select: { stockId: true },
  });
  return ok(known.stockId);
}

/** Whether anything of a lot came in that was not reversed again. Of a lot put in by mistake the dates may be one too. */
async function stands(pen: Pen, lotId: number): Promise<boolean> {
  const standing = await pen.tx.movement.findFirst({
    where: { stock: { container: { lotId } }, reversesId: null, reversedBy: null },
    select: { id: true },
  });
  return standing !== null;
}

/** A lot has one set of dates. What this label adds or confirms is kept; what contradicts the book is for a person to settle. */
function joinDates(book: LotDatesInput, label: LotDatesInput, lot: string | null): Result<LotDatesInput, Refusal> {
  const joined: LotDatesInput = { ...label };
  for (const name of ['madeOn', 'bestBefore', 'useBy'] as const) {
    const [inBook, printed] = [book[name], label[name]];
    if (!inBook) continue;
    if (printed && !sameLotDate(name, inBook, printed)) {
      return err({ code: 'lot-dates-differ', field: name, facts: { lot, book: inBook.date, label: printed.date } });
    }
    joined[name] = { ...inBook, confirmed: inBook.confirmed || printed?.confirmed === true };
  }
  return ok(joined);
}
