import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { teachCode } from '@/app/_server/codes/teach-code';
import { type Found, findThings } from '@/app/_server/find/find-things';
import { onHand } from '@/app/_server/find/on-hand';
import { addJob } from '@/app/_server/jobs/add-job';
import { addPlace } from '@/app/_server/places/add-place';
import { changePlace } from '@/app/_server/places/change-place';
import { changeProduct } from '@/app/_server/products/change-product';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { moveStock } from '@/app/_server/stock/move-stock';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { toGtin14 } from '@/shared/scan-codes/to-gtin14';
import { aSlab, RESIN, stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, type TestBook, TODAY } from '@/tests/support/test-book';

/** Every id that was found, of whatever kind. */
const idsIn = (found: Found) => Object.values(found).filter(Array.isArray).flat();

describe('finding things', () => {
  let test: TestBook;
  let walnut: { stockId: number; label: string }[] = [];
  let hardener: Awaited<ReturnType<typeof stocked>>;
  let oil: Awaited<ReturnType<typeof stocked>>;
  let bench = '';

  beforeAll(async () => {
    test = await freshBook();
    hardener = await stocked(test.book, {
      lotCode: '25F-118/B',
      product: { name: 'Härter für Gießharz', maker: 'Tarn & Söhne', system: undefined },
    });
    oil = await stocked(test.book, {
      lotCode: 'Ö 7',
      count: 3,
      product: { name: 'Hardwax oil, satin', maker: 'Moor', system: undefined },
    });
    walnut = must(await receivePieces(test.book, by(), aSlab({ species: 'Noyer d’Amérique', flitch: 'K-7' }))).pieces;
    bench = must(await addPlace(test.book, by(), { name: 'Pouring bench', kind: 'bench' })).label;
    must(
      await addJob(test.book, by(), {
        name: 'River desk',
        purpose: 'client',
        client: 'Zoë Marlow',
        dayOfUse: day('2026-12-05'),
        note: '',
      }),
    );
    must(await teachCode(test.book, by(), { code: '09521234000013', means: { productId: oil.productId } }));
  });
  afterAll(() => test.remove());

  const find = (query: string) => findThings(test.book, query);

  it.each(['Härter', 'harter', 'HÄRTER', 'ha\u0308rter', 'gie', 'tarn', 'soh', 'für gieß', 'gieß für tarn'])(
    'by words with or without accents, whole or begun, in any order: %s',
    async (query) => {
      const found = await find(query);
      expect(found.product).toEqual([hardener.productId]);
      // Its lots come with the product; by themselves they are found where their code is asked for too.
      expect(found.lot).toEqual([]);
    },
  );

  it.each(['25F-118/B', '25f118b', '25F', '118', '25f-118', 'harter 118', '118 harter'])(
    'by the code of a lot with or without its dashes: %s',
    async (query) => {
      expect((await find(query)).lot).toEqual([hardener.lotId]);
    },
  );

  it.each(['noyer amerique', "d'amerique", 'K-7', 'k7', 'slab noy'])(
    'wood by species, form and flitch: %s',
    async (query) => {
      expect((await find(query)).piece).toEqual(walnut.map((each) => each.stockId));
    },
  );

  it('a place by name and kind, a job by name and client, a product by a taught code', async () => {
    const place = await test.book.read.place.findUniqueOrThrow({ where: { label: bench } });
    expect((await find('bench pour')).place).toEqual([place.id]);
    expect((await find('zoe')).job).toHaveLength(1);
    expect((await find('desk river')).job).toHaveLength(1);
    expect((await find('0952123400')).product).toEqual([oil.productId]);
  });

  it.each([
    ['GTIN-13', '9521234000013'],
    ['GTIN-13 spaced as under the bars', '9 521234 000013'],
    ['GTIN-13, begun', '95212340'],
    ['GTIN-14', '09521234000013'],
    ['GS1 element string with another lot', ']C10109521234000013\u001d10NOSUCHLOT'],
    ['GS1 Digital Link', 'https://id.gs1.org/01/09521234000013'],
  ])('a product by the number printed under its bar code: %s', async (_, query) => {
    expect((await find(query)).product).toEqual([oil.productId]);
  });

  it.each([
    ['GTIN-12', '614141000036', '00614141000036'],
    ['GTIN-8', '95212333', '00000095212333'],
  ])('a product by a shorter number as it is printed: %s', async (_, printed, kept) => {
    const gtin14 = toGtin14(printed);
    expect(gtin14.ok && gtin14.value.gtin14).toBe(kept);
    must(await teachCode(test.book, by(), { code: kept, means: { productId: hardener.productId } }));
    expect((await find(printed)).product).toEqual([hardener.productId]);
    expect((await find(printed.slice(0, 7))).product).toEqual([hardener.productId]);
  });

  it('a lot by a GS1 label that carries it', async () => {
    expect((await find('(01)09506000134352(10)25F-118/B')).lot).toEqual([hardener.lotId]);
    expect((await find(']C11025F-118/B')).lot).toEqual([hardener.lotId]);
  });

  it('by an own label typed with look-alikes, whole or begun with a digit in it', async () => {
    const mistyped = (label: string) => label.charAt(0) + label.slice(1).replaceAll('0', 'O').replaceAll('1', 'l');
    const alike = oil.containers.find(({ label }) => mistyped(label) !== label);
    expect(alike).toBeDefined();
    const { label = '', stockId = 0 } = alike ?? {};
    expect((await find(mistyped(label))).containers).toEqual([stockId]);
    expect((await find(`${label.charAt(0)}-${mistyped(label).slice(1, 6)}`)).containers).toContain(stockId);
  });

  it('by an own label, with the dash, without it, and begun', async () => {
    const { stockId = 0, label = '' } = oil.containers[1] ?? {};
    for (const query of [label, `${label.slice(0, 1)}-${label.slice(1)}`, label.toLowerCase(), label.slice(0, 5)]) {
      expect((await find(query)).containers, query).toContain(stockId);
    }
    const { stockId: slab = 0, label: slabLabel = '' } = walnut[0] ?? {};
    expect((await find(slabLabel)).piece).toEqual([slab]);
  });

  it.each(['satin harter', 'xyzzy', 'oil 118', 'arter', '%', '_', "' OR 1=1 --", '*'])(
    'nothing where a word fits nothing: %s',
    async (query) => {
      const found = await find(query);
      expect(idsIn(found)).toEqual([]);
    },
  );

  it('nothing for no words, and takes any text without falling over', async () => {
    for (const query of ['', '   ', '🪵', '\u0000', '\u{10FFFF}', 'a'.repeat(5000), '- - -', 'ß'.repeat(300)]) {
      expect(idsIn(await find(query))).toEqual([]);
    }
  });

  it('a product, and its lots, by the new name once it is renamed, and no more by the old', async () => {
    must(
      await changeProduct(test.book, by(), {
        ...RESIN,
        system: undefined,
        name: 'Hardener, amber',
        maker: 'Tarn & Söhne',
        productId: hardener.productId,
      }),
    );
    expect(await find('harter')).toMatchObject({ product: [], lot: [] });
    expect(await find('harter 118')).toMatchObject({ product: [], lot: [] });
    expect(await find('amber hardener')).toMatchObject({ product: [hardener.productId], lot: [] });
    expect(await find('amber 118')).toMatchObject({ product: [], lot: [hardener.lotId] });
    must(await changePlace(test.book, by(), { label: bench, name: 'Resin table', kind: 'bench' }));
    expect((await find('pouring')).place).toEqual([]);
    expect((await find('resin table')).place).toHaveLength(1);
  });

  it('shows what stands in a place that was found', async () => {
    must(
      await moveStock(test.book, by(), { labels: [walnut[0]?.label ?? '', oil.labels[0] ?? ''], placeLabel: bench }),
    );
    expect((await onHand(test.book, { show: 'wood', query: 'resin table' })).pieces.map((each) => each.label)).toEqual([
      walnut[0]?.label,
    ]);
    expect(
      (await onHand(test.book, { show: 'materials', query: 'resin table' })).containers.map((each) => each.label),
    ).toEqual([oil.labels[0]]);
  });

  it('leaves out what is used up unless it is asked for', async () => {
    const [label = ''] = oil.labels;
    must(
      await pullContainer(test.book, by(), {
        label,
        purpose: 'client',
        dayOfUse: TODAY,
        asked: 2_500_000,
        seen: 'care',
      }),
    );
    const labels = async (withEmpty: boolean) =>
      (await onHand(test.book, { show: 'materials', query: 'satin', withEmpty })).containers.map((each) => each.label);
    expect(await labels(false)).toEqual(oil.labels.slice(1));
    expect(await labels(true)).toEqual(oil.labels);
  });
});

describe('paging through what is on hand', () => {
  let test: TestBook;
  beforeAll(async () => {
    test = await freshBook();
    // Names that sort apart from their numbers, and two products of one name.
    for (const [name, maker] of [
      ['Beta', 'x'],
      ['Alpha', 'x'],
      ['Beta', 'y'],
      ['Gamma', 'x'],
    ]) {
      await stocked(test.book, { count: 37, product: { name, maker, system: undefined } });
    }
    for (const species of ['Oak', 'Ash', 'Oak'])
      must(await receivePieces(test.book, by(), aSlab({ species, count: 45 })));
  });
  afterAll(() => test.remove());

  async function leaf<T>(
    show: 'materials' | 'wood',
    query: string,
    pick: (page: Awaited<ReturnType<typeof onHand>>) => T[],
  ) {
    const all: T[] = [];
    let after: number | undefined;
    for (let pages = 0; pages < 20; pages += 1) {
      const page = await onHand(test.book, { show, query, after });
      all.push(...pick(page));
      if (page.next === null) return { all, pages: pages + 1 };
      after = page.next;
    }
    throw new Error('The pages never end.');
  }

  it.each([
    ['all of it', '', 148, 8],
    ['what is found', 'beta', 74, 4],
  ])('materials: %s, each once', async (_, query, count, pages) => {
    const { all, pages: turned } = await leaf('materials', query, (page) => page.containers);
    expect(turned).toBe(pages);
    expect(new Set(all.map((each) => each.label)).size).toBe(count);
    expect(all).toHaveLength(count);
    expect(all.map((each) => each.product)).toEqual([...all.map((each) => each.product)].sort());
    expect((await onHand(test.book, { show: 'materials', query })).total).toBe(count);
  });

  it('wood: all of it, each once', async () => {
    const { all } = await leaf('wood', '', (page) => page.pieces);
    expect(new Set(all.map((each) => each.label)).size).toBe(135);
    expect(all).toHaveLength(135);
    expect(all.map((each) => each.species)).toEqual([...all.map((each) => each.species)].sort());
  });

  it('wood that a search finds: every one of it', async () => {
    const { all } = await leaf('wood', 'oak', (page) => page.pieces);
    expect(all).toHaveLength(90);
  });

  it('neither repeats nor skips when something is used up or comes in between two pages', async () => {
    const first = await onHand(test.book, { show: 'materials', query: '' });
    const last = first.containers.at(-1)?.label ?? '';
    must(
      await pullContainer(test.book, by(), {
        label: last,
        purpose: 'client',
        dayOfUse: TODAY,
        asked: 2_500_000,
        seen: 'care',
      }),
    );
    await stocked(test.book, { product: { name: 'Aardvark', system: undefined } });
    const seen = new Set(first.containers.map((each) => each.label));
    let after = first.next;
    while (after !== null) {
      const page = await onHand(test.book, { show: 'materials', query: '', after });
      for (const { label } of page.containers) {
        expect(seen.has(label), label).toBe(false);
        seen.add(label);
      }
      after = page.next;
    }
    expect(seen.size).toBe(148);
  });
});
