import fs from 'node:fs';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { teachCode } from '@/app/_server/codes/teach-code';
import { whatWasScanned } from '@/app/_server/codes/what-was-scanned';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { addPlace } from '@/app/_server/places/add-place';
import { arrivalProduct } from '@/app/_server/products/arrival-product';
import { listSpecies } from '@/app/_server/stock/list-species';
import { moveStock } from '@/app/_server/stock/move-stock';
import { receiveContainers } from '@/app/_server/stock/receive-containers';
import { receiveWood } from '@/app/_server/stock/receive-wood';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

const INCH = 25_400_000;
const SLAB = {
  form: 'slab' as const,
  species: 'Walnut',
  count: 1,
  lengthNm: 100 * INCH,
  widthStartNm: 30 * INCH,
  widthMiddleNm: 26 * INCH,
  widthEndNm: 28 * INCH,
  thicknessNm: 2 * INCH,
  flags: [],
  flitch: '',
  receivedOn: TODAY,
  note: '',
};

describe('what comes through the door', () => {
  let test: TestBook;
  const before = process.env.FLITCHBOOK_DATA;
  beforeAll(async () => {
    test = await freshBook();
    process.env.FLITCHBOOK_DATA = test.files.folder;
  });
  afterAll(async () => {
    if (before === undefined) delete process.env.FLITCHBOOK_DATA;
    else process.env.FLITCHBOOK_DATA = before;
    await test.remove();
  });
  const photos = () => (fs.existsSync(test.files.photos) ? fs.readdirSync(test.files.photos) : []);
  const picture = async () =>
    new Blob([
      new Uint8Array(
        await sharp({ create: { width: 60, height: 40, channels: 3, background: '#a07040' } })
          .jpeg()
          .toBuffer(),
      ),
    ]);

  it('keeps one picture and one slab when the same press is sent twice over a lost network', async () => {
    const press = by();
    const input = { ...SLAB, photo: await picture() };
    const first = must(await receiveWood(test.book, press, input));
    const again = await receiveWood(test.book, press, { ...SLAB, photo: await picture() });
    expect(again).toEqual({ ok: true, value: { answer: first, replayed: true } });
    expect(photos()).toHaveLength(1);
    expect(await test.book.read.piece.count()).toBe(1);
    expect(await listSpecies(test.book)).toEqual(['Walnut']);
  });

  it('writes nothing and keeps no file where the picture or the wood is refused', async () => {
    const kept = photos().length;
    expect(refusedWith(await receiveWood(test.book, by(), { ...SLAB, photo: new Blob(['no picture']) }))).toBe(
      'photo-not-an-image',
    );
    expect(refusedWith(await receiveWood(test.book, by(), { ...SLAB, lengthNm: 0, photo: await picture() }))).toBe(
      'outside-range',
    );
    expect(photos()).toHaveLength(kept);
  });

  it('is found again by its code in the size that code was taught, with the lots of the book', async () => {
    const { productId, lotId, labels } = await stocked(test.book);
    must(await teachCode(test.book, by(), { code: '09521234543213', means: { productId, packageSize: 5_000_000 } }));
    const scanned = await whatWasScanned(test.book, { text: '(01)09521234543213(10)K26-114' }, TODAY);
    expect(scanned).toMatchObject({
      kind: 'product',
      says: { lot: 'K26-114' },
      product: { productId, packageSize: 5_000_000, lots: [{ lotId, code: 'K26-114', facts: { hold: 'free' } }] },
    });
    expect((await arrivalProduct(test.book, productId))?.packageSize).toBe(2_500_000);
    expect(await whatWasScanned(test.book, { text: labels[0] ?? '' }, TODAY)).toMatchObject({
      kind: 'container',
      left: 2_500_000,
    });
  });

  it('is refused in a unit the product is not counted in', async () => {
    const product = await test.book.read.product.findFirstOrThrow({ select: { id: true } });
    const arrival = {
      productId: product.id,
      unit: 'uL' as const,
      lotCode: null,
      dates: {},
      count: 1,
      size: 1000,
      receivedOn: TODAY,
    };
    expect(refusedWith(await receiveContainers(test.book, by(), arrival))).toBe('unit-does-not-fit');
  });

  it('is moved by a scan and put back by reversing that very entry', async () => {
    const place = must(await addPlace(test.book, by(), { name: 'Cabinet 2', kind: 'cabinet' }));
    const { label } = await test.book.read.stock.findFirstOrThrow({
      where: { kind: 'container' },
      select: { label: true },
    });
    const moved = must(await moveStock(test.book, by(), { labels: [label ?? ''], placeLabel: place.label }));
    expect(await whatWasScanned(test.book, { text: label ?? '' }, TODAY)).toMatchObject({ place: 'Cabinet 2' });
    must(await reverseEntry(test.book, by(), { entryId: moved.entryId, why: 'Moved by mistake' }));
    expect(await whatWasScanned(test.book, { text: label ?? '' }, TODAY)).toMatchObject({ place: null });
  });
});
