import fs from 'node:fs';
import Database from 'better-sqlite3';
import { askServer } from '@/prisma/ask-server';
import type { BookFiles } from '@/prisma/book-files';
import { checkVersion } from '@/prisma/check-version';
import { applyMigrations } from '@/prisma/schema-engine';

/**
 * Makes the folder and the database where they are missing and applies the migrations that are.
 * Throws NewerBookError, changing nothing, when the book was written by a later version.
 * Keeps a copy of a file that is about to be migrated beside it; a database server's copies are its keeper's.
 */
export async function prepareBook(files: BookFiles): Promise<string[]> {
  fs.mkdirSync(files.photos, { recursive: true });
  fs.mkdirSync(files.sheets, { recursive: true });
  if (files.postgresql !== undefined) return prepareServer(files, files.postgresql);
  const { applied, missing } = await checkVersion(files);
  if (missing.length === 0) return [];
  if (applied.length) await copyAside(files.database, missing[0] ?? '');
  setWriteAheadLog(files.database);
  return applyMigrations(files);
}

/** Any number that other programs on the server are unlikely to lock by. */
const ONE_AT_A_TIME = 0x464c_4954;

/** Two servers started together on one database: the second waits, and finds nothing left to apply. */
function prepareServer(files: BookFiles, url: string): Promise<string[]> {
  return askServer(url, async (client) => {
    await client.query('SELECT pg_advisory_lock($1)', [ONE_AT_A_TIME]);
    const { missing } = await checkVersion(files);
    return missing.length ? applyMigrations(files) : [];
  });
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
