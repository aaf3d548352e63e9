import fs from 'node:fs';
import Database from 'better-sqlite3';
import type { BookFiles } from '@/prisma/book-files';
import { applyMigrations, migrationNames } from '@/prisma/schema-engine';

/** The book on disk was written by a later version of this program. */
export class NewerBookError extends Error {
  constructor(readonly unknownMigrations: string[]) {
    super(`The book knows migrations this version does not: ${unknownMigrations.join(', ')}`);
  }
}

/**
 * Makes the folder and the database where they are missing and applies the migrations that are.
 * Throws NewerBookError, changing nothing, when the book was written by a later version.
 * Keeps a copy of a book that is about to be migrated beside it.
 */
export async function prepareBook(files: BookFiles): Promise<string[]> {
  fs.mkdirSync(files.photos, { recursive: true });
  const applied = appliedMigrations(files.database);
  const known = migrationNames();
  const unknown = applied.filter((name) => !known.includes(name));
  if (unknown.length) throw new NewerBookError(unknown);
  const missing = known.filter((name) => !applied.includes(name));
  if (missing.length === 0) return [];
  if (applied.length) await copyAside(files.database, missing[0] ?? '');
  setWriteAheadLog(files.database);
  return applyMigrations(files.database);
}

/** Names of the migrations a database file has taken; none when there is no file. */
export function appliedMigrations(database: string): string[] {
  if (!fs.existsSync(database)) return [];
  const db = new Database(database, { timeout: 10_000 });
  try {
    const table = db.prepare("SELECT 1 FROM sqlite_master WHERE type = 'table' AND name = '_prisma_migrations'").get();
    if (!table) return [];
    const rows = db
      .prepare(
        'SELECT migration_name AS name FROM _prisma_migrations WHERE finished_at IS NOT NULL AND rolled_back_at IS NULL',
      )
      .all() as { name: string }[];
    return rows.map((row) => row.name);
  } finally {
    db.close();
  }
}

/** A property of the file, set before anything else has it open: readers and the writer then do not wait for each other. */
function setWriteAheadLog(database: string): void {
  const db = new Database(database, { timeout: 10_000 });
  db.pragma('journal_mode = WAL');
  db.close();
}

async function copyAside(database: string, before: string): Promise<void> {
  const db = new Database(database, { timeout: 10_000 });
  try {
    await db.backup(`${database}.before-${before}`);
  } finally {
    db.close();
  }
}
