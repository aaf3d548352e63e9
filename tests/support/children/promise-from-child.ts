/**
 * A second process at the same book: promises the same thing to `jobs` (numbers, comma between) at once and prints what
 * became of each. Arguments: data folder, label, amount ('' for the whole), jobs, key prefix.
 */
import { reserve } from '@/app/_server/promises/reserve';
import { bookFiles } from '@/prisma/book-files';
import { openBook } from '@/prisma/open-book';
import { by } from '@/tests/support/test-book';

const [folder = '', label = '', amount = '', jobs = '', prefix = ''] = process.argv.slice(2);
const book = await openBook(bookFiles(folder, process.env.FLITCHBOOK_DATABASE_URL));
// All children begin together, on the line their parent writes.
process.stdout.write('ready\n');
await new Promise((resolve) => process.stdin.once('data', resolve));
const outcomes = await Promise.all(
  jobs.split(',').map((jobId, nr) =>
    reserve(book, by(`${prefix}-${nr}-key`), {
      jobId: Number(jobId),
      items: [{ label, amount: amount === '' ? undefined : Number(amount) }],
    }),
  ),
);
process.stdout.write(JSON.stringify(outcomes.map((each) => (each.ok ? { code: 'promised' } : each.error))));
await book.close();
process.exit(0);
