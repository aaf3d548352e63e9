import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bookFiles } from '@/prisma/book-files';
import { Prisma } from '@/prisma/generated/client';
import { migrationNames, migrationsFolder } from '@/prisma/migration-names';
import { prepareBook } from '@/prisma/prepare-book';
import { diffFromLastMigration, schemaPath } from '@/prisma/schema-engine';
import { freshBook, type TestBook } from '@/tests/support/test-book';

describe('the migrations of a book in a file', () => {
  let test: TestBook;
  let scratch = '';
  beforeAll(async () => {
    test = await freshBook();
    scratch = fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-migrations-'));
  });
  afterAll(async () => {
    await test.remove();
    fs.rmSync(scratch, { recursive: true, force: true });
  });

  it('end where the schema stands: the last one keeps it word for word, and nothing is missing from it', async () => {
    const last = path.join(migrationsFolder('sqlite'), migrationNames('sqlite').at(-1) ?? '', 'schema.prisma');
    expect(fs.readFileSync(last, 'utf8')).toBe(fs.readFileSync(schemaPath, 'utf8'));
    expect(await diffFromLastMigration(bookFiles(scratch), 'sqlite')).toBe('');
  });

  it('make exactly the tables and columns the client asks for', async () => {
    const db = new Database(test.files.database, { readonly: true });
    const tables = db
      .prepare(
        "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name <> '_prisma_migrations'",
      )
      .all() as { name: string }[];
    expect(tables.map((each) => each.name).sort()).toEqual(Object.keys(Prisma.ModelName).sort());
    for (const model of Object.keys(Prisma.ModelName)) {
      const columns = db.pragma(`table_info("${model}")`) as { name: string }[];
      const fields = Prisma[`${model}ScalarFieldEnum` as 'BookScalarFieldEnum'];
      expect(columns.map((each) => each.name).sort(), model).toEqual(Object.keys(fields).sort());
    }
    db.close();
  });

  it.each(Object.keys(Prisma.ModelName))('let the client read every column of %s', async (model) => {
    const delegate = `${model.charAt(0).toLowerCase()}${model.slice(1)}` as 'book';
    const row = await test.book.read[delegate].findFirst();
    expect(row === null || typeof row === 'object').toBe(true);
  });

  it('set the file up: write-ahead log, and foreign keys and full syncing on both connections', async () => {
    const pragma = async (name: string) => {
      const reading = await test.book.read.$queryRawUnsafe<Record<string, unknown>[]>(`PRAGMA ${name}`);
      const writing = await test.book.write((tx) => tx.$queryRawUnsafe<Record<string, unknown>[]>(`PRAGMA ${name}`));
      return [reading, writing].map((rows) => String(Object.values(rows[0] ?? {})[0]));
    };
    expect(await pragma('journal_mode')).toEqual(['wal', 'wal']);
    expect(await pragma('foreign_keys')).toEqual(['1', '1']);
    // 2 is FULL (sqlite.org/pragma.html#pragma_synchronous).
    expect(await pragma('synchronous')).toEqual(['2', '2']);
    expect(await pragma('query_only')).toEqual(['1', '0']);
  });

  it('are applied once; a book that lacks one is copied aside first', async () => {
    const files = bookFiles(path.join(scratch, 'book'));
    expect(await prepareBook(files)).toEqual(migrationNames('sqlite'));
    expect(await prepareBook(files)).toEqual([]);
    expect(fs.readdirSync(files.folder).filter((name) => name.includes('.before-'))).toEqual([]);

    const last = migrationNames('sqlite').at(-1) ?? '';
    const older = bookFiles(path.join(scratch, 'older'));
    fs.mkdirSync(older.folder, { recursive: true });
    const db = new Database(older.database);
    for (const name of migrationNames('sqlite').slice(0, -1)) {
      db.exec(fs.readFileSync(path.join(migrationsFolder('sqlite'), name, 'migration.sql'), 'utf8'));
    }
    db.exec(`ATTACH '${files.database}' AS whole`);
    const record = db.prepare("SELECT sql FROM whole.sqlite_master WHERE name = '_prisma_migrations'").get();
    db.exec((record as { sql: string }).sql);
    db.exec('INSERT INTO main._prisma_migrations SELECT * FROM whole._prisma_migrations');
    db.prepare('DELETE FROM _prisma_migrations WHERE migration_name = ?').run(last);
    db.close();
    expect(await prepareBook(older)).toEqual([last]);
    expect(await prepareBook(older)).toEqual([]);
    expect(fs.existsSync(`${older.database}.before-${last}`)).toBe(true);
  });

  it('give an older book’s steps to the whole job, and leave the checks of their table', async () => {
    const name = migrationNames('sqlite').find((each) => each.endsWith('_steps_know_their_part')) ?? '';
    const older = bookFiles(path.join(scratch, 'steps'));
    await prepareBook(older);
    const sqlOf = (db: Database.Database) =>
      (db.prepare("SELECT sql FROM sqlite_master WHERE name = 'Step'").get() as { sql: string }).sql;
    let db = new Database(older.database);
    db.pragma('foreign_keys = OFF');
    db.exec('ALTER TABLE "Step" DROP COLUMN "partId"');
    db.exec(
      `INSERT INTO "Step" ("jobId", "entryId", "kind", "name", "day") VALUES (1, 1, 'coat', 'Oil', '2026-11-25')`,
    );
    db.prepare('DELETE FROM _prisma_migrations WHERE migration_name = ?').run(name);
    db.close();
    expect(await prepareBook(older)).toEqual([name]);
    db = new Database(older.database);
    db.pragma('foreign_keys = OFF');
    expect(db.prepare('SELECT "name", "partId" FROM "Step"').all()).toEqual([{ name: 'Oil', partId: null }]);
    for (const check of ['Step_kind', 'Step_done_by', 'Step_partId_fkey']) expect(sqlOf(db)).toContain(`"${check}"`);
    expect(() => db.exec(`UPDATE "Step" SET "kind" = 'dance'`)).toThrow('Step_kind');
    db.pragma('foreign_keys = ON');
    expect(() => db.exec('UPDATE "Step" SET "partId" = 99')).toThrow('FOREIGN KEY');
    db.close();
  });
});
