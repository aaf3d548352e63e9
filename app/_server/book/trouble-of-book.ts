import { randomUUID } from 'node:crypto';
import { theBook } from '@/app/_server/book/the-book';
import { sayStoreTrouble, storeTroubleOf } from '@/prisma/store-trouble';

/** Why the book cannot be opened: what happened, what was kept, what to do. */
export type BookTrouble = { happened: string; kept: string; toDo: string; reference?: string };

/** Why the book cannot be opened, in words; undefined when it can. */
export async function troubleOfBook(): Promise<BookTrouble | undefined> {
  try {
    const book = await theBook();
    await book.read.book.findUnique({ where: { id: 1 }, select: { id: true } });
    return undefined;
  } catch (error) {
    const reference = randomUUID().slice(0, 8);
    console.error(`[${reference}]`, error);
    return sayBookTrouble(error, reference);
  }
}

/** The trouble for a screen. An error nobody foresaw is only referred to, since its text may show paths of the server. */
export function sayBookTrouble(error: unknown, reference: string): BookTrouble {
  if (storeTroubleOf(error) === 'unknown') {
    return {
      happened: 'The book could not be opened.',
      kept: 'Nothing was changed.',
      toDo: 'Stop the program and start it again with npm start, which also brings the book up to date. If it stays, the server’s log says why.',
      reference,
    };
  }
  // Every known trouble is told in this order, a sentence each for the first two.
  const [happened = '', kept = '', ...toDo] = sayStoreTrouble(error).split(/(?<=\.) (?=[A-Z])/);
  return { happened, kept, toDo: toDo.join(' ') };
}
