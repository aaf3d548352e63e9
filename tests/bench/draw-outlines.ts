/**
 * A wall of 500 measured slabs in Chromium: how long its script, its styles and its layout take, against the same page with
 * one slab on it, loaded in turn in the same run. Run by `npm run bench`, or by itself on a build that is there:
 * `npx tsx tests/bench/draw-outlines.ts [slabs] [loads]`.
 */
import { type CDPSession, chromium } from 'playwright';
import { setUpBook } from '@/app/_server/book/set-up-book';
import { measureByStations } from '@/app/_server/shapes/measure-by-stations';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { bookFiles } from '@/prisma/book-files';
import { openBook } from '@/prisma/open-book';
import { nanometres } from '@/shared/units/nanometres';
import { browserArgs, ensureBrowser } from '../../scripts/find-browser.mjs';
import { seeded } from '../support/fake-camera/seeded';
import { serve } from '../support/serve';
import { aSlab } from '../support/stock-of-a-test';
import { by, must } from '../support/test-book';
import { printGoals } from './tables';

const MM = 1_000_000;
const [slabs = 500, loads = 7] = process.argv.slice(2).map(Number);
const MOST_SCRIPT_MS = 100;
const STATIONS = 60;

const served = await serve();
await hang(served.folder, slabs);
const browser = await chromium.launch({ executablePath: await ensureBrowser(), args: [...browserArgs] });
const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
const metrics = await page.context().newCDPSession(page);
await metrics.send('Performance.enable');

const MEASURED = ['ScriptDuration', 'RecalcStyleDuration', 'LayoutDuration', 'TaskDuration'] as const;
type Load = Record<(typeof MEASURED)[number], number>;
const wall: Load[] = [];
const alone: Load[] = [];
await load('/on-hand/wall');
for (let nr = 0; nr < loads; nr += 1) {
  alone.push(await load('/on-hand/wall?species=Elm'));
  wall.push(await load('/on-hand/wall'));
}
const drawn = await page.locator('ul[aria-label="Slabs"] > li').count();
const html = (await (await page.request.get(`${served.url}/on-hand/wall`)).body()).length;
await browser.close();
await served.stop();

console.log(
  `\nA wall of ${drawn} slabs of ${STATIONS * 2} points, ${(html / 1e6).toFixed(2)} MB of page; medians of ${loads}`,
);
for (const name of MEASURED) {
  const [many, one] = [median(wall, name), median(alone, name)];
  console.log(
    `  ${name.padEnd(20)} ${many.toFixed(0)} ms, with one slab ${one.toFixed(0)} ms: ${(many / one).toFixed(1)} ×`,
  );
}
printGoals([
  {
    what: `script on a wall of ${drawn} slabs`,
    goal: MOST_SCRIPT_MS,
    measured: median(wall, 'ScriptDuration'),
    unit: ' ms',
  },
]);
process.exit(drawn === slabs ? 0 : 1);

/** What one load of a page took the browser, milliseconds, until nothing more came. */
async function load(path: string): Promise<Load> {
  await page.goto('about:blank');
  const before = await read(metrics);
  await page.goto(served.url + path, { waitUntil: 'networkidle' });
  const after = await read(metrics);
  return Object.fromEntries(MEASURED.map((name) => [name, 1000 * (after[name] - before[name])])) as Load;
}

async function read(session: CDPSession): Promise<Load> {
  const { metrics: all } = await session.send('Performance.getMetrics');
  return Object.fromEntries(MEASURED.map((name) => [name, all.find((one) => one.name === name)?.value ?? 0])) as Load;
}

function median(all: readonly Load[], name: keyof Load): number {
  return all.map((one) => one[name]).sort((a, b) => a - b)[all.length >> 1] ?? Number.NaN;
}

/** Slabs with live edges that wave, each measured at stations five centimetres apart; the last is of another wood. */
async function hang(folder: string, count: number): Promise<void> {
  const book = await openBook(bookFiles(folder));
  must(await setUpBook(book, by(), { name: 'Bench', timeZone: 'UTC', units: 'metric', currency: 'GBP' }));
  const random = seeded(7);
  for (let nr = 0; nr < count; nr += 1) {
    const species = nr === count - 1 ? 'Elm' : 'Walnut';
    const { pieces } = must(await receivePieces(book, by(), aSlab({ species, flitch: '' })));
    const [length, half, bend] = [2000 + random() * 1500, 180 + random() * 250, (random() - 0.5) * 160];
    const side = () => {
      const [phase, wave] = [random() * 6, 8 + random() * 25];
      return (t: number) => half * (1 + 0.2 * t) + Math.sin(t * 9 + phase) * wave + Math.sin(t * 31 + phase) * 4;
    };
    const [left, right] = [side(), side()];
    const stations = Array.from({ length: STATIONS }, (_, at) => {
      const t = at / (STATIONS - 1);
      const middle = bend * Math.sin(t * Math.PI);
      const whole = (mm: number) => nanometres(Math.round(mm * 10) * (MM / 10));
      return { at: whole(t * length), left: whole(left(t) + middle), right: whole(right(t) - middle) };
    });
    const label = pieces[0]?.label ?? '';
    must(await measureByStations(book, by(), { label, chalkLine: { stations }, why: '' }));
  }
  await book.close();
}
