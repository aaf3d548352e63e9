import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { guessSetUp } from '@/app/_server/book/guess-set-up';
import { setUpBook } from '@/app/_server/book/set-up-book';
import { sayBookTrouble } from '@/app/_server/book/trouble-of-book';
import { setUpSchema } from '@/app/welcome/schema';
import { bookFiles } from '@/prisma/book-files';
import { NewerBookError } from '@/prisma/check-version';
import { openBook } from '@/prisma/open-book';
import { prepareBook } from '@/prisma/prepare-book';
import { currencyChoices } from '@/shared/units/currency-choices';
import { by, refusedWith } from '@/tests/support/test-book';

const SET_UP = { name: 'Pell & Daughter', timeZone: 'Europe/Lisbon', units: 'metric', currency: 'EUR' } as const;

describe('beginning a book', () => {
  it('answers the same press twice with the first answer, and any other press with a refusal', async () => {
    const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-begin-'));
    const files = bookFiles(folder);
    await prepareBook(files);
    const book = await openBook(files);
    const press = by();
    expect(await setUpBook(book, press, SET_UP)).toEqual({
      ok: true,
      value: { answer: { name: SET_UP.name }, replayed: false },
    });
    expect(await setUpBook(book, press, SET_UP)).toEqual({
      ok: true,
      value: { answer: { name: SET_UP.name }, replayed: true },
    });
    expect(refusedWith(await setUpBook(book, press, { ...SET_UP, name: 'Other' }))).toBe('book-already-there');
    expect(refusedWith(await setUpBook(book, by(), SET_UP))).toBe('book-already-there');
    await book.close();
    fs.rmSync(folder, { recursive: true, force: true });
  });

  it('takes only what the form asks for: no demo mark can be sent along', () => {
    expect(setUpSchema.parse({ ...SET_UP, demo: true, revision: 9 })).toEqual(SET_UP);
    expect(setUpSchema.safeParse({ ...SET_UP, currency: 'XAU' }).success).toBe(false);
    expect(setUpSchema.safeParse({ ...SET_UP, currency: '' }).success).toBe(false);
  });

  // RFC 9110 (2022), section 12.5.4: languages in order of preference, weights after a semicolon.
  it('guesses units and currency from the first language that names a region', () => {
    expect(guessSetUp('en-US,en;q=0.9')).toEqual({ units: 'imperial', currency: 'USD' });
    expect(guessSetUp('en-GB,en-US;q=0.9')).toEqual({ units: 'metric', currency: 'GBP' });
    expect(guessSetUp('fr,de-CH;q=0.8')).toEqual({ units: 'metric', currency: 'CHF' });
    expect(guessSetUp('pt')).toEqual({ units: 'metric', currency: 'BRL' });
    expect(guessSetUp('zh-Hant-TW')).toEqual({ units: 'metric', currency: 'TWD' });
  });

  it('guesses metric and euro where the browser says nothing readable', () => {
    for (const said of [null, '', '*', ';;,,', 'en_US!!']) {
      expect(guessSetUp(said)).toEqual({ units: 'metric', currency: 'EUR' });
    }
  });

  it('guesses only currencies that can be chosen', () => {
    const choices = currencyChoices().map(({ code }) => code as string);
    const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];
    for (const region of letters.flatMap((a) => letters.map((b) => a + b))) {
      expect(choices).toContain(guessSetUp(`en-${region}`).currency);
    }
  });
});

describe('a book that cannot be opened', () => {
  it('is told in three parts, whatever the known trouble', () => {
    const errors = [
      new Error('SQLITE_FULL: database or disk is full'),
      new Error('database is locked'),
      new Error('SQLITE_NOTADB: file is not a database'),
      new Error('EACCES: permission denied'),
      new NewerBookError(['20990101_later']),
    ];
    for (const error of errors) {
      const { happened, kept, toDo, reference } = sayBookTrouble(error, 'abc');
      expect(happened).toMatch(/\.$/);
      expect(kept).toMatch(/^Nothing was .*\.$/);
      expect(toDo).toMatch(/^[A-Z].*\.$/);
      expect(reference).toBeUndefined();
    }
  });

  it('is only referred to when nobody foresaw it: paths of the server stay in its log', () => {
    const said = sayBookTrouble(new Error('Invalid invocation in /srv/secret/app.js'), '1a2b3c4d');
    expect(JSON.stringify(said)).not.toContain('/srv');
    expect(said.reference).toBe('1a2b3c4d');
  });
});
