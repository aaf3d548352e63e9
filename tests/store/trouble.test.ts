import { spawn, spawnSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, describe, expect, it } from 'vitest';
import { readBook } from '@/app/_server/book/read-book';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { receiveContainers } from '@/app/_server/stock/receive-containers';
import { bookFiles } from '@/prisma/book-files';
import { openBook } from '@/prisma/open-book';
import { sayStoreTrouble, storeTroubleOf } from '@/prisma/store-trouble';
import { ended, runScript, startScript } from '@/tests/support/run-script';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, NOW, type TestBook, TODAY } from '@/tests/support/test-book';

const root = path.join(import.meta.dirname, '../..');
const migrate = (folder: string) => runScript('scripts/migrate.ts', [], { FLITCHBOOK_DATA: folder });

/** What a working store must never say instead of plain words. */
const RAW = /SQLITE|Prisma|ENOSPC|errno|\bat .*\.ts:|undefined/;

describe('when the store is in trouble', () => {
  const remove: (() => unknown)[] = [];
  const folder = () => {
    const made = fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-trouble-'));
    remove.push(() => fs.rmSync(made, { recursive: true, force: true }));
    return made;
  };
  const begun = async () => {
    const test = await freshBook();
    remove.push(test.remove);
    return test;
  };
  afterAll(async () => {
    for (const each of remove) await each();
  });

  const receiveMany = (test: TestBook, productId: number) =>
    receiveContainers(test.book, by(), {
      productId,
      lotCode: 'L1',
      dates: {},
      count: 60,
      size: 1000,
      receivedOn: TODAY,
    });

  it('a full database writes nothing by halves, says so, and goes on when there is room again', async () => {
    const test = await begun();
    const { productId } = await stocked(test.book);
    const pages = await test.book.read.$queryRawUnsafe<{ page_count: bigint }[]>('PRAGMA page_count');
    // SQLite's own SQLITE_FULL, in the midst of a long entry (sqlite.org/pragma.html#pragma_max_page_count).
    const limit = (most: number) => test.book.write((tx) => tx.$queryRawUnsafe(`PRAGMA max_page_count = ${most}`));
    await limit(Number(pages[0]?.page_count) + 1);
    const before = await proveBook(test.book.read);
    const error = await receiveMany(test, productId).then(
      () => undefined,
      (reason: unknown) => reason,
    );
    expect(storeTroubleOf(error)).toBe('disk-full');
    expect(sayStoreTrouble(error)).toBe(
      'The disk is full. Nothing was half-written: the book stands as it was before. Free some space and do it again.',
    );
    expect(await proveBook(test.book.read)).toEqual(before);
    expect(before.differences).toEqual([]);
    await limit(1_000_000_000);
    expect(must(await receiveMany(test, productId)).containers).toHaveLength(60);
    expect((await proveBook(test.book.read)).differences).toEqual([]);
  });

  it('a book that another program holds is said to be held, and nothing of the entry is kept', async () => {
    const test = await begun();
    const { productId } = await stocked(test.book);
    const holder = startScript('tests/support/children/hold-the-book.ts', [test.files.database]);
    const end = ended(holder);
    await new Promise((resolve) => holder.stdout?.once('data', resolve));
    const before = await test.book.read.entry.count();
    const error = await receiveMany(test, productId).then(
      () => undefined,
      (reason: unknown) => reason,
    );
    expect(storeTroubleOf(error)).toBe('locked');
    expect(sayStoreTrouble(error)).toMatch(/^Another program is holding the book\. Nothing was half-written\./);
    // Reading goes on meanwhile.
    expect(await readBook(test.book, NOW)).toMatchObject({ name: 'Test shop' });
    expect(await test.book.read.entry.count()).toBe(before);
    holder.stdin?.write('let go\n');
    expect((await end).code).toBe(0);
    must(await receiveMany(test, productId));
  });

  it.concurrent('a disk that really is full keeps every entry it answered for, no half photo, and says so', async (context) => {
    const isRoot = process.getuid?.() === 0;
    const unshare = isRoot ? ['-m'] : ['-rm'];
    const can = spawnSync('unshare', [...unshare, 'sh', '-c', 'mount -t tmpfs -o size=1m tmpfs /mnt']).status === 0;
    if (!can) context.skip('This machine does not let a test mount a small file system.');
    const place = folder();
    const node = `"${process.execPath}" --import tsx "${path.join(root, 'tests/support/children/fill-the-disk.ts')}"`;
    const child = spawn(
      'unshare',
      [...unshare, 'sh', '-c', `mount -t tmpfs -o size=3m tmpfs "${place}" && ${node} "${place}"`],
      { cwd: root },
    );
    const { code, out, err } = await ended(child);
    expect(err).toBe('');
    expect(code).toBe(0);
    const said = JSON.parse(out) as Record<string, unknown>;
    for (const trouble of [said.photoTrouble, said.entryTrouble]) {
      expect(trouble).toMatch(/^The disk is full\. Nothing was half-written/);
      expect(trouble).not.toMatch(RAW);
    }
    expect(said).toMatchObject({ halfPhotos: [], differences: [], entries: said.written });
    expect(Number(said.photos)).toBeGreaterThan(0);
  });

  it.concurrent('a file that another program holds for itself cannot be migrated: exit 1, in plain words', async () => {
    const place = folder();
    const files = bookFiles(place);
    const holder = startScript('tests/support/children/hold-the-book.ts', [files.database, 'EXCLUSIVE']);
    const end = ended(holder);
    await new Promise((resolve) => holder.stdout?.once('data', resolve));
    const { code, out, err } = await migrate(place);
    expect(code).toBe(1);
    expect(out).toBe('');
    expect(err).toMatch(/^Another program is holding the book\./);
    expect(err).not.toMatch(RAW);
    holder.stdin?.write('let go\n');
    await end;
    expect((await migrate(place)).code).toBe(0);
  });

  it.concurrent('a book from a newer version is left exactly as it is: exit 1, in plain words', async () => {
    const test = await begun();
    const db = new Database(test.files.database);
    db.prepare(
      `INSERT INTO _prisma_migrations (id, checksum, finished_at, migration_name, started_at, applied_steps_count)
       VALUES ('future', 'x', 1, '29991231000000_the_book_can_fly', 1, 1)`,
    ).run();
    db.close();
    const before = fs.readFileSync(test.files.database);
    for (const script of ['scripts/migrate.ts', 'scripts/prove.ts', 'scripts/rebuild.ts', 'scripts/demo.ts']) {
      const { code, err } = await runScript(script, [], { FLITCHBOOK_DATA: test.files.folder });
      expect(code, script).toBe(/prove|rebuild/.test(script) ? 2 : 1);
      expect(err).toMatch(/^This book was written by a newer version of Flitchbook\. Nothing was changed\./);
      expect(err).not.toMatch(RAW);
    }
    expect(fs.readFileSync(test.files.database).equals(before)).toBe(true);
  });

  it.concurrent.each([
    ['a text', () => Buffer.from('This is a shopping list. '.repeat(400))],
    ['zeros with a wrong header', () => Buffer.alloc(8192, 7)],
  ])('a file that is no database is left as it is: %s; exit 1, in plain words', async (_, content) => {
    const place = folder();
    const { database } = bookFiles(place);
    fs.writeFileSync(database, content());
    const { code, err } = await migrate(place);
    expect(code).toBe(1);
    expect(err).toMatch(/^The database file is not a Flitchbook, or is damaged\. Nothing was changed\./);
    expect(err).not.toMatch(RAW);
    expect(fs.readFileSync(database).equals(content())).toBe(true);
  });

  it.concurrent('a database of another program is left as it is: exit 1, in plain words', async () => {
    const place = folder();
    const { database } = bookFiles(place);
    const db = new Database(database);
    db.exec("CREATE TABLE recipes (id INTEGER PRIMARY KEY, name TEXT); INSERT INTO recipes (name) VALUES ('Soup')");
    db.close();
    const before = fs.readFileSync(database);
    const { code, err } = await migrate(place);
    expect(code).toBe(1);
    expect(err).toMatch(/^The database file is not a Flitchbook, or is damaged\. Nothing was changed\./);
    expect(err).not.toMatch(RAW);
    expect(fs.readFileSync(database).equals(before)).toBe(true);
  });

  it.concurrent('a book whose pages were overwritten is said to be damaged', async () => {
    const test = await begun();
    await stocked(test.book, { count: 120 });
    await test.book.close();
    const db = new Database(test.files.database);
    db.pragma('wal_checkpoint(TRUNCATE)');
    db.close();
    const bytes = fs.readFileSync(test.files.database);
    bytes.fill(0x5a, 4096 * 3);
    const place = folder();
    const files = bookFiles(place);
    fs.writeFileSync(files.database, bytes);
    const { code, err } = await runScript('scripts/prove.ts', [], { FLITCHBOOK_DATA: place });
    expect(code).toBe(2);
    expect(err).toMatch(/^The database file is not a Flitchbook, or is damaged\./);
    expect(err).not.toMatch(RAW);
  });

  it.concurrent('a folder that may not be written is said to be so: exit 1, in plain words', async () => {
    const place = folder();
    fs.chmodSync(place, 0o555);
    // Rights do not bind root; so root runs it as nobody.
    const isRoot = process.getuid?.() === 0;
    const child = spawn(process.execPath, ['--import', 'tsx', 'scripts/migrate.ts'], {
      cwd: root,
      env: { ...process.env, FLITCHBOOK_DATA: place, TSX_DISABLE_CACHE: '1' },
      ...(isRoot ? { uid: 65_534, gid: 65_534 } : {}),
    });
    const { code, err } = await ended(child);
    expect(code).toBe(1);
    expect(err).toMatch(
      /^The book cannot be opened: the program may not read or write its folder\. Nothing was changed\./,
    );
    expect(err).not.toMatch(RAW);
    expect(fs.readdirSync(place)).toEqual([]);
  });

  it('a book that may only be read is said to be so when something is written', async () => {
    const test = await begun();
    const { productId } = await stocked(test.book);
    await test.book.write((tx) => tx.$executeRawUnsafe('PRAGMA query_only = ON'));
    const error = await receiveMany(test, productId).then(
      () => undefined,
      (reason: unknown) => reason,
    );
    expect(storeTroubleOf(error)).toBe('no-permission');
    await test.book.write((tx) => tx.$executeRawUnsafe('PRAGMA query_only = OFF'));
    must(await receiveMany(test, productId));
  });

  it('no folder at all is made, and the book in it', async () => {
    const place = path.join(folder(), 'not', 'there', 'yet');
    expect(await migrate(place)).toMatchObject({ code: 0, err: '' });
    const book = await openBook(bookFiles(place));
    expect(await readBook(book, NOW)).toBeUndefined();
    await book.close();
  });

  it('anything else is said with what it was', () => {
    expect(sayStoreTrouble(new Error('The moon is in the way.'))).toBe(
      'The book could not be opened or written. The moon is in the way.',
    );
  });
});
