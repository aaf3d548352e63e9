import fs from 'node:fs';
import Database from 'better-sqlite3';
import { migrationNames } from '@/prisma/migration-names';

/** The book on disk was written by a later version of this program. */
export class NewerBookError extends Error {
  constructor(readonly unknownMigrations: string[]) {
    super(`The book knows migrations this version does not: ${unknownMigrations.join(', ')}`);
  }
}

/** The database on disk belongs to another program. */
export class NotABookError extends Error {
  constructor() {
    super('The database has tables, but none of them is a record of migrations.');
  }
}

/**
 * Which of this version's migrations a database file has taken, and which it lacks.
 * Throws NewerBookError when it has taken one this version does not know, NotABookError when it is another program's.
 */
export function checkVersion(database: string): { applied: string[]; missing: string[] } {
  const applied = appliedMigrations(database);
  const known = migrationNames();
  const unknown = applied.filter((name) => !known.includes(name));
  if (unknown.length) throw new NewerBookError(unknown);
  return { applied, missing: known.filter((name) => !applied.includes(name)) };
}

/** Names of the migrations a database file has taken; none when there is no file. */
function appliedMigrations(database: string): string[] {
  if (!fs.existsSync(database)) return [];
  const db = new Database(database, { timeout: 10_000 });
  try {
    const table = db.prepare("SELECT 1 FROM sqlite_master WHERE type = 'table' AND name = '_prisma_migrations'").get();
    if (!table) {
      if (db.prepare("SELECT 1 FROM sqlite_master WHERE type = 'table'").get()) throw new NotABookError();
      return [];
    }
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
