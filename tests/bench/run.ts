/**
 * `npm run bench`, or `npm run bench -- --quick` on smaller books: how fast the built app answers on books of three sizes,
 * against bare SQL in the same server; how much script a first visit loads; how well codes are read; how long a photo takes
 * to be straightened; and the long computations of a job: what fits, what is allotted, a time line, a trace. Loopback only, and not one of the tests: figures are printed, and a goal missed is said, never failed.
 */
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { bookFiles } from '@/prisma/book-files';
import { openBook } from '@/prisma/open-book';
import { dateIn } from '@/shared/calendar/date-in';
import { build, generate, run } from '../../scripts/steps.mjs';
import { type Served, serve } from '../support/serve';
import { hangUp } from './ask';
import { type BigBook, writeBigBook } from './big-book';
import { compare, type Pair } from './compare';
import { type FirstLoad, firstLoads } from './first-load';
import { type Questions, questionsFor } from './questions';
import { type Goal, printGoals, printSizes, type SizeFigures } from './tables';

const quick = process.argv.includes('--quick');
const SIZES = quick ? [500, 2_000, 10_000] : [1_000, 10_000, 100_000];
const COUNT = quick ? 120 : 400;
const WARM_UP = quick ? 40 : 100;
const MOST_SCRIPT = 200_000;
const NONE: Questions = { verdict: [], searches: {}, weigh: [] };

const today = dateIn('Europe/London', new Date());
console.log(
  `${os.cpus().length} cores (${os.cpus()[0]?.model ?? 'unknown'}), Node ${process.version}, ${os.type()} ${os.arch()}`,
);
await generate();
await build();

type Shop = { folder: string; size: string; made: BigBook; served: Served };
const shops: Shop[] = [];
const figures: SizeFigures[] = [];
let loads: FirstLoad[] = [];
try {
  for (const containers of SIZES) shops.push(await openShop(containers));
  await measure();
  loads = await firstLoads(shops[0]?.served.url ?? '');
} finally {
  hangUp();
  for (const { served } of shops) await served.stop();
}
for (const { folder, made } of shops) if (made.containers <= 10_000) await prove(bookFiles(folder));
for (const { folder } of shops) fs.rmSync(folder, { recursive: true, force: true });
printSizes(figures);
for (const { page, named, gzip } of loads) {
  console.log(
    `\n${page}: ${kB(named)} of script are named by the page, ${kB(gzip - named)} fetched ahead once it is there`,
  );
}
printGoals(goals());
console.log(
  await run(path.resolve('node_modules/.bin/tsx'), ['tests/bench/draw-outlines.ts', ...(quick ? ['200', '3'] : [])]),
);
if (process.argv.includes('--no-decoders') === false) {
  console.log('\nDecoders');
  console.log(
    await run(path.resolve('node_modules/.bin/tsx'), ['tests/bench/decoders.ts', ...(quick ? ['28', '20'] : [])]),
  );
}
console.log('\nStraightening a photo');
console.log(
  await run(path.resolve('node_modules/.bin/tsx'), ['tests/bench/straighten.ts', ...(quick ? ['--quick'] : [])]),
);
for (const [words, file] of [
  ['A time line after a drag', 'rejudge'],
  ['What fits', 'fit'],
  ['Resin and finish allotted over all jobs', 'allocate'],
  ['A trace from one lot', 'trace'],
]) {
  console.log(`\n${words}`);
  console.log(
    await run(path.resolve('node_modules/.bin/tsx'), [`tests/bench/${file}.ts`, ...(quick ? ['--quick'] : [])]),
  );
}
process.exit(0);

async function openShop(containers: number): Promise<Shop> {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-bench-'));
  const begun = performance.now();
  const made = await writeBigBook(bookFiles(folder), { containers, movements: containers * 10 }, today);
  const size = `${made.containers.toLocaleString('en')} / ${made.movements.toLocaleString('en')}`;
  console.log(`A book of ${size} (containers / movements), written in ${seconds(begun)}`);
  const served = await serve({ FLITCHBOOK_DATA: folder, FLITCHBOOK_BENCH: '1' });
  figures.push({ size, compared: {} });
  return { folder, size, made, served };
}

/** Every question of every size of book in turn, so that the sizes compare as well as the two sides do. */
async function measure(): Promise<void> {
  const asked = shops.map(({ made }) => questionsFor(made, today));
  const ask = async (name: string, part: number, pairsOf: (questions: Questions) => Pair[]) => {
    const sides = shops.map(({ served }, at) => ({
      origin: served.url,
      pairs: pairsOf(asked[at] ?? asked[0] ?? NONE),
    }));
    const all = await compare(sides, { count: COUNT * part, warmUp: WARM_UP * part });
    for (const [at, compared] of all.entries()) Object.assign(figures[at]?.compared ?? {}, { [name]: compared });
  };
  await ask('verdict for a scan', 1, ({ verdict }) => verdict);
  for (const name of Object.keys(asked[0]?.searches ?? {})) {
    await ask(`search: ${name}`, 1 / 4, ({ searches }) => searches[name] ?? []);
  }
  await ask('posting a movement', 1, ({ weigh }) => weigh);
}

/** What was written by the bench, and by both sides during it, is a book in which every rule holds. */
async function prove(files: ReturnType<typeof bookFiles>): Promise<void> {
  const book = await openBook(files);
  const proof = await proveBook(book.read);
  await book.close();
  if (proof.differences.length)
    throw new Error(`The book broke a rule: ${JSON.stringify(proof.differences.slice(0, 3))}`);
  console.log(`  proved: ${proof.entries} entries, ${proof.movements} movements, every rule holds`);
}

function goals(): Goal[] {
  const largest = figures.at(-1);
  const smallest = figures[0];
  const all: Goal[] = [];
  for (const [name, at] of Object.entries(largest?.compared ?? {})) {
    const growth = at.ours.median / (smallest?.compared[name]?.ours.median ?? Number.NaN);
    all.push({ what: `${name}: against bare SQL`, goal: 2, measured: at.ratio, unit: '×' });
    all.push({ what: `${name}: p95`, goal: 30, measured: at.ours.p95, unit: ' ms' });
    all.push({ what: `${name}: growth, smallest to largest book`, goal: 1.5, measured: growth, unit: '×' });
  }
  for (const load of loads) {
    all.push({
      what: `${load.page}: first script, gzip`,
      goal: MOST_SCRIPT / 1000,
      measured: load.gzip / 1000,
      unit: ' kB',
    });
    all.push({
      what: `${load.page}: decoder files before the camera opens`,
      goal: 0,
      measured: load.decoderBefore,
      unit: '',
    });
  }
  return all;
}

function kB(bytes: number): string {
  return `${(bytes / 1000).toFixed(1)} kB`;
}

function seconds(since: number): string {
  return `${((performance.now() - since) / 1000).toFixed(1)} s`;
}
