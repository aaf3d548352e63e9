import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { history } from '@/app/_server/ledger/history';
import { addPlace } from '@/app/_server/places/add-place';
import { changePlace } from '@/app/_server/places/change-place';
import { noteTemperature } from '@/app/_server/places/note-temperature';
import { listPlaces, placePage } from '@/app/_server/places/place-page';
import { placeChoices, placeTree } from '@/app/_server/places/place-tree';
import { sayEntry } from '@/app/(shop)/_parts/history/say-entry';
import { addPlaceSchema, temperatureSchema } from '@/app/(shop)/places/schema';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

describe('places', () => {
  let test: TestBook;
  let shed = '';
  let cabinet = '';
  let shelf = '';
  beforeAll(async () => {
    test = await freshBook();
    const { book } = test;
    shed = must(await addPlace(book, by(), { name: 'Shed', kind: 'outside' })).label;
    cabinet = must(await addPlace(book, by(), { name: 'Cabinet', kind: 'cabinet', parentLabel: shed })).label;
    shelf = must(await addPlace(book, by(), { name: 'Shelf 1', kind: 'shelf', parentLabel: cabinet })).label;
    const storage = { storageLeastTenthsC: 50, storageMostTenthsC: 300 };
    await stocked(book, { placeLabel: shelf, count: 2, product: { name: 'Keeps warm', ...storage } });
    await stocked(book, { placeLabel: shed, lotCode: 'B', product: { name: 'Anything goes' } });
  });
  afterAll(() => test.remove());

  it('are a tree whose counts add up', async () => {
    const tree = placeTree(await listPlaces(test.book));
    const [top] = tree;
    expect(tree).toHaveLength(1);
    expect(top).toMatchObject({ name: 'Shed', things: 1, all: 3 });
    expect(top?.inside[0]).toMatchObject({ name: 'Cabinet', things: 0, all: 2 });
    expect(placeChoices(tree).map(({ says }) => says)).toEqual(['Shed', 'Cabinet, Shed', 'Shelf 1, Cabinet, Shed']);
    expect((await placePage(test.book, shelf))?.inside.map(({ name }) => name)).toEqual(['Shed', 'Cabinet']);
  });

  it('cannot be put inside what is inside them', async () => {
    const into = { label: shed, name: 'Shed', kind: 'outside' as const, parentLabel: shelf };
    expect(refusedWith(await changePlace(test.book, by(), into))).toBe('place-in-itself');
  });

  it('are not two by case or spaces alone', async () => {
    const { book } = test;
    for (const name of ['shelf 1', ' SHELF  1 ', 'Shelf1']) {
      const refused = await addPlace(book, by(), { name, kind: 'shelf', parentLabel: cabinet });
      expect(refusedWith(refused)).toBe('name-taken');
    }
    const other = must(await addPlace(book, by(), { name: ' Top   shelf ', kind: 'shelf', parentLabel: cabinet }));
    expect(other.name).toBe('Top shelf');
    const change = { label: other.label, kind: 'shelf' as const, parentLabel: cabinet };
    expect(refusedWith(await changePlace(book, by(), { ...change, name: 'sHELF 1' }))).toBe('name-taken');
    must(await changePlace(book, by(), { ...change, name: 'TOP SHELF' }));
    const told = await history(book, { placeId: other.placeId });
    const CONTEXT = { timeZone: 'UTC', today: TODAY, order: 'day-first', prefer: 'metric' } as const;
    const says = told.entries.map((entry) => sayEntry(entry, CONTEXT).what);
    expect(says).toEqual(['Changed the place', 'Added the place Top shelf']);
    must(await changePlace(book, by(), { label: other.label, name: 'Top shelf', kind: 'bench' }));
  });

  it('mark what was kept too cold, in the place and inside it, and say so in the workshop’s own units', async () => {
    const { marked } = must(
      await noteTemperature(test.book, by(), { label: shed, leastTenthsC: -22, mostTenthsC: 210 }),
    );
    expect(marked).toHaveLength(2);
    const page = await placePage(test.book, shelf);
    expect(page?.containers.map((line) => line.candidate.container.conditions)).toEqual([
      ['stored-out-of-range'],
      ['stored-out-of-range'],
    ]);
    const { id: placeId } = (await listPlaces(test.book)).find(({ label }) => label === shed) ?? { id: 0 };
    const told = await history(test.book, { placeId });
    expect(told.entries[0]).toMatchObject({ kind: 'temperature-noted', why: '28 °F to 70 °F' });
    expect(
      must(await noteTemperature(test.book, by(), { label: cabinet, leastTenthsC: -30, mostTenthsC: 200 })).marked,
    ).toEqual([]);
  });

  it('read typed temperatures in the units they were echoed in', () => {
    const read = (least: string, most: string, prefer: 'metric' | 'imperial') =>
      temperatureSchema.safeParse({ label: shed, least, most, prefer });
    expect(read('28', '70', 'imperial').data).toEqual({ label: shed, leastTenthsC: -22, mostTenthsC: 211 });
    expect(read('-2,2', '70 F', 'metric').data).toEqual({ label: shed, leastTenthsC: -22, mostTenthsC: 211 });
    const wrong = (least: string, most: string) =>
      read(least, most, 'metric').error?.issues.map(({ path }) => path.join('.'));
    expect(wrong('', 'warm')).toEqual(['least', 'most']);
    expect(wrong('20', '5')).toEqual(['most']);
    expect(wrong('5', '20')).toBeUndefined();
  });

  it('take only labels of places as what they are inside of', () => {
    const parse = (parentLabel?: string) =>
      addPlaceSchema.safeParse({ name: 'Rack', kind: 'rack', parentLabel }).success;
    expect([parse(undefined), parse(shed), parse('C4V9TN3'), parse('anything')]).toEqual([true, true, false, false]);
  });
});
