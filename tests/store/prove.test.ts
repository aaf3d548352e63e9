import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Difference, type Proof, proveBook } from '@/app/_server/ledger/prove-book';
import { rebuildBalances } from '@/app/_server/ledger/rebuild-balances';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { addPlace } from '@/app/_server/places/add-place';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { moveStock } from '@/app/_server/stock/move-stock';
import { openBook } from '@/prisma/open-book';
import { runScript } from '@/tests/support/run-script';
import { stocked } from '@/tests/support/stock-of-a-test';
import { tamperedCopy } from '@/tests/support/tampered-copy';
import { by, freshBook, must, type TestBook, TODAY } from '@/tests/support/test-book';

describe('proving a book', () => {
  let test: TestBook;
  let label = '';
  const folders: string[] = [];

  beforeAll(async () => {
    test = await freshBook();
    const { labels } = await stocked(test.book, { count: 2 });
    label = labels[0] ?? '';
    const pull = { label, purpose: 'client' as const, dayOfUse: TODAY, seen: 'care' as const };
    must(await pullContainer(test.book, by('first'), { ...pull, asked: 100_000 }));
    must(await pullContainer(test.book, by('second'), { ...pull, asked: 200_000 }));
    const { label: placeLabel } = must(await addPlace(test.book, by(), { name: 'Rack', kind: 'rack' }));
    must(await moveStock(test.book, by('moved'), { labels, placeLabel }));
    const moved = await test.book.read.entry.findUniqueOrThrow({ where: { key: 'moved' } });
    must(await reverseEntry(test.book, by('undone'), { entryId: moved.id, why: 'Not there' }));
  });
  afterAll(async () => {
    await test.remove();
    for (const folder of folders) fs.rmSync(folder, { recursive: true, force: true });
  });

  const tampered = async (sql: string) => {
    const copy = await tamperedCopy(test.files, sql);
    folders.push(copy.folder);
    return copy;
  };
  const prove = async (sql: string): Promise<Proof> => {
    const copy = await openBook(await tampered(sql));
    const proof = await proveBook(copy.read);
    await copy.close();
    return proof;
  };
  const rules = (found: readonly Difference[]) => [...new Set(found.map((each) => each.rule))].sort();

  it('finds nothing in a book nobody touched, and counts what it looked at', async () => {
    const proof = await prove('');
    expect(proof).toEqual({ entries: 8, movements: 8, things: 3, differences: [] });
  });

  const STOCK = 'UPDATE "Stock" SET';
  const OF = `WHERE "id" = (SELECT MIN("id") FROM "Stock" WHERE "kind" = 'container')`;
  it.each([
    [
      'a kept quantity that is not the ledger’s',
      `${STOCK} "quantity" = "quantity" + 5 ${OF}`,
      ['balance-equals-ledger'],
    ],
    ['a kept condition that nobody noted', `${STOCK} "condition" = 'gelled' ${OF}`, ['balance-equals-ledger']],
    ['an opened day that nobody wrote', `${STOCK} "opened" = '2026-01-01/known' ${OF}`, ['balance-equals-ledger']],
    ['a release that nobody decided', `${STOCK} "hold" = 'on-hold' ${OF}`, ['balance-equals-ledger']],
    ['a balance said to stand at another movement', `${STOCK} "lastMovementId" = 1 ${OF}`, ['balance-equals-ledger']],
    [
      'a movement whose amount was edited',
      `UPDATE "Movement" SET "quantityDelta" = -150000 WHERE "entryId" = (SELECT "id" FROM "Entry" WHERE "key" = 'second')`,
      ['balance-equals-ledger'],
    ],
    [
      'a movement that takes more than there was',
      `UPDATE "Movement" SET "quantityDelta" = -9000000 WHERE "entryId" = (SELECT "id" FROM "Entry" WHERE "key" = 'second')`,
      ['balance-equals-ledger', 'movements-follow'],
    ],
    [
      'a movement that starts where the last did not end',
      `UPDATE "Movement" SET "conditionFrom" = 'haze' WHERE "entryId" = (SELECT "id" FROM "Entry" WHERE "key" = 'second')`,
      ['balance-equals-ledger', 'movements-follow'],
    ],
    [
      'a movement that is missing',
      `DELETE FROM "Movement" WHERE "entryId" = (SELECT "id" FROM "Entry" WHERE "key" = 'second')`,
      ['balance-equals-ledger'],
    ],
    [
      'an entry that is missing',
      `DELETE FROM "Movement" WHERE "entryId" = (SELECT "id" FROM "Entry" WHERE "key" = 'second'); DELETE FROM "Entry" WHERE "key" = 'second'`,
      ['balance-equals-ledger', 'entries-without-gaps'],
    ],
    ['entries renumbered', `UPDATE "Book" SET "revision" = "revision" + 1`, ['entries-without-gaps']],
    [
      'a reversal that is not the opposite',
      `UPDATE "Movement" SET "quantityDelta" = 7 WHERE "reversesId" IS NOT NULL AND "id" = (SELECT MAX("id") FROM "Movement")`,
      ['balance-equals-ledger', 'reversals-are-opposites'],
    ],
    [
      'a reversal of only a half',
      `DELETE FROM "Movement" WHERE "id" = (SELECT MAX("id") FROM "Movement")`,
      ['balance-equals-ledger', 'reversals-are-whole'],
    ],
    ['a label that does not check', `${STOCK} "label" = 'CAAAAAA' ${OF}`, ['labels-check']],
    ['a reference to nothing', `UPDATE "Container" SET "productId" = 999`, ['references-hold']],
    ['a value no rule allows', `${STOCK} "hold" = 'perhaps' ${OF}`, ['balance-equals-ledger', 'database-integrity']],
  ])('names %s', async (_, sql, expected) => {
    const proof = await prove(sql);
    expect(rules(proof.differences)).toEqual(expected);
    for (const each of proof.differences) expect(each.where).not.toBe('');
  });

  it('says where and what differs', async () => {
    const { differences } = await prove(`${STOCK} "quantity" = "quantity" + 5 WHERE "label" = '${label}'`);
    expect(differences).toEqual([
      { rule: 'balance-equals-ledger', where: label, says: 'quantity is kept as 2200005, the ledger says 2200000' },
    ]);
  });

  it('mends a balance that was tampered with, and leaves a ledger that was', async () => {
    const copy = await openBook(
      await tampered(`${STOCK} "quantity" = 1, "hold" = 'recalled', "lastMovementId" = 0 ${OF}`),
    );
    expect((await rebuildBalances(copy)).mended).toEqual([label]);
    expect((await proveBook(copy.read)).differences).toEqual([]);
    expect((await rebuildBalances(copy)).mended).toEqual([]);
    await copy.close();

    const torn = await openBook(
      await tampered(
        `UPDATE "Movement" SET "conditionFrom" = 'haze' WHERE "entryId" = (SELECT "id" FROM "Entry" WHERE "key" = 'second')`,
      ),
    );
    expect((await rebuildBalances(torn)).mended).toEqual([]);
    expect(rules((await proveBook(torn.read)).differences)).toContain('movements-follow');
    await torn.close();
  });

  it('ends with 0 for a sound book, 1 for one that differs, 2 for one that cannot be read', async () => {
    const sound = await tampered('');
    const differs = await tampered(`${STOCK} "quantity" = "quantity" + 5 ${OF}`);
    const noBook = fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-copy-'));
    folders.push(noBook);
    fs.writeFileSync(path.join(noBook, 'flitchbook.db'), 'This is a shopping list. '.repeat(200));
    const proved = (folder: string) => runScript('scripts/prove.ts', [], { FLITCHBOOK_DATA: folder });
    const [zero, one, two] = await Promise.all([proved(sound.folder), proved(differs.folder), proved(noBook)]);
    expect(zero).toMatchObject({ code: 0, out: '8 entries, 8 movements, 3 things: every rule holds.\n' });
    expect(one.code).toBe(1);
    expect(one.out).toContain(`balance-equals-ledger: ${label}: quantity is kept as 2200005`);
    expect(two.code).toBe(2);
    expect(two.err).toContain('The database file is not a Flitchbook, or is damaged.');
    const mended = await runScript('scripts/rebuild.ts', [], { FLITCHBOOK_DATA: differs.folder });
    expect(mended).toMatchObject({ code: 0, out: `mended ${label}\n3 things, 1 mended.\n` });
  });
});
