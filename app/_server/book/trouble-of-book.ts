import { theBook } from '@/app/_server/book/the-book';
import { sayStoreTrouble } from '@/prisma/store-trouble';

/** Why the book cannot be opened, in words; undefined when it can. */
export async function troubleOfBook(): Promise<string | undefined> {
  try {
    const book = await theBook();
    await book.read.book.findUnique({ where: { id: 1 }, select: { id: true } });
    return undefined;
  } catch (error) {
    console.error(error);
    return sayStoreTrouble(error);
  }
}
