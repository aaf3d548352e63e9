import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { teachCode } from '@/app/_server/codes/teach-code';
import { type OnHandAsk, onHand } from '@/app/_server/find/on-hand';
import { addPlace } from '@/app/_server/places/add-place';
import { discard } from '@/app/_server/stock/discard';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { aSlab, stocked } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, type TestBook, TODAY } from '@/tests/support/test-book';
import { onServer } from '@/tests/support/test-server';

let test: TestBook;
let resin: Awaited<ReturnType<typeof stocked>>;
let varnish: Awaited<ReturnType<typeof stocked>>;
let slabs: string[];

const wood = (species: string, form: 'slab' | 'board', count: number, placeLabel?: string) =>
  receivePieces(test.book, by(), {
    form,
    species,
    count,
    lengthNm: 2_000_000_000,
    widthStartNm: 600_000_000,
    widthMiddleNm: 600_000_000,
    widthEndNm: 600_000_000,
    thicknessNm: 54_000_000,
    flags: [],
    flitch: '',
    receivedOn: TODAY,
    note: '',
    placeLabel,
  });

beforeAll(async () => {
  test = await freshBook();
  const cabinet = must(await addPlace(test.book, by(), { name: 'Cabinet two', kind: 'cabinet' }));
  varnish = await stocked(test.book, {
    product: { name: 'Satin varnish', maker: 'Fell', system: undefined },
    count: 70,
    lotCode: 'V-77/b',
  });
  resin = await stocked(test.book, { count: 65, placeLabel: cabinet.label });
  slabs = must(await wood('Walnut', 'slab', 3, cabinet.label)).pieces.map((piece) => piece.label);
  must(await wood('Élm', 'board', 2));
  must(await discard(test.book, by(), { label: resin.labels[0] ?? '', why: 'spilt' }));
  must(await teachCode(test.book, by(), { code: '04012345123456', means: { productId: varnish.productId } }));
});
afterAll(() => test.remove());

const ask = (more: Partial<OnHandAsk> = {}) => onHand(test.book, { show: 'materials', query: '', ...more });
const labelsOf = async (query: string) => (await ask({ query })).containers.map((line) => line.label);

describe('what is on hand', () => {
  it('gives every container once over its pages, product by product, oldest first', async () => {
    const seen: { productId: number; stockId: number }[] = [];
    let after: number | undefined;
    for (let pages = 0; pages < 10; pages += 1) {
      const page = await ask({ after });
      seen.push(...page.containers);
      expect(page.containers.length).toBeLessThanOrEqual(60);
      if (page.next === null) break;
      after = page.next;
    }
    expect(seen).toHaveLength(134);
    expect(new Set(seen.map((line) => line.stockId)).size).toBe(134);
    const products = seen.map((line) => line.productId);
    expect(products).toEqual([...products].sort((a, b) => (a === b ? 0 : a === resin.productId ? -1 : 1)));
    const ofResin = seen.filter((line) => line.productId === resin.productId).map((line) => line.stockId);
    expect(ofResin).toEqual([...ofResin].sort((a, b) => a - b));
  });

  it('counts all of them on the first page only', async () => {
    const first = await ask();
    expect(first.total).toBe(134);
    expect((await ask({ after: first.next ?? 0 })).total).toBeNull();
  });

  it('leaves out what is used up unless it is asked for', async () => {
    const [spilt = ''] = resin.labels;
    expect(await labelsOf(spilt)).toEqual([]);
    expect((await ask({ query: spilt, withEmpty: true })).containers.map((line) => line.label)).toEqual([spilt]);
    expect((await ask({ withEmpty: true })).total).toBe(135);
  });

  it('finds an own label with its dash, without it, and by its beginning', async () => {
    const label = resin.labels[7] ?? '';
    expect(await labelsOf(label)).toEqual([label]);
    expect(await labelsOf(printOwnLabel(label as OwnLabelCode).toLowerCase())).toEqual([label]);
    expect(await labelsOf(label.slice(0, 6))).toContain(label);
  });

  it('finds a container by the beginning of its product, its maker, its lot and its place', async () => {
    for (const query of ['sat', 'fell varn', 'v-77/b', 'V77b']) {
      const { containers, total } = await ask({ query });
      expect(total, query).toBe(70);
      expect(
        containers.every((line) => line.productId === varnish.productId),
        query,
      ).toBe(true);
    }
    expect((await ask({ query: 'cabinet tw' })).total).toBe(64);
  });

  it('finds what a taught code means by its beginning, and the product itself', async () => {
    const page = await ask({ query: '04012345' });
    expect(page.total).toBe(70);
    expect(page.products).toEqual([{ id: varnish.productId, name: 'Satin varnish', maker: 'Fell' }]);
    expect((await ask({ query: '040' })).total).toBe(0);
  });

  it('finds wood by species without its accents, by label with its dash, and by place', async () => {
    const found = async (query: string) => (await ask({ show: 'wood', query })).pieces.map((piece) => piece.label);
    expect(await found('elm')).toHaveLength(2);
    expect(await found(printOwnLabel((slabs[1] ?? '') as OwnLabelCode))).toEqual([slabs[1]]);
    expect((await found('cabinet')).sort()).toEqual([...slabs].sort());
  });

  it('names the places a search found, and says nothing of others', async () => {
    const page = await ask({ query: 'cabinet' });
    expect(page.places.map((place) => place.name)).toEqual(['Cabinet two']);
    expect((await ask({ query: 'nothing like it' })).places).toEqual([]);
  });

  it('says when a search fits more than it looked through', async () => {
    expect((await ask({ query: 'varnish' })).cut).toBe(false);
    await test.book.write(async (tx) => {
      await tx.searchWord.createMany({
        data: Array.from({ length: 500 }, (_, nr) => ({ word: `zinc${nr}`, kind: 'lot', refId: 100_000 + nr })),
      });
    });
    expect((await ask({ query: 'zinc', withEmpty: true })).cut).toBe(true);
    // Lots lead to no wood.
    expect((await ask({ query: 'zinc', withEmpty: true, show: 'wood' })).cut).toBe(false);
    expect((await ask({ query: 'zinc499', withEmpty: true })).cut).toBe(false);
  });

  it('counts no further than 500, and walks on from page to page all the same', async () => {
    const many = await freshBook();
    for (const name of ['Resin one', 'Resin two', 'Resin three', 'Resin four', 'Resin five', 'Resin six']) {
      await stocked(many.book, { count: 100, product: { name, system: undefined } });
    }
    const seen = new Set<number>();
    for (const query of ['', 'resin']) {
      seen.clear();
      const first = await onHand(many.book, { show: 'materials', query });
      expect([first.total, first.more], query).toEqual([500, true]);
      const lines = [];
      for (let page = first; ; page = await onHand(many.book, { show: 'materials', query, after: page.next })) {
        for (const line of page.containers) seen.add(line.stockId);
        lines.push(...page.containers.map(({ product, stockId }) => ({ product, stockId })));
        if (page.next === null) break;
      }
      expect(seen.size, query).toBe(600);
      // By product, the oldest of each first, though the products came into the book in another order.
      const inOrder = [...lines].sort((a, b) =>
        a.product === b.product ? a.stockId - b.stockId : a.product < b.product ? -1 : 1,
      );
      expect(lines, query).toEqual(inOrder);
      expect(lines[0]?.product, query).toBe('Resin five');
    }
    expect(await onHand(many.book, { show: 'wood', query: 'resin' })).toMatchObject({
      total: 0,
      elsewhere: 500,
      elsewhereMore: true,
    });
    await many.remove();
  });

  it('looks past the labels of what is used up', async () => {
    const gone = await freshBook();
    const { labels } = await stocked(gone.book);
    const [label = ''] = labels;
    await gone.book.write(async (tx) => {
      // Six hundred labels that are used up, each before the ones that are not.
      await tx.stock.createMany({
        data: Array.from({ length: 600 }, (_, nr) => ({
          kind: 'container',
          label: `${label.slice(0, 2)}000${String(nr).padStart(3, '0')}`,
        })),
      });
    });
    const page = await onHand(gone.book, { show: 'materials', query: label.slice(0, 2) });
    expect(page.containers.map((line) => line.label)).toEqual([label]);
    await gone.remove();
  });

  // Which thousand are looked at, where there are more, is the store's to choose.
  it.skipIf(onServer())(
    'looks past wood and lots of which nothing is left, unless what is used up is asked for',
    async () => {
      const gone = await freshBook();
      const { labels } = await stocked(gone.book, { lotCode: 'zinc-9' });
      const { pieces } = must(await receivePieces(gone.book, by(), aSlab({ species: 'Zebrano' })));
      const usedUp = Array.from({ length: 600 }, (_, nr) => nr + 1);
      await gone.book.write(async (tx) => {
        // Six hundred of each before the ones that are not: words that come first, of things with nothing left.
        const made = await tx.stock.createManyAndReturn({
          data: usedUp.map((nr) => ({ kind: 'piece', label: `S999${String(nr).padStart(3, '0')}` })),
        });
        await tx.searchWord.createMany({
          data: made.flatMap(({ id }) => [
            { word: `z${id}`, kind: 'piece', refId: id },
            { word: `z${id}`, kind: 'lot', refId: id },
          ]),
        });
      });
      const materials = await onHand(gone.book, { show: 'materials', query: 'z' });
      expect([materials.containers.map((line) => line.label), materials.cut]).toEqual([labels, false]);
      const wood = await onHand(gone.book, { show: 'wood', query: 'z' });
      expect([wood.pieces.map((line) => line.label), wood.cut]).toEqual([pieces.map((piece) => piece.label), false]);
      expect((await onHand(gone.book, { show: 'wood', query: 'z', withEmpty: true })).cut).toBe(true);
      // Where even the used-up lots are too many to look past, it says so.
      await gone.book.write(async (tx) => {
        await tx.searchWord.createMany({
          data: Array.from({ length: 1_000 }, (_, nr) => ({ word: `z0${nr}`, kind: 'lot', refId: 100_000 + nr })),
        });
      });
      expect(await onHand(gone.book, { show: 'materials', query: 'z' })).toMatchObject({ total: 0, cut: true });
      expect(await onHand(gone.book, { show: 'materials', query: 'zinc' })).toMatchObject({ total: 1, cut: false });
      await gone.remove();
    },
  );

  it('finds a lot by its code beside a word of its product, whatever the product is called since', async () => {
    expect((await ask({ query: 'satin v77' })).total).toBe(70);
    expect((await ask({ query: 'v-77 fell' })).total).toBe(70);
    expect((await ask({ query: 'v-77 oak' })).total).toBe(0);
  });

  it('says how many the other shelf has where this one has none', async () => {
    expect(await ask({ query: 'walnut' })).toMatchObject({ total: 0, elsewhere: 3, elsewhereMore: false });
    expect(await ask({ query: 'satin', show: 'wood' })).toMatchObject({ total: 0, elsewhere: 70 });
    expect(await ask({ query: 'satin' })).toMatchObject({ total: 70, elsewhere: 0 });
    expect(await ask({ query: 'nothing like it' })).toMatchObject({ total: 0, elsewhere: 0 });
  });

  it('takes a query of odd characters for words that are not there', async () => {
    for (const query of ["'; DROP TABLE Stock; --", '%', '_', '\u0000', '🪵', '"', '   ']) {
      expect((await ask({ query })).total, query).toBe(query.trim() === '' ? 134 : 0);
    }
  });
});
