import { connection } from 'next/server';
import { readBook } from '@/app/_server/book/read-book';
import { theBook } from '@/app/_server/book/the-book';

/** How many entries the book has, for whoever waits while the demo is laid out. */
export async function GET(): Promise<Response> {
  await connection();
  const head = await readBook(await theBook(), new Date()).catch(() => undefined);
  return Response.json({ entries: head?.revision ?? 0 });
}
