import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findThings } from '@/app/_server/find/find-things';
import { history } from '@/app/_server/ledger/history';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { nameWood } from '@/app/_server/stock/name-wood';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, refusedWith, type TestBook } from '@/tests/support/test-book';

let test: TestBook;
beforeAll(async () => {
  test = await freshBook();
});
afterAll(async () => {
  expect((await proveBook(test.book.read)).differences).toEqual([]);
  await test.remove();
});

const receive = async (more: Parameters<typeof aSlab>[0]) =>
  must(await receivePieces(test.book, by(), aSlab(more))).pieces.map(({ label }) => label);

describe('naming the wood of a piece', () => {
  it('names its whole flitch, since one log is one species, and says so on each', async () => {
    const [one = '', two = ''] = await receive({ count: 2, species: 'Walnut', flitch: 'Dairy', flitchNumber: 1 });
    const [other = ''] = await receive({ species: 'Walnut' });
    const answer = must(await nameWood(test.book, by(), { label: one, speciesId: 'black-walnut' }));
    expect(answer).toMatchObject({ species: 'Black walnut', pieces: 2 });
    const lines = await Promise.all([one, two, other].map((label) => loadPiece(test.book.read, label)));
    expect(lines.map((line) => line?.species)).toEqual(['Black walnut', 'Black walnut', 'Walnut']);
    for (const line of lines.slice(0, 2)) {
      const { entries } = await history(test.book, { stockId: line?.stockId ?? 0 });
      expect(entries[0]).toMatchObject({
        kind: 'piece-changed',
        why: expect.stringContaining('Walnut → Black walnut'),
      });
    }
    const found = await findThings(test.book, 'black');
    expect(found.piece).toContain(lines[0]?.stockId);
  });

  it('is refused for a wood that is not known here, and where it is that already', async () => {
    const [one = ''] = await receive({ species: 'Walnut' });
    expect(refusedWith(await nameWood(test.book, by(), { label: one, speciesId: 'no-such' }))).toBe('not-found');
    must(await nameWood(test.book, by(), { label: one, speciesId: 'black-walnut' }));
    expect(refusedWith(await nameWood(test.book, by(), { label: one, speciesId: 'black-walnut' }))).toBe(
      'changes-nothing',
    );
  });
});
