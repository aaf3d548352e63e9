import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addJob } from '@/app/_server/jobs/add-job';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { addPlace } from '@/app/_server/places/add-place';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { loadContainer } from '@/app/_server/stock/load-container';
import { moveStock } from '@/app/_server/stock/move-stock';
import { openContainer } from '@/app/_server/stock/open-container';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

describe('putting a mistake right', () => {
  let test: TestBook;
  let products = 0;
  const tin = async (count = 1) => {
    products += 1;
    return (await stocked(test.book, { count, product: { name: `Resin ${products}` } })).labels;
  };
  const pull = (label: string, asked: number, key?: string) =>
    pullContainer(test.book, by(key), { label, purpose: 'client', dayOfUse: TODAY, asked, seen: 'care' });
  const entryOf = async (key: string) => (await test.book.read.entry.findUniqueOrThrow({ where: { key } })).id;
  const undo = async (key: string, why = 'Mistake') =>
    reverseEntry(test.book, by(), { entryId: await entryOf(key), why });
  const standing = async (label: string) => (await loadContainer(test.book.read, label))?.candidate.container;

  beforeAll(async () => {
    test = await freshBook();
  });
  afterAll(async () => {
    expect((await proveBook(test.book.read)).differences).toEqual([]);
    await test.remove();
  });

  it('gives back what the first pull took and seals the container again', async () => {
    const [label = ''] = await tin();
    must(await pull(label, 400_000, 'first-and-only'));
    expect((await standing(label))?.opened).toEqual({ on: TODAY, sureness: 'known' });
    must(await undo('first-and-only'));
    expect(await standing(label)).toMatchObject({ left: 2_500_000, opened: undefined });
  });

  it('never calls a container sealed that was taken from since', async () => {
    const [label = ''] = await tin();
    must(await pull(label, 400_000, 'opened-it'));
    must(await pull(label, 300_000, 'took-more'));
    expect(refusedWith(await undo('opened-it'))).toBe('used-since');
    must(await undo('took-more'));
    must(await undo('opened-it'));
    expect(await standing(label)).toMatchObject({ left: 2_500_000, opened: undefined });
  });

  it('gives back the amount of a later pull and leaves the container open', async () => {
    const [label = ''] = await tin();
    must(await openContainer(test.book, by(), { label, opened: { on: TODAY, sureness: 'known' } }));
    must(await pull(label, 400_000, 'one'));
    must(await pull(label, 300_000, 'two'));
    must(await undo('one'));
    expect(await standing(label)).toMatchObject({ left: 2_200_000, opened: { on: TODAY } });
  });

  it('does not take back a receipt of which some was used', async () => {
    const [label = ''] = await tin();
    must(await pull(label, 400_000, 'used'));
    const { entryId } = await test.book.read.movement.findFirstOrThrow({
      where: { stock: { label } },
      orderBy: { id: 'asc' },
    });
    expect(refusedWith(await reverseEntry(test.book, by(), { entryId, why: 'Never came' }))).toBe('used-since');
    must(await undo('used'));
    must(await reverseEntry(test.book, by(), { entryId, why: 'Never came' }));
    expect((await standing(label))?.left).toBe(0);
  });

  it('undoes all of an entry or nothing', async () => {
    const labels = await tin(2);
    const places: string[] = [];
    for (const name of ['North', 'South'])
      places.push(must(await addPlace(test.book, by(), { name, kind: 'rack' })).label);
    const [north = '', south = ''] = places;
    must(await moveStock(test.book, by('both-north'), { labels, placeLabel: north }));
    must(await moveStock(test.book, by('one-south'), { labels: labels.slice(0, 1), placeLabel: south }));
    const entries = await test.book.read.entry.count();
    const refused = await undo('both-north');
    expect(refused.ok ? undefined : refused.error).toMatchObject({
      code: 'changed-since',
      facts: { field: 'placeId', label: labels[0] },
    });
    expect(await test.book.read.entry.count()).toBe(entries);
    expect((await loadContainer(test.book.read, labels[1] ?? ''))?.place).toBe('North');
    must(await undo('one-south'));
    must(await undo('both-north'));
    expect((await loadContainer(test.book.read, labels[1] ?? ''))?.place).toBeNull();
  });

  it('reverses an entry once, and a reversal like any other entry', async () => {
    const [label = ''] = await tin();
    must(await pull(label, 400_000, 'pulled-once'));
    const reversal = by('the-undoing');
    must(await reverseEntry(test.book, reversal, { entryId: await entryOf('pulled-once'), why: 'Wrong jug' }));
    expect(refusedWith(await undo('pulled-once'))).toBe('already-reversed');
    must(await undo('the-undoing', 'It was the right jug'));
    expect((await standing(label))?.left).toBe(2_100_000);
  });

  it('asks for a reason, and refuses an entry that moved nothing or is not there', async () => {
    const [label = ''] = await tin();
    must(await pull(label, 1, 'needs-why'));
    expect(refusedWith(await undo('needs-why', '  '))).toBe('reason-needed');
    must(await addJob(test.book, by('a-job'), { name: 'Desk', purpose: 'own', client: '', dayOfUse: TODAY, note: '' }));
    expect(refusedWith(await undo('a-job'))).toBe('nothing-to-reverse');
    expect(refusedWith(await reverseEntry(test.book, by(), { entryId: 99_999, why: 'What?' }))).toBe('not-found');
  });
});
