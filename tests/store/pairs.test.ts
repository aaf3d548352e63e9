import fs from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { changeHouseSizes } from '@/app/_server/cuts/change-house-sizes';
import { cutPiece } from '@/app/_server/cuts/cut-piece';
import { pairPieces, partPair } from '@/app/_server/cuts/pair-pieces';
import { readFamily } from '@/app/_server/cuts/read-family';
import { readHouse } from '@/app/_server/cuts/read-house';
import { takeBoards } from '@/app/_server/cuts/take-boards';
import { type Difference, proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { discard } from '@/app/_server/stock/discard';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { receiveBoards } from '@/app/_server/stock/receive-boards';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { openBook } from '@/prisma/open-book';
import { pairSplitBy } from '@/shared/wood/pair-split-by';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { tamperedCopy } from '@/tests/support/tampered-copy';
import { by, freshBook, must, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';
import { onServer } from '@/tests/support/test-server';

let test: TestBook;
beforeAll(async () => {
  test = await freshBook();
});
afterAll(async () => {
  expect((await proveBook(test.book.read)).differences).toEqual([]);
  await test.remove();
});

let flitches = 0;
async function sisters(count: number): Promise<string[]> {
  flitches += 1;
  const { pieces } = must(
    await receivePieces(
      test.book,
      by(),
      aSlab({ count, flitch: `Log ${flitches}`, flitchNumber: 1, costMinor: 90_000 }),
    ),
  );
  return pieces.map(({ label }) => label);
}
const line = async (label: string) => {
  const found = await loadPiece(test.book.read, label);
  if (!found) throw new Error(`${label} is gone.`);
  return found;
};
const pair = (label: string, withLabel: string) => pairPieces(test.book, by(), { label, withLabel });

async function cutAt(label: string, ...xs: number[]) {
  const lines = xs.map((x) => ({
    way: 'cross' as const,
    points: [
      { x: x * 1000, y: 0 },
      { x: x * 1000, y: 1 },
    ],
    kerf: 3200,
  }));
  const become = [...xs, 0].map(() => ({ as: 'slab' as const, promised: true }));
  return must(
    await cutPiece(test.book, by(), {
      label,
      shapeId: (await line(label)).shape?.id ?? null,
      how: { by: 'lines', lines, bands: 'kept' },
      become,
      why: '',
    }),
  );
}

describe('a bookmatched pair', () => {
  it('is two sisters that name each other, until it is parted', async () => {
    const [one = '', two = ''] = await sisters(2);
    must(await pair(one, two));
    expect([(await line(one)).pairedWith?.label, (await line(two)).pairedWith?.label]).toEqual([two, one]);
    must(await partPair(test.book, by(), { label: two }));
    expect([(await line(one)).pairedWith, (await line(two)).pairedWith]).toEqual([null, null]);
    expect(refusedWith(await partPair(test.book, by(), { label: two }))).toBe('not-paired');
  });

  it('has no third, no stranger, and not the same piece twice', async () => {
    const [one = '', two = '', three = ''] = await sisters(3);
    const [stranger = ''] = await sisters(1);
    must(await pair(one, two));
    expect(await pair(one, three)).toMatchObject({
      error: { code: 'paired-already', facts: { label: one, with: two } },
    });
    expect(refusedWith(await pair(three, two))).toBe('paired-already');
    expect(await pair(three, three)).toMatchObject({ error: { code: 'pair-does-not-fit', facts: { why: 'self' } } });
    expect(await pair(three, stranger)).toMatchObject({ error: { facts: { why: 'stranger' } } });
    must(await discard(test.book, by(), { label: stranger, why: 'Rotten' }));
    expect(await pair(three, stranger)).toMatchObject({ error: { facts: { label: stranger, why: 'gone' } } });
  });

  it('frees the half that is left when the other is gone', async () => {
    const [one = '', two = '', three = ''] = await sisters(3);
    must(await pair(one, two));
    await cutAt(two, 1000);
    expect((await line(one)).pairedWith).toMatchObject({ label: two, inStock: false });
    expect(pairSplitBy([await line(one)])).toEqual([]);
    must(await pair(one, three));
    expect([(await line(one)).pairedWith?.label, (await line(two)).pairedWith]).toEqual([three, null]);
  });

  it('is split by what takes one of it, and not by what takes both', async () => {
    const [one = '', two = ''] = await sisters(2);
    must(await pair(one, two));
    const [a, b] = [await line(one), await line(two)];
    expect(pairSplitBy([a])).toEqual([{ label: one, stays: two }]);
    expect(pairSplitBy([a, b])).toEqual([]);
  });
});

describe('the family of a piece', () => {
  it('is the same tree from every piece of it, cuts that were reversed left out', async () => {
    const [slab = ''] = await sisters(1);
    const { pieces } = await cutAt(slab, 1000, 2000);
    const second = await cutAt(pieces[0]?.label ?? '', 400);
    const tree = async (label: string) => {
      const family = await readFamily(test.book, (await line(label)).stockId);
      const say = (piece: NonNullable<typeof family>): string =>
        `${piece.line.label}${piece.children.length ? `(${piece.children.map(say).join(' ')})` : ''}`;
      return family && say(family);
    };
    const [one, two, three] = pieces.map(({ label }) => label);
    const [left, right] = second.pieces.map(({ label }) => label);
    for (const label of [slab, two, left]) {
      expect(await tree(label ?? '')).toBe(`${slab}(${one}(${left} ${right}) ${two} ${three})`);
    }
    must(await reverseEntry(test.book, by(), { entryId: second.entryId, why: 'Wrong one' }));
    expect(await tree(two ?? '')).toBe(`${slab}(${one} ${two} ${three})`);
    const root = await readFamily(test.book, (await line(slab)).stockId);
    // What was cut is drawn where it lay.
    const starts = root?.cut?.parts.map(({ ring }) => Math.min(...ring.map(({ x }) => x)));
    expect(starts).toEqual([0, 1_001_600, 2_001_600]);
  });

  it('is nothing for a piece that was never cut', async () => {
    const [slab = ''] = await sisters(1);
    expect(await readFamily(test.book, (await line(slab)).stockId)).toBeUndefined();
  });
});

describe('the sizes of the house', () => {
  it('are kept, said in the history, and refused where they cannot be', async () => {
    const sizes = { houseLengthNm: 400_000_000, houseWidthNm: 120_000_000, kerfNm: 2_400_000 };
    must(await changeHouseSizes(test.book, by('sizes'), sizes));
    expect(await readHouse(test.book)).toEqual({ lengthNm: 400_000_000, widthNm: 120_000_000, kerfNm: 2_400_000 });
    const { why } = await test.book.read.entry.findUniqueOrThrow({ where: { key: 'sizes' } });
    expect(why).toMatch(/^houseLengthNm: 1' → ≈ 1' 3 3\/4"; houseWidthNm: .*; kerfNm: .* → ≈ 3\/32"$/);
    expect(refusedWith(await changeHouseSizes(test.book, by(), sizes))).toBe('changes-nothing');
    expect(refusedWith(await changeHouseSizes(test.book, by(), { ...sizes, kerfNm: 51_000_000 }))).toBe(
      'outside-range',
    );
  });
});

describe('proving cuts', () => {
  beforeAll(async () => {
    const pack = must(
      await receiveBoards(test.book, by(), {
        as: 'pack',
        species: 'Ash',
        thicknessNm: 27_000_000,
        flags: [],
        flitch: '',
        note: '',
        receivedOn: TODAY,
        costMinor: 10_000,
        boards: [
          { lengthNm: 2_400_000_000, widthNm: 180_000_000 },
          { lengthNm: 2_000_000_000, widthNm: 210_000_000 },
        ],
      }),
    );
    const label = pack.pieces[0]?.label ?? '';
    const boardIds = (await line(label)).boards.map(({ id }) => id);
    must(await takeBoards(test.book, by(), { label, boardIds, why: '' }));
  });

  // A copy of the file is tampered with.
  it.skipIf(onServer()).each([
    [
      'cuts-add-up',
      'a cost that was changed',
      `UPDATE "Piece" SET "costMinor" = "costMinor" + 1 WHERE "stockId" = (SELECT max("stockId") FROM "Piece" WHERE "cutId" IS NOT NULL)`,
    ],
    ['cuts-add-up', 'scrap that was lost', `UPDATE "Cut" SET "lines" = replace("lines", '"sawdust":', '"sawdust":9')`],
    [
      'cuts-add-up',
      'a piece of a reversed cut on hand',
      `UPDATE "Stock" SET "quantity" = 1 WHERE "id" IN (SELECT "Piece"."stockId" FROM "Piece" JOIN "Entry" ON "reversesId" = "cutId")`,
    ],
    [
      'cuts-add-up',
      'a cut slab on hand',
      `UPDATE "Stock" SET "quantity" = 1 WHERE "id" IN (SELECT "pieceId" FROM "Cut")`,
    ],
    [
      'pairs-name-each-other',
      'half a pair',
      `UPDATE "Piece" SET "pairedWithId" = NULL WHERE "stockId" = (SELECT min("stockId") FROM "Piece" WHERE "pairedWithId" IS NOT NULL)`,
    ],
    [
      'packs-hold-boards',
      'an empty pack on hand',
      `UPDATE "Stock" SET "quantity" = 1 WHERE "id" IN (SELECT "stockId" FROM "Piece" WHERE "form" = 'pack')`,
    ],
    [
      'packs-hold-boards',
      'a pack gone with a board in it',
      `UPDATE "PackBoard" SET "takenById" = NULL WHERE "id" = (SELECT max("id") FROM "PackBoard")`,
    ],
    [
      'shapes-are-of-their-piece',
      'a shape of another',
      `UPDATE "Shape" SET "pieceId" = (SELECT min("stockId") FROM "Piece") WHERE "id" = (SELECT max("shapeId") FROM "Piece")`,
    ],
  ])('names %s: %s', async (rule, _, sql) => {
    const copy = await tamperedCopy(test.files, sql);
    const book = await openBook(copy);
    try {
      const { differences } = await proveBook(book.read);
      expect(differences.map((each: Difference) => each.rule)).toContain(rule);
    } finally {
      await book.close();
      fs.rmSync(copy.folder, { recursive: true, force: true });
    }
  });
});
