import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Difference, proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { addPlace } from '@/app/_server/places/add-place';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { recordTestPour } from '@/app/_server/pull/record-test-pour';
import { changeHold } from '@/app/_server/stock/change-hold';
import { moveStock } from '@/app/_server/stock/move-stock';
import { openContainer } from '@/app/_server/stock/open-container';
import { weighContainer } from '@/app/_server/stock/weigh-container';
import { migrationNames } from '@/prisma/migration-names';
import { openBook } from '@/prisma/open-book';
import { pngOfBlack } from '@/tests/support/png-that-claims';
import { runScript } from '@/tests/support/run-script';
import { stocked } from '@/tests/support/stock-of-a-test';
import { tamperedCopy } from '@/tests/support/tampered-copy';
import { by, day, emptyFiles, freshBook, must, type TestBook, TODAY } from '@/tests/support/test-book';

describe('proving what a book rests on', () => {
  let test: TestBook;
  const data = process.env.FLITCHBOOK_DATA;
  const folders: string[] = [];
  const labels: string[] = [];

  beforeAll(async () => {
    test = await freshBook();
    process.env.FLITCHBOOK_DATA = test.files.folder;
    const late = await stocked(test.book, {
      count: 2,
      lotCode: 'OLD-1',
      dates: {
        madeOn: { date: day('2025-06-01'), precision: 'day', confirmed: true },
        bestBefore: { date: day('2026-10-01'), precision: 'day', confirmed: true },
      },
    });
    labels.push(...late.labels);
    const [label = '', sister = ''] = late.labels;
    must(await openContainer(test.book, by(), { label, opened: { on: day('2026-11-01'), sureness: 'known' } }));
    const cup = new File([new Uint8Array(pngOfBlack(40, 40))], 'cup.png', { type: 'image/png' });
    const pour = { madeOn: TODAY, passed: true, method: '', note: 'Hard' };
    must(await recordTestPour(test.book, by('pour'), { ...pour, label, photo: cup }));
    must(await recordTestPour(test.book, by('pour-of-the-sister'), { ...pour, label: sister }));
    const { id } = await test.book.read.inspection.findFirstOrThrow({ where: { entry: { key: 'pour' } } });
    const ask = { label, purpose: 'client' as const, dayOfUse: TODAY, asked: 100_000, seen: 'stop' as const };
    must(
      await pullContainer(test.book, by('overridden'), { ...ask, override: { reason: 'Agreed', inspectionId: id } }),
    );
    const { label: placeLabel } = must(await addPlace(test.book, by(), { name: 'Rack', kind: 'rack' }));
    must(await addPlace(test.book, by(), { name: 'Shelf', kind: 'rack' }));
    must(await moveStock(test.book, by('moved'), { labels: [sister], placeLabel }));
    // What is held may be counted: a proof sees that it was not taken.
    const { stockId, lotId } = await test.book.read.container.findFirstOrThrow({ where: { stock: { label: sister } } });
    const heldFor = [
      { id: lotId, key: 'counted, lot held', left: 2_400_000 },
      { id: stockId, key: 'counted, itself held', left: 2_300_000 },
    ];
    for (const { id: held, key, left } of heldFor) {
      must(await changeHold(test.book, by(), { stockId: held, hold: 'on-hold', why: 'Soft' }));
      must(await weighContainer(test.book, by(key), { label: sister, left, why: 'Counted' }));
      must(await changeHold(test.book, by(), { stockId: held, hold: 'free', why: 'Hard' }));
    }
    const moved = await test.book.read.entry.findUniqueOrThrow({ where: { key: 'moved' } });
    must(await reverseEntry(test.book, by('undone'), { entryId: moved.id, why: 'Not there' }));
  });
  afterAll(async () => {
    if (data === undefined) delete process.env.FLITCHBOOK_DATA;
    else process.env.FLITCHBOOK_DATA = data;
    await test.remove();
    for (const folder of folders) fs.rmSync(folder, { recursive: true, force: true });
  });

  async function prove(sql: string, photos?: string): Promise<Difference[]> {
    const copy = await tamperedCopy(test.files, sql);
    folders.push(copy.folder);
    const book = await openBook(copy);
    const { differences } = await proveBook(book.read, photos);
    await book.close();
    return differences;
  }
  const entryOf = (key: string) => `(SELECT "id" FROM "Entry" WHERE "key" = '${key}')`;
  const POUR = `(SELECT "id" FROM "Inspection" WHERE "entryId" = ${entryOf('pour')})`;
  const PHOTO = `UPDATE "Photo" SET`;

  it('finds nothing in a book nobody touched', async () => {
    expect(await prove('', test.files.photos)).toEqual([]);
  });

  it.each([
    [
      'a reversal that goes back to another place than the thing came from',
      `UPDATE "Movement" SET "placeToId" = (SELECT MAX("id") FROM "Place") WHERE "entryId" = ${entryOf('undone')};
       UPDATE "Stock" SET "placeId" = (SELECT MAX("id") FROM "Place") WHERE "label" = '$sister'`,
      ['reversals-are-opposites'],
    ],
    [
      'a reversal that also opened what it put back',
      `UPDATE "Movement" SET "openedTo" = '2026-11-02/known' WHERE "entryId" = ${entryOf('undone')};
       UPDATE "Stock" SET "opened" = '2026-11-02/known' WHERE "label" = '$sister'`,
      ['reversals-are-opposites'],
    ],
    [
      'an override on a test pour that did not pass',
      `UPDATE "Inspection" SET "passed" = 0 WHERE "id" = ${POUR}`,
      ['overrides-rest-on-a-pour'],
    ],
    [
      'an override on a look, which is no test pour',
      `UPDATE "Inspection" SET "kind" = 'inspection' WHERE "id" = ${POUR}`,
      ['overrides-rest-on-a-pour'],
    ],
    [
      'an override on a test pour of the sister',
      `UPDATE "Entry" SET "overrideInspectionId" = (SELECT "id" FROM "Inspection" WHERE "entryId" = ${entryOf('pour-of-the-sister')})
       WHERE "key" = 'overridden'`,
      ['overrides-rest-on-a-pour'],
    ],
    [
      'a pull against a Stop that rests on nothing',
      `UPDATE "Entry" SET "overrideInspectionId" = NULL WHERE "key" = 'overridden'`,
      ['overrides-rest-on-a-pour'],
    ],
    ['a photo that is not there', `${PHOTO} "file" = 'gone.jpg'`, ['photos-are-there']],
    ['a photo that was exchanged', `${PHOTO} "bytes" = "bytes" + 1`, ['photos-are-there']],
    [
      'a pull of what was on hold by its lot',
      `UPDATE "Entry" SET "kind" = 'pulled' WHERE "key" = 'counted, lot held'`,
      ['held-is-not-taken'],
    ],
    [
      'a pull of what was on hold itself',
      `UPDATE "Entry" SET "kind" = 'weighed-out' WHERE "key" = 'counted, itself held'`,
      ['held-is-not-taken'],
    ],
    [
      'a lot said to be made after one of it was opened',
      `UPDATE "Lot" SET "madeOn" = '2026-11-02' WHERE "code" = 'OLD-1'`,
      ['opened-after-made'],
    ],
  ])('names %s', async (_, sql, expected) => {
    const differences = await prove(sql.replaceAll('$sister', labels[1] ?? ''), test.files.photos);
    expect([...new Set(differences.map((each) => each.rule))]).toEqual(expected);
    for (const each of differences) expect(each.where).not.toBe('');
  });

  it('leaves alone an opened day that is guessed and a making day known by its month only', async () => {
    expect(await prove(`UPDATE "Lot" SET "madeOn" = '2026-11-30', "madePrecision" = 'month'`)).toEqual([]);
  });

  it('takes a test pour of the whole lot for each of its containers', async () => {
    expect(await prove(`UPDATE "Inspection" SET "containerId" = NULL`)).toEqual([]);
  });

  describe('from the command line', () => {
    const scripts = ['scripts/prove.ts', 'scripts/rebuild.ts'];
    const folder = () => {
      const made = fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-copy-'));
      folders.push(made);
      return made;
    };
    const runAll = (place: string) =>
      Promise.all(scripts.map((script) => runScript(script, [], { FLITCHBOOK_DATA: place })));

    it('a folder without a book stays without one: exit 2, never "every rule holds"', async () => {
      const place = path.join(folder(), 'mistyped');
      for (const { code, out, err } of await runAll(place)) {
        expect([code, out]).toEqual([2, '']);
        expect(err).toMatch(/^There is no book in that folder\. Nothing was changed\./);
      }
      expect(fs.existsSync(place)).toBe(false);
    });

    it('a database in which no book was begun is no book: exit 2', async () => {
      const files = await emptyFiles();
      folders.push(files.folder);
      for (const { code, out, err } of await runAll(files.folder)) {
        expect([code, out]).toEqual([2, '']);
        expect(err).toMatch(/^There is no book in that folder\./);
      }
    });

    it('a book that lacks a migration is not migrated: exit 2', async () => {
      const copy = await tamperedCopy(
        test.files,
        'DELETE FROM _prisma_migrations WHERE migration_name = (SELECT MAX(migration_name) FROM _prisma_migrations)',
      );
      folders.push(copy.folder);
      for (const { code, out, err } of await runAll(copy.folder)) {
        expect([code, out]).toEqual([2, '']);
        expect(err).toMatch(/^This book was written by an older version of Flitchbook\. Nothing was changed\./);
      }
      const db = new Database(copy.database, { readonly: true });
      const applied = db.prepare('SELECT COUNT(*) AS n FROM _prisma_migrations').get() as { n: number };
      db.close();
      expect(applied.n).toBe(migrationNames('sqlite').length - 1);
    });

    it('proves the photos too', async () => {
      const copy = await tamperedCopy(test.files, '');
      folders.push(copy.folder);
      const { code, out } = await runScript('scripts/prove.ts', [], { FLITCHBOOK_DATA: copy.folder });
      expect(code).toBe(1);
      expect(out).toMatch(/^photos-are-there: [0-9a-f]{32}\.jpg: is named in the book and not in its photos\n/);
    });
  });
});
