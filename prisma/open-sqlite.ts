import { PrismaBetterSqlite3 } from '@prisma/adapter-better-sqlite3';
import { PrismaClient } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';
import { WAIT_MS } from '@/prisma/wait-ms';

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
  return {
    read,
    // A transaction reads one state of the file throughout (sqlite.org/isolation.html).
    snapshot: (work, { timeout }) => read.$transaction(work, { maxWait: WAIT_MS, timeout }),
    write: (work, how) => writer.$transaction(work, { maxWait: WAIT_MS, timeout: how?.timeout ?? WAIT_MS }),
    close: async () => {
      await read.$disconnect();
      await writer.$disconnect();
    },
  };
}
