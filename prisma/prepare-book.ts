import fs from 'node:fs';
import Database from 'better-sqlite3';
import type { BookFiles } from '@/prisma/book-files';
import { checkVersion } from '@/prisma/check-version';
import { applyMigrations } from '@/prisma/schema-engine';

/**
 * Makes the folder and the database where they are missing and applies the migrations that are.
 * Throws NewerBookError, changing nothing, when the book was written by a later version.
 * Keeps a copy of a book that is about to be migrated beside it.
 */
export async function prepareBook(files: BookFiles): Promise<string[]> {
  fs.mkdirSync(files.photos, { recursive: true });
  fs.mkdirSync(files.sheets, { recursive: true });
  const { applied, missing } = checkVersion(files.database);
  if (missing.length === 0) return [];
  if (applied.length) await copyAside(files.database, missing[0] ?? '');
  setWriteAheadLog(files.database);
  return applyMigrations(files.database);
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
