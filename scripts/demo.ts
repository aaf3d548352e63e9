/** `npm run demo`: fills an unbegun book in FLITCHBOOK_DATA with a made-up workshop. Exit 1 when there is a book already. */
import { readBook } from '@/app/_server/book/read-book';
import { makeDemo } from '@/app/_server/demo/make-demo';
import { bookFiles } from '@/prisma/book-files';
import { openBook } from '@/prisma/open-book';
import { prepareBook } from '@/prisma/prepare-book';
import { sayStoreTrouble } from '@/prisma/store-trouble';

const files = bookFiles();
try {
  await prepareBook(files);
  const book = await openBook(files);
  const now = new Date();
  const head = await readBook(book, now);
  if (head) {
    console.error(
      `There is a book in ${files.folder} already: ${head.name}. Nothing was changed. ` +
        'Give another folder to make the demo in: FLITCHBOOK_DATA=/path/to/folder npm run demo',
    );
  } else {
    await makeDemo(book, now);
    console.log(`The demo workshop is in ${files.folder}.`);
  }
  await book.close();
  process.exit(head ? 1 : 0);
} catch (error) {
  console.error(sayStoreTrouble(error));
  process.exit(1);
}
