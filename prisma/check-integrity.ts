import { checkServerIntegrity } from '@/prisma/check-server-integrity';
import type { WriteTransaction } from '@/prisma/open-book';

/** What the database says of itself: something it found broken, or a reference to something that is not there. */
export type IntegrityFault = { rule: 'database-integrity' | 'references-hold'; where: string; says: string };

/** The migration that every book on a server began with, and no book in a file. */
const BEGAN_ON_A_SERVER = '20261125211707_the_book_on_a_server';

/** Asks the database to check itself, whichever it is. Reads only. */
export async function checkIntegrity(tx: Pick<WriteTransaction, '$queryRawUnsafe'>): Promise<IntegrityFault[]> {
  const onServer = await tx.$queryRawUnsafe<unknown[]>(
    `SELECT 1 AS "one" FROM "_prisma_migrations" WHERE "migration_name" = '${BEGAN_ON_A_SERVER}'`,
  );
  if (onServer.length > 0) return checkServerIntegrity(tx);
  const integrity = await tx.$queryRawUnsafe<{ integrity_check: string }[]>('PRAGMA integrity_check');
  const keys = await tx.$queryRawUnsafe<{ table: string; rowid: bigint }[]>('PRAGMA foreign_key_check');
  return [
    ...integrity
      .filter((row) => row.integrity_check !== 'ok')
      .map((row) => ({ rule: 'database-integrity' as const, where: 'database', says: row.integrity_check })),
    ...keys.map((row) => dangling(row.table, row.rowid)),
  ];
}

const dangling = (table: string, row: bigint): IntegrityFault => ({
  rule: 'references-hold',
  where: `${table} ${row}`,
  says: 'points to something that is not there',
});
