import fs from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { beginDemo } from '@/app/_server/book/begin-demo';
import { changeServing } from '@/app/_server/book/change-serving';
import { changeSettings } from '@/app/_server/book/change-settings';
import { proveNow } from '@/app/_server/book/prove-now';
import { readBook } from '@/app/_server/book/read-book';
import { readServing, servingNow } from '@/app/_server/book/serving';
import { setUpBook } from '@/app/_server/book/set-up-book';
import { history } from '@/app/_server/ledger/history';
import { settingsSchema } from '@/app/(shop)/settings/schema';
import type { OpenBook } from '@/prisma/open-book';
import { by, freshBook, must, NOW, refusedWith, storeOf, type TestBook } from '@/tests/support/test-book';

describe('the settings of a workshop', () => {
  let test: TestBook;
  const before = process.env.FLITCHBOOK_DATA;
  beforeAll(async () => {
    test = await freshBook();
    process.env.FLITCHBOOK_DATA = test.files.folder;
    Object.assign(process.env, storeOf(test.files));
  });
  afterAll(async () => {
    delete process.env.FLITCHBOOK_DATABASE_URL;
    if (before === undefined) delete process.env.FLITCHBOOK_DATA;
    else process.env.FLITCHBOOK_DATA = before;
    await test.remove();
  });
  const settings = {
    name: 'Test shop',
    timeZone: 'America/New_York',
    units: 'imperial',
    dateOrder: 'month-first',
  } as const;
  const newest = async () => (await history(test.book, {})).entries[0];

  it('are changed by an entry that says what was changed, and by whom', async () => {
    must(
      await changeSettings(test.book, by(), { ...settings, name: ' Pell & Daughter ', timeZone: 'Pacific/Kiritimati' }),
    );
    expect(await readBook(test.book, NOW)).toMatchObject({
      name: 'Pell & Daughter',
      today: '2026-11-26',
      units: 'imperial',
    });
    expect(await newest()).toMatchObject({
      kind: 'settings-changed',
      who: 'Ada',
      why: 'name: Test shop → Pell & Daughter; timeZone: America/New_York → Pacific/Kiritimati',
    });
  });

  it('write nothing when nothing changes', async () => {
    const kept = { ...settings, name: 'Pell & Daughter', timeZone: 'Pacific/Kiritimati' };
    const id = (await newest())?.id;
    expect(refusedWith(await changeSettings(test.book, by(), kept))).toBe('changes-nothing');
    expect((await newest())?.id).toBe(id);
  });

  it('refuse a name of nothing, a zone that is none, and units that are none', () => {
    const fieldsOf = (input: object) => {
      const parsed = settingsSchema.safeParse({ ...settings, ...input });
      return parsed.success ? [] : parsed.error.issues.map((issue) => issue.path.join('.'));
    };
    expect(fieldsOf({})).toEqual([]);
    expect(fieldsOf({ name: '  ' })).toEqual(['name']);
    expect(fieldsOf({ name: 'x'.repeat(81) })).toEqual(['name']);
    expect(fieldsOf({ timeZone: 'Mars/Olympus' })).toEqual(['timeZone']);
    expect(fieldsOf({ units: 'cubits', dateOrder: 'backwards' })).toEqual(['units', 'dateOrder']);
  });

  it('open the book to the network only from the next start, by an entry of its own', async () => {
    expect(await readServing()).toEqual({ network: false });
    must(await changeServing(test.book, by(), { network: true }));
    expect(await readServing()).toEqual({ network: true });
    expect(JSON.parse(fs.readFileSync(test.files.serving, 'utf8'))).toEqual({ network: true });
    expect((await newest())?.why).toBe(
      'network: this computer only → open to the workshop’s network, from the next start',
    );
    expect(refusedWith(await changeServing(test.book, by(), { network: true }))).toBe('changes-nothing');
  });

  it('leave the file as it was where the entry could not be written', async () => {
    const full: OpenBook = {
      ...test.book,
      write: (work) =>
        test.book.write(async (tx) => {
          await work(tx);
          throw new Error('SQLITE_FULL: database or disk is full');
        }),
    };
    await expect(changeServing(full, by(), { network: false })).rejects.toThrow('disk is full');
    expect(await readServing()).toEqual({ network: true });
  });

  it('say how the server is served now only where its start said so', () => {
    const kept = process.env.FLITCHBOOK_NETWORK;
    const now = (value: string | undefined) => {
      if (value === undefined) delete process.env.FLITCHBOOK_NETWORK;
      else process.env.FLITCHBOOK_NETWORK = value;
      return servingNow();
    };
    expect([now('1'), now('0'), now(undefined)]).toEqual(['network', 'this-computer', 'unknown']);
    now(kept);
  });

  it('prove the book as it stands, while it stays open for writing', async () => {
    const [proof] = await Promise.all([
      proveNow(),
      changeSettings(test.book, by(), { ...settings, name: 'Written meanwhile', timeZone: 'Pacific/Kiritimati' }),
    ]);
    expect(proof.differences).toEqual([]);
    const later = await proveNow();
    expect(later).toMatchObject({ entries: 4, differences: [] });
  });

  it('leave a begun book alone: neither an empty book nor a demo is begun over it', async () => {
    const setUp = { name: 'Other', timeZone: 'UTC', units: 'metric', currency: 'EUR' } as const;
    expect(refusedWith(await setUpBook(test.book, by(), setUp))).toBe('book-already-there');
    expect(refusedWith(await beginDemo(test.book, by(), {}))).toBe('book-already-there');
    expect((await readBook(test.book, NOW))?.name).toBe('Written meanwhile');
  });
});
