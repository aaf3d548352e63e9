/**
 * `npm run prove`: checks every rule on the book in FLITCHBOOK_DATA, changing nothing. Exit 1 when something differs, 2
 * when there is no book of this version, or it cannot be read.
 */
import { proveNow } from '@/app/_server/book/prove-now';
import { bookFiles } from '@/prisma/book-files';
import { requireBook } from '@/prisma/require-book';
import { sayStoreTrouble } from '@/prisma/store-trouble';

try {
  await requireBook(bookFiles());
  const proof = await proveNow();
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
