/**
 * `npx tsx tests/bench/trace.ts`, or with `--quick` on a smaller book: how long a trace from one lot takes in a book of a
 * million movements, against one bare recursive question for the same things on a connection of its own, in the same run
 * and on the same lots, turn about. Figures are printed; a goal missed is said, never failed, another answer is.
 */
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import Database from 'better-sqlite3';
import { traceFrom } from '@/app/_server/trace/trace-from';
import { bookFiles } from '@/prisma/book-files';
import { openBook } from '@/prisma/open-book';
import { seededRandom } from '../support/scan-codes/seeded-random';
import { TODAY } from '../support/test-book';
import { writeBigBook } from './big-book';

const isQuick = process.argv.includes('--quick');
const SIZE = isQuick ? { containers: 10_000, movements: 100_000 } : { containers: 100_000, movements: 1_000_000 };
const ROUNDS = 300;
const WARM = 40;
const GOAL = 3;

const UNDONE = (entry: string) => `EXISTS (SELECT 1 FROM "Entry" r WHERE r."reversesId" = ${entry})`;
/** What a lot went into, and what each is called: the least that can be asked. */
const BARE = `
  WITH RECURSIVE t(kind, id) AS (
    SELECT 'lot', CAST(? AS INTEGER)
    UNION SELECT 'container', c."stockId" FROM t JOIN "Container" c ON c."lotId" = t.id WHERE t.kind = 'lot'
    UNION SELECT 'lift', w."liftId" FROM t JOIN "Weighed" w ON w."stockId" = t.id
      WHERE t.kind = 'container' AND NOT ${UNDONE('w."entryId"')}
    UNION SELECT 'job', p."jobId" FROM t JOIN "Lift" l ON l."id" = t.id JOIN "Pour" p ON p."id" = l."pourId"
      WHERE t.kind = 'lift'
    UNION SELECT 'job', e."jobId" FROM t JOIN "Movement" m ON m."stockId" = t.id JOIN "Entry" e ON e."id" = m."entryId"
      WHERE t.kind = 'container' AND e."kind" = 'pulled' AND e."jobId" IS NOT NULL AND m."quantityDelta" < 0
        AND NOT ${UNDONE('e."id"')}
    UNION SELECT 'piece', s."id" FROM t JOIN "Stock" s ON s."ownerJobId" = t.id
      WHERE t.kind = 'job' AND s."kind" = 'piece'
    UNION SELECT 'piece', m."stockId" FROM t JOIN "Movement" m ON m."jobFromId" = t.id JOIN "Stock" s ON s."id" = m."stockId"
      WHERE t.kind = 'job' AND m."jobFromId" IS NOT NULL AND s."kind" = 'piece' AND m."jobToId" IS NOT m."jobFromId"
        AND COALESCE(m."reversesId", 0) = 0 AND NOT ${UNDONE('m."entryId"')} AND (
          EXISTS (SELECT 1 FROM "Pour" p JOIN "Lift" l ON l."pourId" = p."id" JOIN "Weighed" w ON w."liftId" = l."id"
            WHERE p."jobId" = t.id AND w."entryId" < m."entryId" AND NOT ${UNDONE('w."entryId"')})
          OR EXISTS (SELECT 1 FROM "Entry" e WHERE e."jobId" = t.id AND e."kind" = 'pulled' AND e."id" < m."entryId"
            AND NOT ${UNDONE('e."id"')}))
    UNION SELECT 'sample', sa."id" FROM t JOIN "Sample" sa ON sa."liftId" = t.id WHERE t.kind = 'lift'
    UNION SELECT 'piece', p."stockId" FROM t JOIN "Cut" c ON c."pieceId" = t.id JOIN "Piece" p ON p."cutId" = c."entryId"
      WHERE t.kind = 'piece' AND NOT ${UNDONE('c."entryId"')}
  )
  SELECT t.kind, t.id, s."label", s."quantity", s."hold", j."name", j."client", a."name" AS place, pr."name" AS product
  FROM t LEFT JOIN "Stock" s ON t.kind IN ('lot', 'container', 'piece') AND s."id" = t.id
    LEFT JOIN "Job" j ON t.kind = 'job' AND j."id" = t.id LEFT JOIN "Place" a ON a."id" = s."placeId"
    LEFT JOIN "Container" c ON t.kind = 'container' AND c."stockId" = t.id
    LEFT JOIN "Lot" l ON t.kind = 'lot' AND l."stockId" = t.id
    LEFT JOIN "Product" pr ON pr."id" = COALESCE(c."productId", l."productId")`;

const files = bookFiles(fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-trace-')));
try {
  const made = await writeBigBook(files, SIZE, TODAY);
  const book = await openBook(files);
  const db = new Database(files.database, { readonly: true });
  const ready = db.prepare<[number], { kind: string; id: number }>(BARE);
  // As the app asks it: a question is compiled when it is put. Asked over and over by one program, it need not be.
  const bare = (id: number) => db.prepare<[number], { kind: string; id: number }>(BARE).all(id);
  const lots = db.prepare<[], { id: number }>('SELECT "stockId" AS id FROM "Lot" ORDER BY "stockId"').all();
  const random = seededRandom(7);
  const ours: number[] = [];
  const theirs: number[] = [];
  const compiled: number[] = [];
  const ratios: number[] = [];
  let things = 0;
  for (let nr = 0; nr < ROUNDS + WARM; nr += 1) {
    const { id } = lots[Math.floor(random() * lots.length)] ?? { id: 0 };
    const time = { ours: 0, bare: 0 };
    const found = { ours: '', bare: '' };
    for (const who of nr % 2 === 0 ? (['ours', 'bare'] as const) : (['bare', 'ours'] as const)) {
      const begun = performance.now();
      const rows = who === 'bare' ? bare(id) : ((await traceFrom(book.read, { kind: 'lot', id }))?.nodes ?? []);
      time[who] = performance.now() - begun;
      found[who] = rows
        .map((row) => `${row.kind}:${row.id}`)
        .sort()
        .join();
    }
    if (found.ours !== found.bare) throw new Error(`Lot ${id}: ${found.ours} is not ${found.bare}`);
    const begun = performance.now();
    ready.all(id);
    const again = performance.now() - begun;
    if (nr < WARM) continue;
    compiled.push(again);
    things += found.bare.split(',').length;
    ours.push(time.ours);
    theirs.push(time.bare);
    ratios.push(time.ours / time.bare);
  }
  const at = (all: number[], part: number) =>
    [...all].sort((a, b) => a - b)[Math.floor((all.length - 1) * part)] ?? Number.NaN;
  const say = (all: number[]) => `median ${at(all, 0.5).toFixed(2)} ms, p95 ${at(all, 0.95).toFixed(2)} ms`;
  const ratio = at(ours, 0.5) / at(theirs, 0.5);
  console.log(
    `${made.movements.toLocaleString('en')} movements, ${lots.length.toLocaleString('en')} lots; ${ROUNDS} traces from one lot, ${Math.round(things / ROUNDS)} things each on average`,
  );
  console.log(`  traced: ${say(ours)}; bare recursive SQL: ${say(theirs)}; compiled beforehand: ${say(compiled)}`);
  console.log(
    `  ${ratio.toFixed(1)}× the bare SQL (goal: at most ${GOAL}×, ${ratio <= GOAL ? 'met' : 'missed'}); lot by lot half are under ${at(ratios, 0.5).toFixed(1)}×`,
  );
  db.close();
  await book.close();
} finally {
  fs.rmSync(files.folder, { recursive: true, force: true });
}
