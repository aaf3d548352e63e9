import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { takeBoards } from '@/app/_server/cuts/take-boards';
import { onHand } from '@/app/_server/find/on-hand';
import { history } from '@/app/_server/ledger/history';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { changeHold } from '@/app/_server/stock/change-hold';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { type ReceiveBoards, receiveBoards } from '@/app/_server/stock/receive-boards';
import { packFigures } from '@/shared/wood/pack-figures';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

const INCH = 25_400_000;
const FOOT = 12 * INCH;

/** Four walnut boards of 8/4 that cost 100.01: two of 6 in by 8 ft, one of 7 in by 10 ft, one of 5 1/2 in by 6 ft 6 in. */
const PACK: ReceiveBoards = {
  as: 'pack',
  species: 'Walnut',
  thicknessNm: 2 * INCH,
  quarters: 8,
  surfacing: 'rough',
  flags: [],
  flitch: '',
  note: '',
  origin: 'Sussex',
  boards: [
    { widthNm: 6 * INCH, lengthNm: 8 * FOOT },
    { widthNm: 6 * INCH, lengthNm: 8 * FOOT },
    { widthNm: 7 * INCH, lengthNm: 10 * FOOT },
    { widthNm: 5.5 * INCH, lengthNm: 6.5 * FOOT },
  ],
  costMinor: 10_001,
  receivedOn: TODAY,
  reading: { mcTenths: 91, meter: 'pins', spot: 'middle' },
};

describe('a pack of boards', () => {
  let made: TestBook;
  beforeEach(async () => {
    made = await freshBook();
  });
  afterEach(() => made.remove());

  const arrive = async (more: Partial<ReceiveBoards> = {}) => {
    const { pieces } = must(await receiveBoards(made.book, by(), { ...PACK, ...more }));
    return pieces;
  };
  const load = async (label: string) => {
    const line = await loadPiece(made.book.read, label);
    if (!line) throw new Error(`No ${label}.`);
    return line;
  };
  const aPack = async (more: Partial<ReceiveBoards> = {}) => load((await arrive(more))[0]?.label ?? '');
  const take = (label: string, boardIds: number[]) => takeBoards(made.book, by(), { label, boardIds, why: '' });
  const proof = async () => (await proveBook(made.book.read)).differences;

  it('comes in as one piece with one label and every board of its tally', async () => {
    const pack = await aPack();
    expect(pack).toMatchObject({ form: 'pack', species: 'Walnut', quarters: 8, origin: 'Sussex' });
    expect(pack.boards).toHaveLength(4);
    expect(pack.facts.inStock).toBe(true);
    // 4, 4, then 70/12 = 5.8 to 6, then 5.5 × 6 / 12 = 2.75 to 3: 17 square feet, at two inches 34 board feet.
    expect(packFigures(pack).all.boardFeet).toBe(34);
    expect(await proof()).toEqual([]);
  });

  it('comes in as single boards where that is asked, their costs adding up to what was paid', async () => {
    const pieces = await arrive({ as: 'singly' });
    expect(pieces).toHaveLength(4);
    const lines = await Promise.all(pieces.map((piece) => load(piece.label)));
    expect(lines.map((line) => line.form)).toEqual(['board', 'board', 'board', 'board']);
    expect(lines.reduce((sum, line) => sum + (line.cost?.minor ?? 0), 0)).toBe(10_001);
    expect(lines.every((line) => line.readings.length === 1)).toBe(true);
    expect(await proof()).toEqual([]);
  });

  it('gives boards out one by one, each with a label, its readings and a share of the cost that adds up exactly', async () => {
    const pack = await aPack();
    const labels: string[] = [];
    for (const board of pack.boards) labels.push(must(await take(pack.label, [board.id])).pieces[0]?.label ?? '');
    expect(new Set(labels).size).toBe(4);
    const lines = await Promise.all(labels.map(load));
    expect(lines.reduce((sum, line) => sum + (line.cost?.minor ?? 0), 0)).toBe(10_001);
    expect(lines[2]).toMatchObject({ form: 'board', lengthNm: 10 * FOOT, widthMiddleNm: 7 * INCH, origin: 'Sussex' });
    expect(lines[0]?.readings).toMatchObject([{ mcTenths: 91, inherited: true }]);
    const empty = await load(pack.label);
    expect(empty.facts.inStock).toBe(false);
    expect(packFigures(empty).left.count).toBe(0);
    expect(await proof()).toEqual([]);
  });

  it('keeps what is left and what was taken adding up to the tally of the whole', async () => {
    const pack = await aPack();
    must(await take(pack.label, [pack.boards[1]?.id ?? 0, pack.boards[3]?.id ?? 0]));
    const { all, left } = packFigures(await load(pack.label));
    expect(left).toMatchObject({ count: 2, boardFeet: 20 });
    expect(all.boardFeet - left.boardFeet).toBe(14);
    expect((await load(pack.label)).facts.inStock).toBe(true);
  });

  it('gives no board twice, and nothing from what is no pack', async () => {
    const pack = await aPack();
    const id = pack.boards[0]?.id ?? 0;
    const { pieces } = must(await take(pack.label, [id]));
    expect(refusedWith(await take(pack.label, [id]))).toBe('board-gone');
    expect(refusedWith(await take(pack.label, [999_999]))).toBe('board-gone');
    expect(refusedWith(await take(pack.label, []))).toBe('no-boards-chosen');
    expect(refusedWith(await take(pieces[0]?.label ?? '', [id]))).toBe('not-a-pack');
  });

  it('has a board again whose taking was reversed, and gives it out anew', async () => {
    const pack = await aPack();
    const ids = pack.boards.map((board) => board.id);
    const { entryId } = must(await take(pack.label, ids));
    must(await reverseEntry(made.book, by(), { entryId, why: 'Wrong pack' }));
    const back = await load(pack.label);
    expect(back.facts.inStock).toBe(true);
    expect(back.boards.every((board) => !board.taken)).toBe(true);
    must(await take(pack.label, ids.slice(0, 1)));
    expect((await load(pack.label)).boards.map((board) => board.taken)).toEqual([true, false, false, false]);
    expect(await proof()).toEqual([]);
  });

  it('takes no board back once the last of it went, until that is undone', async () => {
    const pack = await aPack();
    const ids = pack.boards.map((board) => board.id);
    const first = must(await take(pack.label, ids.slice(0, 1)));
    const rest = must(await take(pack.label, ids.slice(1)));
    const undo = (entryId: number) => reverseEntry(made.book, by(), { entryId, why: 'Wrong pack' });
    expect(refusedWith(await undo(first.entryId))).toBe('pack-gone-since');
    must(await undo(rest.entryId));
    must(await undo(first.entryId));
    expect((await load(pack.label)).boards.every((board) => !board.taken)).toBe(true);
    expect(await proof()).toEqual([]);
  });

  it('of two hundred boards gives all of them out in one act, the last minor unit of its cost with them', async () => {
    const boards = Array.from({ length: 200 }, (_, nr) => ({
      widthNm: (5 + (nr % 7) / 4) * INCH,
      lengthNm: (6 + (nr % 5)) * FOOT,
    }));
    const pack = await aPack({ boards, costMinor: 299_999 });
    const { pieces, left } = must(
      await take(
        pack.label,
        pack.boards.map((board) => board.id),
      ),
    );
    expect({ pieces: pieces.length, left }).toEqual({ pieces: 200, left: 0 });
    const { _sum } = await made.book.read.piece.aggregate({ where: { form: 'board' }, _sum: { costMinor: true } });
    expect(_sum.costMinor).toBe(299_999n);
    expect(await proof()).toEqual([]);
  });

  it('hands its place and its hold on to the boards', async () => {
    const pack = await aPack();
    must(await changeHold(made.book, by(), { stockId: pack.stockId, hold: 'quarantine', why: 'Beetle' }));
    const { pieces } = must(await take(pack.label, [pack.boards[0]?.id ?? 0]));
    expect((await load(pieces[0]?.label ?? '')).facts.hold).toBe('quarantine');
  });

  it('answers a replay of the same press with the same labels and takes nothing more', async () => {
    const pack = await aPack();
    const press = by();
    const input = { label: pack.label, boardIds: [pack.boards[0]?.id ?? 0], why: '' };
    const first = must(await takeBoards(made.book, press, input));
    expect(must(await takeBoards(made.book, press, input))).toEqual(first);
    expect((await load(pack.label)).boards.filter((board) => board.taken)).toHaveLength(1);
  });

  it('is refused with a board that cannot be one, and nothing is kept of it', async () => {
    const boards = [...PACK.boards, { widthNm: 0, lengthNm: 8 * FOOT }];
    expect(refusedWith(await receiveBoards(made.book, by(), { ...PACK, boards }))).toBe('outside-range');
    expect(refusedWith(await receiveBoards(made.book, by(), { ...PACK, boards: [] }))).toBe('absurd-count');
    expect(await made.book.read.piece.count()).toBe(0);
  });

  it('says in its history what was taken', async () => {
    const pack = await aPack();
    must(await take(pack.label, [pack.boards[2]?.id ?? 0]));
    const { entries } = await history(made.book, { stockId: pack.stockId });
    expect(entries.map((entry) => entry.kind)).toContain('boards-taken');
  });

  it.each(['8/4 walnut', 'sussex', 'walnut pack', 'rough walnut'])('is found by “%s”', async (query) => {
    const pack = await aPack();
    const found = await onHand(made.book, { show: 'wood', query });
    expect(found.pieces.map((piece) => piece.label)).toContain(pack.label);
  });
});

describe('a sheet', () => {
  it('is found by its grain and by its faces, and by nothing it is not', async () => {
    const made = await freshBook();
    const { receivePieces } = await import('@/app/_server/stock/receive-pieces');
    const sheet = aSlab({ form: 'sheet', species: 'Birch plywood', flags: [], reading: undefined });
    must(
      await receivePieces(made.book, by(), { ...sheet, grain: 'width', faceA: 'BB sanded', faceB: 'Melamine white' }),
    );
    const count = async (query: string) => (await onHand(made.book, { show: 'wood', query })).total;
    expect(await count('cross grain')).toBe(1);
    expect(await count('birch bb')).toBe(1);
    expect(await count('melamine')).toBe(1);
    expect(await count('grain length')).toBe(0);
    await made.remove();
  });
});
