import fs from 'node:fs';
import Database from 'better-sqlite3';
import { askServer } from '@/prisma/ask-server';
import type { BookFiles } from '@/prisma/book-files';
import { checkVersion } from '@/prisma/check-version';

/** There is no book in the folder, or only one that this version cannot read as it is. */
export class NoBookError extends Error {
  constructor(readonly migrationsMissing: readonly string[] | undefined) {
    super(migrationsMissing ? `The book lacks migrations: ${migrationsMissing.join(', ')}` : 'There is no book here.');
  }
}

/**
 * Throws unless a begun book of this version is there, and makes and changes nothing: a mistyped folder must not become
 * an empty book in which every rule holds.
 */
export async function requireBook(files: BookFiles): Promise<void> {
  const { database, postgresql } = files;
  if (postgresql === undefined && !fs.existsSync(database)) throw new NoBookError(undefined);
  const { applied, missing } = await checkVersion(files);
  if (applied.length === 0) throw new NoBookError(undefined);
  if (missing.length) throw new NoBookError(missing);
  if (!(postgresql === undefined ? begunInFile(database) : await begunOnServer(postgresql))) {
    throw new NoBookError(undefined);
  }
}

const TITLE_PAGE = 'SELECT 1 FROM "Book"';

function begunInFile(database: string): boolean {
  const db = new Database(database, { readonly: true, timeout: 10_000 });
  try {
    return db.prepare(TITLE_PAGE).get() !== undefined;
  } finally {
    db.close();
  }
}

function begunOnServer(url: string): Promise<boolean> {
  return askServer(url, async (client) => (await client.query(TITLE_PAGE)).rows.length > 0);
}
