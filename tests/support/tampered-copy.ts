import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import Database from 'better-sqlite3';
import { type BookFiles, bookFiles } from '@/prisma/book-files';

/** A copy of a book whose database was edited behind its back, the ledger's triggers out of the way. */
export async function tamperedCopy(files: BookFiles, sql: string): Promise<BookFiles> {
  const copy = bookFiles(fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-copy-')));
  const source = new Database(files.database, { readonly: true });
  await source.backup(copy.database);
  source.close();
  const db = new Database(copy.database);
  db.pragma('journal_mode = WAL');
  db.pragma('foreign_keys = OFF');
  db.pragma('ignore_check_constraints = ON');
  const triggers = db.prepare("SELECT name, sql FROM sqlite_master WHERE type = 'trigger'").all() as {
    name: string;
    sql: string;
  }[];
  for (const each of triggers) db.exec(`DROP TRIGGER "${each.name}"`);
  db.exec(sql);
  for (const each of triggers) db.exec(each.sql);
  db.close();
  return copy;
}
