import { randomUUID } from 'node:crypto';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { setUpBook } from '@/app/_server/book/set-up-book';
import { type BookFiles, bookFiles } from '@/prisma/book-files';
import { type OpenBook, openBook } from '@/prisma/open-book';
import { prepareBook } from '@/prisma/prepare-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Result } from '@/shared/result/result';
import { dropDatabase, newDatabase, onServer } from '@/tests/support/test-server';

export const NOW = new Date('2026-11-25T15:00:00Z');
export const TODAY = '2026-11-25' as CalendarDate;
export const day = (text: string) => text as CalendarDate;

/** Who asks, with a key of its own for every act unless one is given. */
export const by = (key: string = randomUUID()) => ({ who: { who: 'Ada', device: 'test' }, key, now: NOW });

export type TestBook = { book: OpenBook; files: BookFiles; remove: () => Promise<void> };

/** The files of a migrated database in a folder of its own, no book begun in it. */
export async function emptyFiles(): Promise<BookFiles> {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-test-'));
  const files = bookFiles(folder, onServer() ? await newDatabase() : undefined);
  await prepareBook(files);
  return files;
}

/** A fresh book on disk in a folder of its own, begun and empty. */
export async function freshBook(): Promise<TestBook> {
  const files = await emptyFiles();
  const book = await openBook(files);
  must(
    await setUpBook(book, by(), {
      name: 'Test shop',
      timeZone: 'America/New_York',
      units: 'imperial',
      currency: 'USD',
    }),
  );
  return {
    book,
    files,
    remove: async () => {
      await book.close();
      if (files.postgresql !== undefined) await dropDatabase(files.postgresql);
      fs.rmSync(files.folder, { recursive: true, force: true });
    },
  };
}

/** What a process of its own must know to open the same book, beside its folder. */
export const storeOf = ({ postgresql }: BookFiles): Record<string, string> =>
  postgresql === undefined ? {} : { FLITCHBOOK_DATABASE_URL: postgresql };

/** The answer of a command that must succeed. */
export function must<A>(result: Result<{ answer: A; replayed: boolean }, unknown>): A {
  if (!result.ok) throw new Error(`Refused: ${JSON.stringify(result.error)}`);
  return result.value.answer;
}

/** The code of a command that must be refused. */
export function refusedWith(result: Result<unknown, { code: string }>): string {
  if (result.ok) throw new Error('It was not refused.');
  return result.error.code;
}
