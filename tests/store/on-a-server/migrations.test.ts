import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { askServer } from '@/prisma/ask-server';
import { bookFiles } from '@/prisma/book-files';
import { checkVersion, NewerBookError } from '@/prisma/check-version';
import { Prisma } from '@/prisma/generated/client';
import { migrationNames, migrationsFolder } from '@/prisma/migration-names';
import { NotABookError } from '@/prisma/not-a-book';
import { prepareBook } from '@/prisma/prepare-book';
import { requireBook } from '@/prisma/require-book';
import { diffFromLastMigration, schemaPath } from '@/prisma/schema-engine';
import { freshBook, type TestBook } from '@/tests/support/test-book';
import { dropDatabase, emptyDatabase } from '@/tests/support/test-server';

describe('the migrations of a book on a server', () => {
  let test: TestBook;
  let scratch = '';
  const made: string[] = [];
  const empty = async () => {
    const url = await emptyDatabase();
    made.push(url);
    return { url, files: bookFiles(path.join(scratch, String(made.length)), url) };
  };
  const ask = <T extends object>(sql: string, url = test.files.postgresql ?? '') =>
    askServer(url, async (client) => (await client.query<T & Record<string, unknown>>(sql)).rows);

  beforeAll(async () => {
    test = await freshBook();
    scratch = fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-migrations-'));
  });
  afterAll(async () => {
    await test.remove();
    for (const url of made) await dropDatabase(url);
    fs.rmSync(scratch, { recursive: true, force: true });
  });

  it('end where the schema stands: the last one keeps it word for word, and nothing is missing from it', async () => {
    const last = path.join(migrationsFolder('postgresql'), migrationNames('postgresql').at(-1) ?? '', 'schema.prisma');
    expect(fs.readFileSync(last, 'utf8')).toBe(fs.readFileSync(schemaPath, 'utf8'));
    expect(await diffFromLastMigration(bookFiles(scratch), 'postgresql')).toBe('');
  });

  it('bear the names of a file’s, from the day a book could be kept on a server', () => {
    const [first, ...since] = migrationNames('postgresql');
    expect(since).toEqual(migrationNames('sqlite').filter((name) => name > (first ?? '')));
  });

  it('make exactly the tables and columns the client asks for, all text compared byte by byte', async () => {
    const columns = await ask<{ table: string; column: string; collation: string | null; type: string }>(`
      SELECT table_name AS "table", column_name AS "column", collation_name AS "collation", data_type AS "type"
      FROM information_schema.columns WHERE table_schema = 'public' AND table_name <> '_prisma_migrations'`);
    expect([...new Set(columns.map(({ table }) => table))].sort()).toEqual(Object.keys(Prisma.ModelName).sort());
    for (const model of Object.keys(Prisma.ModelName)) {
      const fields = Prisma[`${model}ScalarFieldEnum` as 'BookScalarFieldEnum'];
      const there = columns.filter(({ table }) => table === model).map(({ column }) => column);
      expect(there.sort(), model).toEqual(Object.keys(fields).sort());
    }
    expect(columns.filter(({ type, collation }) => type === 'text' && collation !== 'C')).toEqual([]);
  });

  it('hold the same rules as a file’s: each check, each refusal of an edit, each unique index', async () => {
    const database = path.join(scratch, 'file', 'flitchbook.db');
    await prepareBook(bookFiles(path.dirname(database)));
    const db = new Database(database, { readonly: true });
    const made = db.prepare('SELECT type, name, sql FROM sqlite_master').all() as Record<
      'type' | 'name' | 'sql',
      string
    >[];
    db.close();
    const named = (pattern: RegExp) =>
      made.flatMap(({ sql }) => [...(sql ?? '').matchAll(pattern)].map(([, name]) => name)).sort();
    const checks = await ask<{ name: string }>(
      `SELECT conname AS "name" FROM pg_constraint WHERE contype = 'c' AND connamespace = 'public'::regnamespace`,
    );
    expect(checks.map(({ name }) => name).sort()).toEqual(named(/CONSTRAINT "(\w+)" CHECK/g));
    expect(checks.length).toBeGreaterThan(60);

    const triggers = await ask<{ name: string }>('SELECT tgname AS "name" FROM pg_trigger WHERE NOT tgisinternal');
    // A row that would take another's place is an update here, and a table can be emptied at once.
    const ofFile = named(/CREATE TRIGGER "(\w+)"/g).filter((name) => !name?.endsWith('_is_never_replaced'));
    const ofServer = triggers.map(({ name }) => name).filter((name) => !name.endsWith('_is_never_emptied'));
    expect(ofServer.sort()).toEqual(ofFile);
    expect(triggers.length - ofServer.length).toBe(ofServer.length / 2);

    const unique = await ask<{ name: string }>(
      `SELECT c.relname AS "name" FROM pg_index i JOIN pg_class c ON c.oid = i.indexrelid
       WHERE i.indisunique AND NOT i.indisprimary AND c.relnamespace = 'public'::regnamespace`,
    );
    expect(unique.map(({ name }) => name).sort()).toEqual(named(/CREATE UNIQUE INDEX "(\w+)"/g));
  });

  it('are applied once, and by one of two that begin together', async () => {
    const { files } = await empty();
    const both = await Promise.all([prepareBook(files), prepareBook(files)]);
    expect(both.map((names) => names.length).sort()).toEqual([0, migrationNames('postgresql').length]);
    expect(await prepareBook(files)).toEqual([]);
    expect(fs.existsSync(files.database)).toBe(false);
  });

  it('leave a book of a later version and another program’s tables as they are', async () => {
    const later = await empty();
    await prepareBook(later.files);
    await ask(
      `INSERT INTO _prisma_migrations (id, checksum, migration_name, finished_at) VALUES ('x', '', '29990101000000_later', now())`,
      later.url,
    );
    await expect(prepareBook(later.files)).rejects.toThrow(NewerBookError);
    const other = await empty();
    await ask('CREATE TABLE customers (id int)', other.url);
    await expect(checkVersion(other.files)).rejects.toThrow(NotABookError);
    expect(
      await ask('SELECT table_name FROM information_schema.tables WHERE table_schema = current_schema()', other.url),
    ).toEqual([{ table_name: 'customers' }]);
  });

  it('say of a database without a begun book that there is none', async () => {
    const { files } = await empty();
    await expect(requireBook(files)).rejects.toThrow('There is no book here.');
    await prepareBook(files);
    await expect(requireBook(files)).rejects.toThrow('There is no book here.');
    await expect(requireBook(test.files)).resolves.toBeUndefined();
  });
});
