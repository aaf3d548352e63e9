import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { askServer } from '@/prisma/ask-server';
import { bookFiles } from '@/prisma/book-files';
import { openBook } from '@/prisma/open-book';
import { sayStoreTrouble, storeTroubleOf } from '@/prisma/store-trouble';
import { runScript } from '@/tests/support/run-script';
import { stocked } from '@/tests/support/stock-of-a-test';
import { freshBook, storeOf, type TestBook } from '@/tests/support/test-book';

const troubleWith = (url: string) =>
  openBook(bookFiles(os.tmpdir(), url)).then(
    () => undefined,
    (error: unknown) => storeTroubleOf(error),
  );

describe('trouble with a database server is said in plain words', () => {
  let test: TestBook;
  let folder = '';
  const at = (other: Partial<Record<'port' | 'username' | 'password' | 'pathname', string>>): string =>
    Object.assign(new URL(test.files.postgresql ?? ''), other).href;
  beforeAll(async () => {
    test = await freshBook();
    folder = fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-trouble-'));
  });
  afterAll(async () => {
    await test.remove();
    fs.rmSync(folder, { recursive: true, force: true });
  });

  it('nobody answers there', async () => {
    // Port 1 is the port service multiplexer's (RFC 1078), which nothing here runs.
    expect(await troubleWith(at({ port: '1' }))).toBe('server-away');
  });

  it.each([
    ['a password that is not theirs', { password: 'guessed' }],
    ['a user it does not know', { username: 'nobody' }],
    ['a database it does not have', { pathname: '/no_such_book' }],
  ])('%s', async (_, other) => {
    expect(await troubleWith(at(other))).toBe('server-refuses');
  });

  it.each(['migrate', 'prove', 'rebuild', 'demo'])(
    'by npm run %s: what happened, what was kept, what to do',
    async (name) => {
      const away = at({ port: '1' });
      const { code, err } = await runScript(`scripts/${name}.ts`, [], {
        FLITCHBOOK_DATA: folder,
        FLITCHBOOK_DATABASE_URL: away,
      });
      expect(code).toBeGreaterThan(0);
      expect(err).toMatch(/^The database server that keeps the book does not answer\. Nothing was half-written/);
      expect(err).not.toMatch(/ECONNREFUSED|of%20a%20test|at .*\.ts/);
    },
  );

  it('a server that went down and came back is used again, and what it answered for stands', async () => {
    await stocked(test.book, { product: { name: 'BEFORE' }, lotCode: 'BEFORE' });
    const before = await test.book.read.entry.count();
    await askServer(test.files.postgresql ?? '', (client) =>
      client.query(
        `SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = current_database() AND pid <> pg_backend_pid()`,
      ),
    );
    expect(await test.book.read.entry.count()).toBe(before);
    await stocked(test.book, { product: { name: 'AFTER' }, lotCode: 'AFTER' });
    expect((await proveBook(test.book.read)).differences).toEqual([]);
  });

  it('a writer cut off in the midst of its entry leaves nothing of it', async () => {
    const before = await test.book.read.entry.count();
    const error = await test.book
      .write(async (tx) => {
        await tx.$executeRawUnsafe('UPDATE "Book" SET "name" = \'Half written\', "revision" = "revision" + 1');
        const [me] = await tx.$queryRawUnsafe<{ pid: number }[]>('SELECT pg_backend_pid() AS "pid"');
        await askServer(test.files.postgresql ?? '', (client) =>
          client.query('SELECT pg_terminate_backend($1)', [me?.pid]),
        );
        await tx.$queryRawUnsafe('SELECT 1');
      })
      .then(
        () => undefined,
        (reason: unknown) => reason,
      );
    expect(storeTroubleOf(error)).toBe('server-away');
    expect(sayStoreTrouble(error)).toMatch(/what was answered before stands/);
    expect(await test.book.read.entry.count()).toBe(before);
    expect((await test.book.read.book.findUniqueOrThrow({ where: { id: 1 } })).name).toBe('Test shop');
    await stocked(test.book, { lotCode: 'GOES-ON' });
  });

  it('npm run prove and rebuild are told of a book on a server, and find every rule held', async () => {
    const env = { FLITCHBOOK_DATA: test.files.folder, ...storeOf(test.files) };
    const proved = await runScript('scripts/prove.ts', [], env);
    expect(proved).toMatchObject({ code: 0, err: '' });
    expect(proved.out).toMatch(/every rule holds\.\n$/);
    expect(await runScript('scripts/rebuild.ts', [], env)).toMatchObject({ code: 0, err: '' });
  });
});
