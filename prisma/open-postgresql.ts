import { PrismaPg } from '@prisma/adapter-pg';
import { Pool } from 'pg';
import { bookOver } from '@/prisma/book-over';
import type { PrismaClient as SqliteClient } from '@/prisma/generated/client';
import { PrismaClient } from '@/prisma/generated-postgresql/client';
import { OneAtATimeClient } from '@/prisma/one-at-a-time-client';
import type { OpenBook } from '@/prisma/open-book';
import { WAIT_MS } from '@/prisma/wait-ms';

/** Connections a reading server keeps: pages ask several things at once. */
const READERS = 4;

/**
 * Opens a book in a PostgreSQL database. Writers of every process queue behind the row of the pen
 * (`write-entry.ts`); here one connection writes, so that a process's own wait in its own queue, as they do for a file.
 */
export async function openPostgresql(url: string): Promise<OpenBook> {
  const read = connect(url, READERS, '-c default_transaction_read_only=on');
  const writer = connect(url, 1, `-c lock_timeout=${WAIT_MS}`);
  // Asked once now, so that what cannot be opened is said when it is opened.
  await read.$queryRawUnsafe('SELECT 1');
  // Writes read committed: a statement after the pen was taken sees all that the last holder of the pen wrote. What one
  // statement after another sees moves on in PostgreSQL, so a snapshot repeats its reads.
  return bookOver(read, writer, 'RepeatableRead');
}

/** The two stores' generated clients differ in `skipDuplicates` alone, which nothing here uses: one type serves both. */
function connect(connectionString: string, max: number, options: string): SqliteClient {
  const pool = new Pool({
    Client: OneAtATimeClient,
    connectionString,
    max,
    options,
    application_name: 'flitchbook',
    connectionTimeoutMillis: WAIT_MS,
  });
  // A connection that is lost while idle is opened anew by the next query; unheard, its error would end the process.
  const adapter = new PrismaPg(pool, { disposeExternalPool: true, onPoolError: () => {}, onConnectionError: () => {} });
  return new PrismaClient({ adapter }) as unknown as SqliteClient;
}
