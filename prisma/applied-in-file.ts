import fs from 'node:fs';
import Database from 'better-sqlite3';
import { NotABookError } from '@/prisma/not-a-book';

/** Names of the migrations a database file has taken; none when there is no file. Throws NotABookError. */
export function appliedInFile(database: string): string[] {
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
