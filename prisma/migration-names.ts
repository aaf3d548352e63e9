import fs from 'node:fs';
import path from 'node:path';

// From the working folder, not from this file: the server's bundle does not know where its sources were.
export const migrationsFolder = path.join(process.cwd(), 'prisma', 'migrations');

/** The migrations on disk, oldest first. */
export function migrationNames(): string[] {
  if (!fs.existsSync(migrationsFolder)) return [];
  return fs
    .readdirSync(migrationsFolder, { withFileTypes: true })
    .filter((each) => each.isDirectory())
    .map((each) => each.name)
    .sort();
}
