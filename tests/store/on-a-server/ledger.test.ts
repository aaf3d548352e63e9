import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { askServer } from '@/prisma/ask-server';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, type TestBook, TODAY } from '@/tests/support/test-book';

describe('the ledger of a book on a server', () => {
  let test: TestBook;
  const ask = (sql: string) => askServer(test.files.postgresql ?? '', (client) => client.query(sql));
  const prove = () => test.book.snapshot((tx) => proveBook(tx), { timeout: 60_000 });

  beforeAll(async () => {
    test = await freshBook();
    const { labels } = await stocked(test.book);
    const pull = { label: labels[0] ?? '', purpose: 'client' as const, dayOfUse: TODAY, seen: 'care' as const };
    must(await pullContainer(test.book, by(), { ...pull, asked: 1000 }));
  });
  afterAll(() => test.remove());

  it.each([
    'UPDATE "Entry" SET "why" = \'nothing of the kind\'',
    'DELETE FROM "Entry"',
    'UPDATE "Movement" SET "quantityDelta" = 0',
    'DELETE FROM "Movement" WHERE "id" = 1',
    'TRUNCATE "Movement" CASCADE',
    'INSERT INTO "Movement" SELECT * FROM "Movement" WHERE "id" = 1 ON CONFLICT ("id") DO UPDATE SET "quantityDelta" = 5',
  ])('is not edited: %s', async (sql) => {
    await expect(ask(sql)).rejects.toThrow('ledger-is-append-only');
  });

  it.each([
    ['UPDATE "Stock" SET "quantity" = -1 WHERE "kind" = \'container\'', 'Stock_never_below_zero'],
    ['UPDATE "Stock" SET "hold" = \'maybe\'', 'Stock_hold'],
    [
      'INSERT INTO "Book" ("id", "name", "timeZone", "units", "currency", "dateOrder", "createdAt") SELECT 2, "name", "timeZone", "units", "currency", "dateOrder", "createdAt" FROM "Book"',
      'Book_one_row',
    ],
  ])('has the checks of a file: %s', async (sql, constraint) => {
    await expect(ask(sql)).rejects.toThrow(constraint);
  });

  it('is not written through the connection that reads', async () => {
    await expect(test.book.read.$executeRawUnsafe('UPDATE "Book" SET "name" = \'Mine\'')).rejects.toThrow(
      'read-only transaction',
    );
  });

  it('is proved on one state of the book, whatever is written meanwhile', async () => {
    const { before, after } = await test.book.snapshot(
      async (tx) => {
        const first = await tx.entry.count();
        await stocked(test.book, { product: { name: 'MEANWHILE' }, lotCode: 'MEANWHILE' });
        return { before: first, after: await tx.entry.count() };
      },
      { timeout: 60_000 },
    );
    expect(after).toBe(before);
    expect(await test.book.read.entry.count()).toBeGreaterThan(before);
    expect((await prove()).differences).toEqual([]);
  });

  // A restore, or somebody with the rights of one, can switch the triggers off (postgresql.org/docs, session_replication_role).
  it.each([
    [
      'balance-equals-ledger',
      `UPDATE "Stock" SET "quantity" = "quantity" + 5 WHERE "kind" = 'container'`,
      `UPDATE "Stock" SET "quantity" = "quantity" - 5 WHERE "kind" = 'container'`,
    ],
    [
      'references-hold',
      'UPDATE "Container" SET "productId" = "productId" + 999',
      'UPDATE "Container" SET "productId" = "productId" - 999',
    ],
    [
      'database-integrity',
      'ALTER TABLE "Movement" DISABLE TRIGGER "Movement_is_never_edited"',
      'ALTER TABLE "Movement" ENABLE TRIGGER "Movement_is_never_edited"',
    ],
  ])('is found out by the proof: %s', async (rule, sql, back) => {
    const tamper = (what: string) => ask(`SET session_replication_role = replica; ${what}`);
    await tamper(sql);
    expect((await prove()).differences.map((each) => each.rule)).toContain(rule);
    await tamper(back);
    expect((await prove()).differences).toEqual([]);
  });
});
