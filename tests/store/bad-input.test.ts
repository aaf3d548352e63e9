import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Command } from '@/app/_server/act';
import { setUpBook } from '@/app/_server/book/set-up-book';
import { teachCode } from '@/app/_server/codes/teach-code';
import { addJob } from '@/app/_server/jobs/add-job';
import { addPlace } from '@/app/_server/places/add-place';
import { changePlace } from '@/app/_server/places/change-place';
import { noteTemperature } from '@/app/_server/places/note-temperature';
import { changeProduct } from '@/app/_server/products/change-product';
import { teachProduct } from '@/app/_server/products/teach-product';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { addPhoto } from '@/app/_server/stock/add-photo';
import { changeHold } from '@/app/_server/stock/change-hold';
import { correctLotDates } from '@/app/_server/stock/correct-lot-dates';
import { discard } from '@/app/_server/stock/discard';
import { givePiece } from '@/app/_server/stock/give-piece';
import { moveStock } from '@/app/_server/stock/move-stock';
import { noteCondition } from '@/app/_server/stock/note-condition';
import { openContainer } from '@/app/_server/stock/open-container';
import { type ReceiveContainers, receiveContainers } from '@/app/_server/stock/receive-containers';
import { type ReceivePieces, receivePieces } from '@/app/_server/stock/receive-pieces';
import { recordInspection } from '@/app/_server/stock/record-inspection';
import { recordReadings } from '@/app/_server/stock/record-readings';
import { weighContainer } from '@/app/_server/stock/weigh-container';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import { aSlab, RESIN, stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, type TestBook, TODAY } from '@/tests/support/test-book';

const printed = (date: string, confirmed = true) => ({ date: day(date), precision: 'day' as const, confirmed });

describe('what a book refuses, and writes nothing of', () => {
  let test: TestBook;
  let productId = 0;
  let lotId = 0;
  let label = '';
  let slab = '';

  beforeAll(async () => {
    test = await freshBook();
    const received = await stocked(test.book, {
      lotCode: 'K26-114',
      dates: { madeOn: printed('2026-01-10'), bestBefore: printed('2027-01-10') },
    });
    productId = received.productId;
    lotId = received.lotId;
    label = received.labels[0] ?? '';
    slab = must(await receivePieces(test.book, by(), aSlab())).pieces[0]?.label ?? '';
  });
  afterAll(() => test.remove());

  /** Runs a command that must be refused: with this code, beside this field, in plain words, and without a trace. */
  async function refused<I>(command: Command<I, unknown>, input: I, code: string, field?: string) {
    const tables = async () => ({
      entries: await test.book.read.entry.count(),
      head: await test.book.read.book.findUnique({ where: { id: 1 } }),
      stock: await test.book.read.stock.findMany(),
      lots: await test.book.read.lot.findMany(),
      codes: await test.book.read.code.count(),
      words: await test.book.read.searchWord.count(),
      systems: await test.book.read.resinSystem.count(),
      places: await test.book.read.place.findMany(),
    });
    const before = await tables();
    const result = await command(test.book, by(), input);
    if (result.ok) throw new Error(`It was not refused: ${JSON.stringify(result.value)}`);
    expect(result.error.code).toBe(code);
    expect(result.error.field).toBe(field);
    expect(await tables()).toEqual(before);
    const said = sayRefusal(result.error);
    expect(`${said.what} ${said.todo}`).not.toMatch(/undefined|null|NaN/);
    return said;
  }

  const receive = (more: Partial<ReceiveContainers>): ReceiveContainers => ({
    productId,
    lotCode: 'N1',
    dates: {},
    count: 1,
    size: 2_500_000,
    receivedOn: TODAY,
    ...more,
  });

  it.each<[string, Partial<ReceiveContainers>, string, string]>([
    ['made on a day to come', { dates: { madeOn: printed('2026-11-26') } }, 'made-in-the-future', 'madeOn'],
    [
      'best before a day before it was made',
      { dates: { madeOn: printed('2026-05-02'), bestBefore: printed('2026-05-01') } },
      'made-after-best-before',
      'bestBefore',
    ],
    [
      'use by a day before it was made',
      { dates: { madeOn: printed('2026-05-02'), useBy: printed('2026-05-01') } },
      'made-after-best-before',
      'useBy',
    ],
    [
      'opened before it was made',
      { dates: { madeOn: printed('2026-05-02') }, opened: { on: day('2026-05-01'), sureness: 'known' } },
      'opened-before-made',
      'opened',
    ],
    [
      'opened on a day to come',
      { opened: { on: day('2026-11-26'), sureness: 'guessed' } },
      'opened-in-the-future',
      'opened',
    ],
    ['received on a day to come', { receivedOn: day('2026-11-26') }, 'received-in-the-future', 'receivedOn'],
    ['a size of nothing', { size: 0 }, 'not-an-exact-amount', 'size'],
    ['a negative size', { size: -5 }, 'not-an-exact-amount', 'size'],
    ['a size that is no whole number', { size: 1.5 }, 'not-an-exact-amount', 'size'],
    ['a size that is not a number', { size: Number.NaN }, 'not-an-exact-amount', 'size'],
    ['a size beyond exact counting', { size: 2 ** 53 }, 'not-an-exact-amount', 'size'],
    ['nothing left', { left: 0 }, 'not-an-exact-amount', 'left'],
    ['part-used with no opened day', { left: 2_499_999 }, 'part-used-needs-opened', 'opened'],
    ['more left than it holds', { left: 2_500_001 }, 'not-enough-left', 'left'],
    ['no containers', { count: 0 }, 'absurd-count', 'count'],
    ['half a container', { count: 1.5 }, 'absurd-count', 'count'],
    ['five hundred and one', { count: 501 }, 'absurd-count', 'count'],
    ['a product nobody taught', { productId: 999 }, 'not-found', 'productId'],
    ['a place nobody made', { placeLabel: 'PAAAAAA' }, 'not-found', 'placeLabel'],
    [
      'a lot with another best before',
      { lotCode: 'K26-114', dates: { bestBefore: printed('2027-02-10') } },
      'lot-dates-differ',
      'bestBefore',
    ],
    [
      'a lot with another day of making',
      { lotCode: 'K26-114', dates: { madeOn: printed('2026-01-11') } },
      'lot-dates-differ',
      'madeOn',
    ],
    [
      'opened before its lot was made, as the book knows',
      { lotCode: 'K26-114', opened: { on: day('2026-01-09'), sureness: 'known' } },
      'opened-before-made',
      'opened',
    ],
    [
      'a limit before its lot was made, as the book knows',
      { lotCode: 'K26-114', dates: { useBy: printed('2026-01-01') } },
      'made-after-best-before',
      'useBy',
    ],
  ])('a delivery: %s', async (_, more, code, field) => {
    await refused(receiveContainers, receive(more), code, field);
  });

  it('names both dates where a label contradicts the book', async () => {
    const said = await refused(
      receiveContainers,
      receive({ lotCode: 'K26-114', dates: { bestBefore: printed('2027-02-10') } }),
      'lot-dates-differ',
      'bestBefore',
    );
    expect(said.what).toBe('Lot K26-114 is in the book with 10 Jan 2027; this label says 10 Feb 2027.');
  });

  it('takes a month as a whole: made in the month of opening, or good to the end of the month it was made in', async () => {
    const month = (date: string) => ({ date: day(date), precision: 'month' as const, confirmed: true });
    must(
      await receiveContainers(
        test.book,
        by(),
        receive({
          lotCode: 'whole month',
          dates: { madeOn: month('2026-05-31'), bestBefore: month('2026-05-01') },
          opened: { on: day('2026-05-01'), sureness: 'known' },
        }),
      ),
    );
  });

  it.each<[string, Partial<ReceivePieces>, string, string]>([
    ['no length', { lengthNm: 0 }, 'outside-range', 'lengthNm'],
    ['a negative width', { widthMiddleNm: -1 }, 'outside-range', 'widthMiddleNm'],
    ['a slab longer than 20 m', { lengthNm: 20_000_000_001 }, 'outside-range', 'lengthNm'],
    ['a slab thicker than 1 m', { thicknessNm: 1_000_000_001 }, 'outside-range', 'thicknessNm'],
    ['a length that is no number', { lengthNm: Number.NaN }, 'outside-range', 'lengthNm'],
    ['moisture above 250 %', { reading: { mcTenths: 2501, meter: '', spot: '' } }, 'outside-range', 'reading'],
    ['moisture below nothing', { reading: { mcTenths: -1, meter: '', spot: '' } }, 'outside-range', 'reading'],
    [
      'moisture that is no number',
      { reading: { mcTenths: Number.NaN, meter: '', spot: '' } },
      'outside-range',
      'reading',
    ],
    ['finer moisture than a tenth', { reading: { mcTenths: 96.4, meter: '', spot: '' } }, 'outside-range', 'reading'],
    ['none of them', { count: 0 }, 'absurd-count', 'count'],
    ['a day to come', { receivedOn: day('2026-11-26') }, 'received-in-the-future', 'receivedOn'],
    ['a place nobody made', { placeLabel: 'PAAAAAA' }, 'not-found', 'placeLabel'],
  ])('wood: %s', async (_, more, code, field) => {
    await refused(receivePieces, aSlab(more), code, field);
  });

  it('an opening that cannot be', async () => {
    const at = (on: string, sureness: 'known' | 'guessed' = 'known') => ({ label, opened: { on: day(on), sureness } });
    await refused(openContainer, at('2026-01-09'), 'opened-before-made', 'opened');
    await refused(openContainer, at('2026-11-26'), 'opened-in-the-future', 'opened');
    await refused(openContainer, { ...at('2026-11-20'), label: 'CAAAAAA' }, 'not-found');
    must(await openContainer(test.book, by(), at('2026-11-20', 'guessed')));
    must(await openContainer(test.book, by(), at('2026-11-18')));
    await refused(openContainer, at('2026-11-17', 'guessed'), 'already-open');
    await refused(openContainer, at('2026-11-18'), 'changes-nothing');
  });

  it('an amount that cannot be, weighed or taken', async () => {
    const pull = { label, purpose: 'client' as const, dayOfUse: TODAY, seen: 'care' as const };
    for (const asked of [0, -1, 0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53]) {
      await refused(pullContainer, { ...pull, asked }, 'not-an-exact-amount', 'asked');
    }
    for (const left of [-1, 0.5, Number.NaN, 2 ** 53]) {
      await refused(weighContainer, { label, left, why: '' }, 'not-an-exact-amount', 'left');
    }
    await refused(weighContainer, { label, left: 5_000_001, why: '' }, 'unit-does-not-fit', 'left');
    await refused(weighContainer, { label, left: 2_500_000, why: '' }, 'changes-nothing');
    await refused(weighContainer, { label: 'CAAAAAA', left: 1, why: '' }, 'not-found');
  });

  it('a code that means something already, naming what', async () => {
    must(await teachCode(test.book, by(), { code: '09521234000013', means: { productId } }));
    const { label: placeLabel } = must(await addPlace(test.book, by(), { name: 'Cabinet 9', kind: 'cabinet' }));
    must(await teachCode(test.book, by(), { code: 'DOOR-9', means: { placeLabel } }));
    must(await teachCode(test.book, by(), { code: 'JUG-9', means: { stockLabel: label } }));
    const again = (code: string) =>
      refused(teachCode, { code, means: { productId } }, 'code-means-something-else', 'code');
    expect((await again('09521234000013')).what).toBe('This code already means Deep-pour resin, part A.');
    expect((await again('DOOR-9')).what).toBe('This code already means Cabinet 9.');
    expect((await again('JUG-9')).what).toMatch(/^This code already means C-[0-9A-Z]{6}\.$/);
    await refused(
      teachProduct,
      { ...RESIN, name: 'Another', system: { name: 'New system', part: 'A' }, code: 'DOOR-9' },
      'code-means-something-else',
      'code',
    );
    await refused(
      teachProduct,
      { ...RESIN, name: 'Another', system: { name: 'New system', part: 'A' }, code: label },
      'own-label-is-not-taught',
      'code',
    );
    await refused(teachCode, { code: label, means: { productId } }, 'own-label-is-not-taught', 'code');
    await refused(teachCode, { code: 'NEW', means: { productId: 999 } }, 'not-found', 'means');
    await refused(teachCode, { code: 'NEW', means: { placeLabel: 'PAAAAAA' } }, 'not-found', 'means');
    await refused(teachCode, { code: 'NEW', means: { stockLabel: 'CAAAAAA' } }, 'not-found', 'means');
  });

  it('a product that is there already, or changed to what cannot be', async () => {
    await refused(teachProduct, RESIN, 'name-taken', 'name');
    await refused(
      teachProduct,
      { ...RESIN, name: 'Cold', storageLeastTenthsC: 200, storageMostTenthsC: 100 },
      'outside-range',
      'storageMostTenthsC',
    );
    await refused(changeProduct, { ...RESIN, productId, unit: 'uL' }, 'has-stock', 'unit');
    await refused(changeProduct, { ...RESIN, productId }, 'changes-nothing');
    await refused(changeProduct, { ...RESIN, productId: 999 }, 'not-found');
  });

  it('a place inside itself, or inside what is inside it', async () => {
    const room = must(await addPlace(test.book, by(), { name: 'Room', kind: 'room' })).label;
    const rack = must(await addPlace(test.book, by(), { name: 'Rack', kind: 'rack', parentLabel: room })).label;
    const shelf = must(await addPlace(test.book, by(), { name: 'Shelf', kind: 'shelf', parentLabel: rack })).label;
    const into = (parentLabel: string) => ({ label: room, name: 'Room', kind: 'room' as const, parentLabel });
    for (const parent of [room, rack, shelf])
      await refused(changePlace, into(parent), 'place-in-itself', 'parentLabel');
    await refused(changePlace, into('PAAAAAA'), 'not-found', 'parentLabel');
    await refused(changePlace, { label: 'PAAAAAA', name: 'x', kind: 'room' }, 'not-found');
    await refused(addPlace, { name: ' Rack ', kind: 'rack', parentLabel: room }, 'name-taken', 'name');
    await refused(addPlace, { name: 'Nook', kind: 'shelf', parentLabel: 'PAAAAAA' }, 'not-found', 'parentLabel');
    must(await addPlace(test.book, by(), { name: 'Rack', kind: 'rack' }));
  });

  it('a move to nowhere, of nothing, or to where it stands', async () => {
    const { label: placeLabel } = must(await addPlace(test.book, by(), { name: 'Bench', kind: 'bench' }));
    await refused(moveStock, { labels: [label], placeLabel: 'PAAAAAA' }, 'not-found', 'placeLabel');
    await refused(moveStock, { labels: [label, 'CAAAAAA'], placeLabel }, 'not-found');
    must(await moveStock(test.book, by(), { labels: [label], placeLabel }));
    await refused(moveStock, { labels: [label], placeLabel }, 'same-place');
  });

  it('dates of a lot that cannot be, or are those it has', async () => {
    const correct = (madeOn: string, bestBefore: string) => ({
      lotId,
      dates: { madeOn: printed(madeOn), bestBefore: printed(bestBefore) },
      why: '',
    });
    await refused(correctLotDates, correct('2026-11-26', '2027-01-10'), 'made-in-the-future', 'madeOn');
    await refused(correctLotDates, correct('2026-05-10', '2026-05-09'), 'made-after-best-before', 'bestBefore');
    await refused(correctLotDates, correct('2026-01-10', '2027-01-10'), 'changes-nothing');
    await refused(correctLotDates, { ...correct('2026-01-10', '2027-01-11'), lotId: 9999 }, 'not-found');
  });

  it('an inspection or a reading that cannot be', async () => {
    const look = { lotId, kind: 'inspection' as const, madeOn: TODAY, passed: true, method: '', note: '' };
    await refused(recordInspection, { ...look, madeOn: day('2026-11-26') }, 'received-in-the-future', 'madeOn');
    await refused(
      recordInspection,
      { ...look, validUntil: day('2026-11-24') },
      'inspection-valid-before-made',
      'validUntil',
    );
    await refused(recordInspection, { ...look, kind: 'test-pour' }, 'override-needs-test-pour', 'note');
    await refused(recordInspection, { ...look, lotId: 9999 }, 'not-found');
    await refused(recordInspection, { ...look, containerLabel: slab }, 'not-found', 'containerLabel');
    const read = { label: slab, takenOn: TODAY, meter: '', readings: [{ mcTenths: 96 }] };
    for (const mcTenths of [-1, 2501, 9.5, Number.NaN]) {
      await refused(recordReadings, { ...read, readings: [{ mcTenths }] }, 'outside-range', 'readings.0.moisture');
    }
    await refused(recordReadings, { ...read, takenOn: day('2026-11-26') }, 'received-in-the-future', 'takenOn');
    await refused(recordReadings, { ...read, label }, 'not-found');
  });

  it('a decision without its reason', async () => {
    const { id: stockId } = await test.book.read.stock.findUniqueOrThrow({ where: { label } });
    await refused(changeHold, { stockId, hold: 'on-hold', why: ' ' }, 'reason-needed', 'why');
    must(await changeHold(test.book, by(), { stockId, hold: 'on-hold', why: 'Soft spots' }));
    await refused(changeHold, { stockId, hold: 'free', why: '' }, 'release-needs-reason', 'why');
    must(await changeHold(test.book, by(), { stockId, hold: 'free', why: 'A test pour is hard' }));
    await refused(changeHold, { stockId, hold: 'free', why: 'Again' }, 'changes-nothing');
    await refused(discard, { label, why: '' }, 'reason-needed', 'why');
    must(await noteCondition(test.book, by(), { label, conditions: ['crystals', 'haze'], why: '' }));
    await refused(noteCondition, { label, conditions: ['haze'], why: '' }, 'reason-needed', 'why');
    must(await noteCondition(test.book, by(), { label, conditions: ['haze'], why: 'Warmed to 55 °C and stirred' }));
    await refused(noteCondition, { label, conditions: ['haze'], why: '' }, 'changes-nothing');
  });

  it('a slab given to two jobs, or to none', async () => {
    const job = (name: string) =>
      addJob(test.book, by(), { name, purpose: 'client', client: '', dayOfUse: day('2026-12-05'), note: '' });
    const desk = must(await job('Desk')).jobId;
    const table = must(await job('Table')).jobId;
    await refused(
      addJob,
      { name: ' Desk ', purpose: 'own', client: '', dayOfUse: TODAY, note: '' },
      'name-taken',
      'name',
    );
    await refused(givePiece, { label: slab, act: 'promise' }, 'not-found', 'jobId');
    await refused(givePiece, { label: slab, act: 'promise', jobId: 999 }, 'not-found', 'jobId');
    must(await givePiece(test.book, by(), { label: slab, act: 'promise', jobId: desk }));
    expect(
      (await refused(givePiece, { label: slab, act: 'take', jobId: table }, 'promised-elsewhere', 'jobId')).what,
    ).toContain('promised to another job');
    must(await givePiece(test.book, by(), { label: slab, act: 'take', jobId: desk }));
    await refused(givePiece, { label: slab, act: 'take', jobId: desk }, 'already-empty');
    await refused(discard, { label: slab, why: 'Lost' }, 'already-empty');
  });

  it('a temperature range the wrong way round, or of nowhere', async () => {
    const { label: placeLabel } = must(await addPlace(test.book, by(), { name: 'Lean-to', kind: 'outside' }));
    await refused(
      noteTemperature,
      { label: placeLabel, leastTenthsC: 50, mostTenthsC: 40 },
      'outside-range',
      'mostTenthsC',
    );
    await refused(noteTemperature, { label: 'PAAAAAA', leastTenthsC: 40, mostTenthsC: 50 }, 'not-found');
  });

  it('a photo of nothing, and a second book in one file', async () => {
    const photo = { file: 'x.jpg', width: 1, height: 1, bytes: 1, caption: '' };
    await refused(addPhoto, { stockId: 9999, photo }, 'not-found');
    await refused(
      setUpBook,
      { name: 'Other', timeZone: 'Europe/Rome', units: 'metric', currency: 'EUR' },
      'book-already-there',
    );
  });
});
