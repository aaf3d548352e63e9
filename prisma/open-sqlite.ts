import { PrismaBetterSqlite3 } from '@prisma/adapter-better-sqlite3';
import { bookOver } from '@/prisma/book-over';
import { PrismaClient } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';

/** Opens a book in a file. */
export async function openSqlite(database: string): Promise<OpenBook> {
  const connect = () =>
    new PrismaClient({ adapter: new PrismaBetterSqlite3({ url: `file:${database}`, timeout: 5_000 }) });
  const read = connect();
  const writer = connect();
  for (const client of [read, writer]) {
    await client.$executeRawUnsafe('PRAGMA foreign_keys = ON');
    // FULL: a commit that was answered survives a power cut (sqlite.org/pragma.html#pragma_synchronous).
    await client.$executeRawUnsafe('PRAGMA synchronous = FULL');
    await client.$executeRawUnsafe('PRAGMA cache_size = -65536');
  }
  await read.$executeRawUnsafe('PRAGMA query_only = ON');
  // A transaction reads one state of the file throughout (sqlite.org/isolation.html).
  return bookOver(read, writer);
}
