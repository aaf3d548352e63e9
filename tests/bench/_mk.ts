import { bookFiles } from '@/prisma/book-files';
import { writeBigBook } from '@/tests/bench/big-book';
const [folder, c] = process.argv.slice(2);
const t = performance.now();
const made = await writeBigBook(bookFiles(folder), { containers: Number(c), movements: Number(c) * 10 }, '2026-11-25' as never);
console.log({ ...made, onHand: made.onHand.length }, ((performance.now() - t) / 1000).toFixed(1), 's');
process.exit(0);
