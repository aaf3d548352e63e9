/** `npm run migrate`: brings the book in FLITCHBOOK_DATA up to this version. Exit 1 when it cannot, in plain words. */
import { bookFiles } from '@/prisma/book-files';
import { prepareBook } from '@/prisma/prepare-book';
import { sayStoreTrouble } from '@/prisma/store-trouble';

try {
  const applied = await prepareBook(bookFiles());
  console.log(applied.length ? `Applied ${applied.join(', ')}.` : 'The book is up to date.');
  process.exit(0);
} catch (error) {
  console.error(sayStoreTrouble(error));
  process.exit(1);
}
