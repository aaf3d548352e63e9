import type { IntegrityFault } from '@/prisma/check-integrity';
import type { WriteTransaction } from '@/prisma/open-book';

type Reader = Pick<WriteTransaction, '$queryRawUnsafe'>;

/** A foreign key of one column, as the server's catalogue has it. */
type Key = { name: string; child: string; childColumn: string; parent: string; parentColumn: string };

/**
 * What PostgreSQL keeps by itself, looked at again: a constraint that was put on without looking at the rows there, an index
 * that was left half built, and references to rows that are gone, which a restore with its triggers off can bring.
 */
export async function checkServerIntegrity(tx: Reader): Promise<IntegrityFault[]> {
  const unsound = await tx.$queryRawUnsafe<{ name: string; what: string }[]>(`
    SELECT conname::text AS "name", 'is not held for the rows that were there before it' AS "what"
      FROM pg_constraint WHERE NOT convalidated AND connamespace = current_schema()::regnamespace
    UNION ALL SELECT c.relname::text, 'is an index that cannot be used'
      FROM pg_index i JOIN pg_class c ON c.oid = i.indexrelid
      WHERE NOT i.indisvalid AND c.relnamespace = current_schema()::regnamespace
    UNION ALL SELECT t.tgname::text, 'is a trigger that is switched off'
      FROM pg_trigger t JOIN pg_class c ON c.oid = t.tgrelid
      WHERE t.tgenabled NOT IN ('O', 'A') AND c.relnamespace = current_schema()::regnamespace`);
  const found: IntegrityFault[] = unsound.map(({ name, what }) => ({
    rule: 'database-integrity',
    where: name,
    says: what,
  }));
  for (const key of await keysOf(tx)) {
    const [row] = await tx.$queryRawUnsafe<{ total: bigint }[]>(`
      SELECT COUNT(*) AS "total" FROM ${key.child} c WHERE c.${key.childColumn} IS NOT NULL
        AND NOT EXISTS (SELECT 1 FROM ${key.parent} p WHERE p.${key.parentColumn} = c.${key.childColumn})`);
    if (row && row.total > 0) {
      found.push({
        rule: 'references-hold',
        where: `${key.name} of ${row.total}`,
        says: 'points to something that is not there',
      });
    }
  }
  return found;
}

function keysOf(tx: Reader): Promise<Key[]> {
  return tx.$queryRawUnsafe<Key[]>(`
    SELECT k.conname::text AS "name", k.conrelid::regclass::text AS "child", k.confrelid::regclass::text AS "parent",
      quote_ident(a.attname) AS "childColumn", quote_ident(b.attname) AS "parentColumn"
    FROM pg_constraint k
      JOIN pg_attribute a ON a.attrelid = k.conrelid AND a.attnum = k.conkey[1]
      JOIN pg_attribute b ON b.attrelid = k.confrelid AND b.attnum = k.confkey[1]
    WHERE k.contype = 'f' AND k.connamespace = current_schema()::regnamespace ORDER BY 1`);
}
