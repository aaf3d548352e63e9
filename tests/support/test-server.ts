import { randomUUID } from 'node:crypto';
import { askServer } from '@/prisma/ask-server';

/** The database that every test's own is copied from. */
export const TEMPLATE = 'flitchbook_test_template';

/** The address of a database on the server of the tests. */
export function urlOf(database: string): string {
  const url = new URL(process.env.FLITCHBOOK_TEST_SERVER_URL ?? '');
  url.pathname = `/${database}`;
  return url.href;
}

/** Whether these tests keep their books on a server. */
export const onServer = (): boolean => process.env.FLITCHBOOK_TEST_STORE === 'postgresql';

/** A copy of the template for one test, by its address. */
export const newDatabase = (): Promise<string> => copyOf(TEMPLATE);

/** A database with nothing in it, by its address. */
export const emptyDatabase = (): Promise<string> => copyOf('template0');

async function copyOf(template: string): Promise<string> {
  const name = `flitchbook_test_${randomUUID().replaceAll('-', '')}`;
  await askServer(urlOf('postgres'), (client) => client.query(`CREATE DATABASE ${name} TEMPLATE ${template}`));
  return urlOf(name);
}

/** Drops the database at an address that `newDatabase` gave. */
export async function dropDatabase(url: string): Promise<void> {
  const name = new URL(url).pathname.slice(1);
  if (!/^flitchbook_test_[0-9a-f]{32}$/.test(name)) throw new Error(`${name} is not a test's own database.`);
  await askServer(urlOf('postgres'), (client) => client.query(`DROP DATABASE ${name} WITH (FORCE)`));
}
