/**
 * A second process at the same book: pulls `count` times at once and prints what became of each pull.
 * Arguments: data folder, label, amount, count, key prefix.
 */
import { pullContainer } from '@/app/_server/pull/pull-container';
import { bookFiles } from '@/prisma/book-files';
import { openBook } from '@/prisma/open-book';
import { by, NOW, TODAY } from '@/tests/support/test-book';

const [folder = '', label = '', amount = '', count = '', prefix = ''] = process.argv.slice(2);
const book = await openBook(bookFiles(folder, process.env.FLITCHBOOK_DATABASE_URL));
// All children begin together, on the line their parent writes.
process.stdout.write('ready\n');
await new Promise((resolve) => process.stdin.once('data', resolve));
const outcomes = await Promise.all(
  [...Array(Number(count)).keys()].map((nr) =>
    pullContainer(
      book,
      { ...by(`${prefix}-${nr}`), now: NOW },
      {
        label,
        purpose: 'client',
        dayOfUse: TODAY,
        asked: Number(amount),
        seen: 'care',
      },
    ),
  ),
);
process.stdout.write(JSON.stringify(outcomes.map((each) => (each.ok ? 'taken' : each.error.code))));
await book.close();
process.exit(0);
