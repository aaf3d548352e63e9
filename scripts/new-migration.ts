/** `npm run migration -- <name>`: writes the migration that takes the ones on disk to the schema. */
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { bookFiles } from '@/prisma/book-files';
import { migrationsFolder } from '@/prisma/migration-names';
import { diffFromLastMigration, schemaPath } from '@/prisma/schema-engine';

const name = process.argv[2];
if (!name || !/^[a-z0-9_]+$/.test(name)) {
  console.error('Give the migration a name of small letters, digits and _: npm run migration -- add_something');
  process.exit(2);
}
const stamp = new Date().toISOString().replaceAll(/[-:T]/g, '').slice(0, 14);
const scratch = fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-migration-'));
let wrote = 0;
for (const store of ['sqlite', 'postgresql'] as const) {
  const sql = await diffFromLastMigration(bookFiles(scratch), store);
  if (sql.trim() === '') continue;
  const folder = path.join(migrationsFolder(store), `${stamp}_${name}`);
  fs.mkdirSync(folder, { recursive: true });
  fs.writeFileSync(path.join(folder, 'migration.sql'), store === 'postgresql' ? comparedByBytes(sql) : sql);
  fs.copyFileSync(schemaPath, path.join(folder, 'schema.prisma'));
  console.log(
    `Wrote ${path.relative(process.cwd(), folder)}/migration.sql. Read it; add the checks Prisma cannot say.`,
  );
  wrote += 1;
}
fs.rmSync(scratch, { recursive: true, force: true });
if (wrote === 0) console.log('The migrations already say what the schema says.');
process.exit(0);

/**
 * Text is compared byte by byte on both stores, as SQLite does by itself: a prefix is a range of an index, and lists stand
 * in the same order whatever the server's language.
 */
function comparedByBytes(sql: string): string {
  return sql.replaceAll(/("\w+" (?:SET DATA TYPE )?TEXT)\b/g, '$1 COLLATE "C"');
}
