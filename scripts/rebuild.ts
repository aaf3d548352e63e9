/** `npm run rebuild`: folds the ledger again and mends the balances that differ from it. */
import { rebuildBalances } from '@/app/_server/ledger/rebuild-balances';
import { bookFiles } from '@/prisma/book-files';
import { openBook } from '@/prisma/open-book';
import { prepareBook } from '@/prisma/prepare-book';
import { sayStoreTrouble } from '@/prisma/store-trouble';

try {
  const files = bookFiles();
  await prepareBook(files);
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
