import fs from 'node:fs';
import Database from 'better-sqlite3';
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
export function requireBook({ database }: BookFiles): void {
  if (!fs.existsSync(database)) throw new NoBookError(undefined);
  const { applied, missing } = checkVersion(database);
  if (applied.length === 0) throw new NoBookError(undefined);
  if (missing.length) throw new NoBookError(missing);
  const db = new Database(database, { readonly: true, timeout: 10_000 });
  try {
    if (!db.prepare('SELECT 1 FROM "Book"').get()) throw new NoBookError(undefined);
  } finally {
    db.close();
  }
}
