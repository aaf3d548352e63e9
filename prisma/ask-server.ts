import { Client } from 'pg';
import { WAIT_MS } from '@/prisma/wait-ms';

/** Does something over one connection to a PostgreSQL database, and closes it. */
export async function askServer<T>(url: string, work: (client: Client) => Promise<T>): Promise<T> {
  const client = new Client({ connectionString: url, connectionTimeoutMillis: WAIT_MS });
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end();
  }
}
