import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { z } from 'zod';
import { act } from '@/app/_server/act';
import { addPlace } from '@/app/_server/places/add-place';
import { addSentPhoto } from '@/app/_server/stock/add-photo';
import { receiveContainers } from '@/app/_server/stock/receive-containers';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { pngOfBlack } from '@/tests/support/png-that-claims';
import { aSlab, stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, storeOf, type TestBook, TODAY } from '@/tests/support/test-book';

vi.mock('next/cache', () => ({ revalidatePath: () => undefined }));
vi.mock('next/headers', () => ({
  headers: async () => new Headers({ 'user-agent': 'Android' }),
  cookies: async () => ({ get: () => undefined }),
}));

let test: TestBook;
const data = process.env.FLITCHBOOK_DATA;
beforeAll(async () => {
  test = await freshBook();
  process.env.FLITCHBOOK_DATA = test.files.folder;
  Object.assign(process.env, storeOf(test.files));
});
afterAll(async () => {
  delete process.env.FLITCHBOOK_DATABASE_URL;
  if (data === undefined) delete process.env.FLITCHBOOK_DATA;
  else process.env.FLITCHBOOK_DATA = data;
  await (globalThis as { flitchbookStore?: Promise<TestBook['book']> }).flitchbookStore?.then((book) => book.close());
  await test.remove();
});

const placeSchema = z.object({ name: z.string(), kind: z.enum(['rack', 'cabinet']) });

describe('an action', () => {
  it('says what went wrong where its schema could not be built, instead of throwing it at the network', async () => {
    const log = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const asked = act(
      () => Promise.reject(new Error('SQLITE_CANTOPEN: unable to open database file')),
      'key-of-a-press',
      {},
      addPlace,
    );
    await expect(asked).resolves.toMatchObject({ ok: false, problem: { code: 'no-permission' } });
    const unforeseen = await act(
      () => Promise.reject(new Error('/srv/book: the moon is in the way')),
      'key-of-a-press',
      {},
      addPlace,
    );
    if (unforeseen.ok) throw new Error('It was not refused.');
    expect(unforeseen.problem.code).toBe('unknown');
    expect(JSON.stringify(unforeseen.problem)).not.toContain('moon');
    const reference = /under (\w{8})\.$/.exec(unforeseen.problem.todo)?.[1];
    expect(log.mock.calls.map(([first]) => first)).toContain(`[${reference}]`);
    log.mockRestore();
  });

  it('answers a press again with its first result, though the same input is read as another day by then', async () => {
    const { productId } = await stocked(test.book);
    let today = TODAY as string;
    const schema = () =>
      z.object({ receivedOn: z.string(), count: z.number() }).transform(({ receivedOn, count }) => ({
        productId,
        lotCode: null,
        dates: {},
        count,
        size: 1000,
        receivedOn: (receivedOn || today) as CalendarDate,
      }));
    const press = (count: number) => act(schema, 'a-key-over-midnight', { receivedOn: '', count }, receiveContainers);
    today = day('2026-01-10');
    const first = await press(1);
    if (!first.ok) throw new Error(first.problem.what);
    today = day('2026-01-11');
    expect(await press(1)).toEqual({ ...first, replayed: true });
    expect(await press(2)).toMatchObject({ ok: false, problem: { code: 'key-used-for-something-else' } });
  });

  it('knows a request by what is in it, not by the order it is in', async () => {
    const first = await act(placeSchema, 'order-of-fields', { name: 'North rack', kind: 'rack' }, addPlace);
    if (!first.ok) throw new Error(first.problem.what);
    expect(await act(placeSchema, 'order-of-fields', { kind: 'rack', name: 'North rack' }, addPlace)).toEqual({
      ...first,
      replayed: true,
    });
    expect(await act(placeSchema, 'order-of-fields', { kind: 'cabinet', name: 'North rack' }, addPlace)).toMatchObject({
      ok: false,
      problem: { code: 'key-used-for-something-else' },
    });
  });

  it('knows a photo by its name and its content', async () => {
    const { stockId } = must(await receivePieces(test.book, by(), aSlab())).pieces[0] ?? { stockId: 0 };
    const schema = z.object({ stockId: z.number(), photo: z.instanceof(File), caption: z.string() });
    const press = (side: number, name = 'slab.png') => {
      const photo = new File([new Uint8Array(pngOfBlack(side, side))], name, { type: 'image/png' });
      return act(schema, 'photo-by-content', { stockId, photo, caption: '' }, addSentPhoto);
    };
    const first = await press(40);
    if (!first.ok) throw new Error(first.problem.what);
    expect(await press(40)).toEqual({ ...first, replayed: true });
    for (const other of [await press(48), await press(40, 'other.png')])
      expect(other).toMatchObject({ ok: false, problem: { code: 'key-used-for-something-else' } });
  });
});
