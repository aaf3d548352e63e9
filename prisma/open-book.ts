import type { BookFiles } from '@/prisma/book-files';
import type { PrismaClient } from '@/prisma/generated/client';
import { openSqlite } from '@/prisma/open-sqlite';

/** A transaction of the writing connection. Whatever a write depends on is read through it. */
export type WriteTransaction = Parameters<Parameters<PrismaClient['$transaction']>[0]>[0];

/**
 * An open book: one connection that only reads, and one that only writes, in transactions.
 * Two connections because everything sent over a connection while a transaction is open on it becomes part of that
 * transaction: a reader there would see what may yet be rolled back.
 */
export type OpenBook = {
  read: PrismaClient;
  /** Reads in one transaction, all of it as the book stood when it began. `timeout`: milliseconds. */
  snapshot: <T>(work: (tx: WriteTransaction) => Promise<T>, how: { timeout: number }) => Promise<T>;
  /** `timeout`: how long the work may take, milliseconds, where it is more than one act. */
  write: <T>(work: (tx: WriteTransaction) => Promise<T>, how?: { timeout?: number }) => Promise<T>;
  close: () => Promise<void>;
};

/** Opens the book's database. It must have been prepared (migrated) before. */
export async function openBook(files: BookFiles): Promise<OpenBook> {
  if (files.postgresql === undefined) return openSqlite(files.database);
  // Only here, so that a book in a file does not load a second client.
  const { openPostgresql } = await import('@/prisma/open-postgresql');
  return openPostgresql(files.postgresql);
}
