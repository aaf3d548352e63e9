import { askServer } from '@/prisma/ask-server';
import { NotABookError } from '@/prisma/not-a-book';

/** Names of the migrations a PostgreSQL database has taken; none when it is empty. Throws NotABookError. */
export function appliedOnServer(url: string): Promise<string[]> {
  return askServer(url, async (client) => {
    const tables = await client.query<{ name: string }>(
      'SELECT table_name AS name FROM information_schema.tables WHERE table_schema = current_schema()',
    );
    if (tables.rows.length === 0) return [];
    if (!tables.rows.some(({ name }) => name === '_prisma_migrations')) throw new NotABookError();
    const taken = await client.query<{ name: string }>(
      'SELECT migration_name AS name FROM _prisma_migrations WHERE finished_at IS NOT NULL AND rolled_back_at IS NULL',
    );
    return taken.rows.map(({ name }) => name);
  });
}
