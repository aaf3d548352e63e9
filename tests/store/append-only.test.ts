import Database from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { aSlab, stocked } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, type TestBook, TODAY } from '@/tests/support/test-book';

describe('what the database itself refuses', () => {
  let test: TestBook;
  let db: Database.Database;
  let label = '';

  beforeAll(async () => {
    test = await freshBook();
    label = (await stocked(test.book)).labels[0] ?? '';
    must(
      await pullContainer(test.book, by('the-pull'), {
        label,
        purpose: 'client',
        dayOfUse: TODAY,
        asked: 1000,
        seen: 'care',
      }),
    );
    const pulled = await test.book.read.entry.findUniqueOrThrow({ where: { key: 'the-pull' } });
    must(await reverseEntry(test.book, by('the-reversal'), { entryId: pulled.id, why: 'Wrong tin' }));
    must(await receivePieces(test.book, by(), aSlab()));
    db = new Database(test.files.database);
    db.pragma('foreign_keys = ON');
  });
  afterAll(async () => {
    db.close();
    await test.remove();
  });

  it.each([
    'UPDATE "Entry" SET "why" = \'nothing of the kind\'',
    'UPDATE "Entry" SET "who" = "who"',
    'DELETE FROM "Entry"',
    'UPDATE "Movement" SET "quantityDelta" = 0',
    'DELETE FROM "Movement" WHERE "id" = 1',
  ])('an edit of the ledger: %s', (sql) => {
    expect(() => db.exec(sql)).toThrow('ledger-is-append-only');
  });

  // Delete triggers do not fire for the row that OR REPLACE meets (sqlite.org/lang_conflict.html).
  it.each(['Entry', 'Movement'])('a row of the ledger replaced under its own number: %s', (table) => {
    expect(() => db.exec(`INSERT OR REPLACE INTO "${table}" SELECT * FROM "${table}" WHERE "id" = 1`)).toThrow(
      'ledger-is-append-only',
    );
  });

  it.each([
    [
      'a quantity below zero',
      'UPDATE "Stock" SET "quantity" = -1 WHERE "kind" = \'container\'',
      'Stock_never_below_zero',
    ],
    ['two of one slab', 'UPDATE "Stock" SET "quantity" = 2 WHERE "kind" = \'piece\'', 'Stock_one_piece'],
    ['a quantity of a lot', 'UPDATE "Stock" SET "quantity" = 1 WHERE "kind" = \'lot\'', 'Stock_lot_has_no_quantity'],
    ['a hold nobody knows', 'UPDATE "Stock" SET "hold" = \'maybe\'', 'Stock_hold'],
    [
      'a second book',
      'INSERT INTO "Book" ("id", "name", "timeZone", "units", "currency", "dateOrder", "createdAt") SELECT 2, "name", "timeZone", "units", "currency", "dateOrder", "createdAt" FROM "Book"',
      'Book_one_row',
    ],
    ['a package of nothing', 'UPDATE "Product" SET "packageSize" = 0', 'Product_package_size'],
    ['a reading above 250 %', 'UPDATE "Reading" SET "mcTenths" = 2501', 'Reading_possible'],
    ['a cost without a currency', 'UPDATE "Container" SET "costMinor" = 5', 'Container_cost_has_currency'],
  ])('%s', (_, sql, constraint) => {
    expect(() => db.exec(sql)).toThrow(`CHECK constraint failed: ${constraint}`);
  });

  it.each([
    ['the same key twice', 'Entry', '"id" = 2', { id: 9999, reversesId: null }, 'Entry.key'],
    ['an entry undone twice', 'Entry', '"reversesId" IS NOT NULL', { id: 9999, key: 'another' }, 'Entry.reversesId'],
    ['the same line twice', 'Movement', '"id" = 1', { id: 9999, reversesId: null }, 'Movement.key'],
    [
      'a movement undone twice',
      'Movement',
      '"reversesId" IS NOT NULL',
      { id: 9999, key: 'other' },
      'Movement.reversesId',
    ],
  ])('%s, by the trigger and by the index beneath it', (_, table, where, other, column) => {
    const row = db.prepare(`SELECT * FROM "${table}" WHERE ${where}`).get() as Record<string, unknown>;
    const names = Object.keys(row);
    const insert = () =>
      db
        .prepare(
          `INSERT INTO "${table}" (${names.map((name) => `"${name}"`)}) VALUES (${names.map((name) => `@${name}`)})`,
        )
        .run({ ...row, ...other });
    expect(insert).toThrow('ledger-is-append-only');
    // What stands beneath the trigger, on a book whose trigger was dropped; all of it rolled back.
    db.exec('BEGIN');
    db.exec(`DROP TRIGGER "${table}_is_never_replaced"`);
    expect(insert).toThrow(`UNIQUE constraint failed: ${column}`);
    db.exec('ROLLBACK');
  });

  it('a thing deleted while the ledger speaks of it', () => {
    expect(() => db.exec('DELETE FROM "Stock"')).toThrow('FOREIGN KEY constraint failed');
    expect(() => db.exec('DELETE FROM "Product"')).toThrow('FOREIGN KEY constraint failed');
  });

  it('a label given twice', () => {
    expect(() => db.exec(`UPDATE "Stock" SET "label" = '${label}' WHERE "kind" = 'piece'`)).toThrow(
      'UNIQUE constraint failed: Stock.label',
    );
  });

  it('a write through the reading connection', async () => {
    await expect(test.book.read.stock.updateMany({ data: { condition: 'gelled' } })).rejects.toThrow(/readonly/i);
  });
});
