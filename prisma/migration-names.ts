import fs from 'node:fs';
import path from 'node:path';

/** The two kinds of database a book is kept in. */
export type Store = 'sqlite' | 'postgresql';

/** Where a store's migrations are: the same names in both, since the day there were two. */
export function migrationsFolder(store: Store): string {
  // From the working folder, not from this file: the server's bundle does not know where its sources were.
  return path.join(process.cwd(), 'prisma', store === 'sqlite' ? 'migrations' : 'migrations-postgresql');
}

/** A store's migrations on disk, oldest first. */
export function migrationNames(store: Store): string[] {
  const folder = migrationsFolder(store);
  if (!fs.existsSync(folder)) return [];
  return fs
    .readdirSync(folder, { withFileTypes: true })
    .filter((each) => each.isDirectory())
    .map((each) => each.name)
    .sort();
}
