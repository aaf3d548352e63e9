/** `npm run rebuild`: folds the ledger again and mends the balances that differ from it. Exit 2 when there is no book of this version. */
import { rebuildBalances } from '@/app/_server/ledger/rebuild-balances';
import { bookFiles } from '@/prisma/book-files';
import { openBook } from '@/prisma/open-book';
import { requireBook } from '@/prisma/require-book';
import { sayStoreTrouble } from '@/prisma/store-trouble';

try {
  const files = bookFiles();
  await requireBook(files);
  const book = await openBook(files);
  const { things, mended } = await rebuildBalances(book);
  await book.close();
  for (const label of mended) console.log(`mended ${label}`);
  console.log(`${things} things, ${mended.length} mended.`);
  process.exit(0);
} catch (error) {
  console.error(sayStoreTrouble(error));
  process.exit(2);
}
