/** `npm run migration -- <name>`: writes the migration that takes the ones on disk to the schema. */
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { migrationsFolder } from '@/prisma/migration-names';
import { diffFromLastMigration, schemaPath } from '@/prisma/schema-engine';

const name = process.argv[2];
if (!name || !/^[a-z0-9_]+$/.test(name)) {
  console.error('Give the migration a name of small letters, digits and _: npm run migration -- add_something');
  process.exit(2);
}
const scratch = fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-migration-'));
const sql = await diffFromLastMigration(path.join(scratch, 'scratch.db'));
fs.rmSync(scratch, { recursive: true, force: true });
if (sql.trim() === '') {
  console.log('The migrations already say what the schema says.');
  process.exit(0);
}
const stamp = new Date().toISOString().replaceAll(/[-:T]/g, '').slice(0, 14);
const folder = path.join(migrationsFolder, `${stamp}_${name}`);
fs.mkdirSync(folder, { recursive: true });
fs.writeFileSync(path.join(folder, 'migration.sql'), sql);
fs.copyFileSync(schemaPath, path.join(folder, 'schema.prisma'));
console.log(`Wrote ${path.relative(process.cwd(), folder)}/migration.sql. Read it; add the checks Prisma cannot say.`);
process.exit(0);
