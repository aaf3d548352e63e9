import { PrismaBetterSqlite3 } from '@prisma/adapter-better-sqlite3';
import type { BookFiles } from '@/prisma/book-files';
import { PrismaClient } from '@/prisma/generated/client';

/** A transaction of the writing connection. Whatever a write depends on is read through it. */
export type WriteTransaction = Parameters<Parameters<PrismaClient['$transaction']>[0]>[0];

/**
 * An open book: one connection that only reads, and one that only writes, in transactions.
 * Two connections because everything sent over a connection while a transaction is open on it becomes part of that
 * transaction: a reader there would see what may yet be rolled back.
 */
export type OpenBook = {
  read: PrismaClient;
  /** `timeout`: how long the work may take, milliseconds, where it is more than one act. */
  write: <T>(work: (tx: WriteTransaction) => Promise<T>, how?: { timeout?: number }) => Promise<T>;
  close: () => Promise<void>;
};

/** How long a writer waits for its turn before the book is said to be busy, milliseconds. */
const WAIT_MS = 20_000;

/** Opens the book's database. It must have been prepared (migrated) before. */
export async function openBook(files: BookFiles): Promise<OpenBook> {
  const connect = () =>
    new PrismaClient({ adapter: new PrismaBetterSqlite3({ url: `file:${files.database}`, timeout: 5_000 }) });
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
    write: (work, how) => writer.$transaction(work, { maxWait: WAIT_MS, timeout: how?.timeout ?? WAIT_MS }),
    close: async () => {
      await read.$disconnect();
      await writer.$disconnect();
    },
  };
}
