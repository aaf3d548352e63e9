/** `npm run prove`: checks every rule on the book in FLITCHBOOK_DATA. Exit 1 when something differs, 2 when it cannot be read. */
import { proveBook } from '@/app/_server/ledger/prove-book';
import { bookFiles } from '@/prisma/book-files';
import { openBook } from '@/prisma/open-book';
import { prepareBook } from '@/prisma/prepare-book';
import { sayStoreTrouble } from '@/prisma/store-trouble';

try {
  const files = bookFiles();
  await prepareBook(files);
  const book = await openBook(files);
  const proof = await proveBook(book.read);
  await book.close();
  for (const each of proof.differences) console.log(`${each.rule}: ${each.where}: ${each.says}`);
  console.log(
    `${proof.entries} entries, ${proof.movements} movements, ${proof.things} things: ` +
      (proof.differences.length ? `${proof.differences.length} differences.` : 'every rule holds.'),
  );
  process.exit(proof.differences.length ? 1 : 0);
} catch (error) {
  console.error(sayStoreTrouble(error));
  process.exit(2);
}
