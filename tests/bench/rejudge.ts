/**
 * `npx tsx tests/bench/rejudge.ts`: how long it takes to judge a time line of forty verdicts again after a step is dragged,
 * reading the book anew as the screen does, and without reading; against the same verdicts one by one from the bare rules,
 * with nothing looked for or compared. Figures are printed; a goal missed is said, never failed, wrong answers are.
 */
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { setUpBook } from '@/app/_server/book/set-up-book';
import { noteFinishSheet } from '@/app/_server/finish/note-finish-sheet';
import { planCoats } from '@/app/_server/finish/plan-coats';
import { addJob } from '@/app/_server/jobs/add-job';
import { loadJob } from '@/app/_server/jobs/read-jobs';
import { teachProduct } from '@/app/_server/products/teach-product';
import { receiveContainers } from '@/app/_server/stock/receive-containers';
import { judgeStock } from '@/app/_server/timeline/judge-stock';
import { readTimeline } from '@/app/_server/timeline/read-timeline';
import { rejudge } from '@/app/_server/timeline/rejudge';
import { bookFiles } from '@/prisma/book-files';
import { openBook } from '@/prisma/open-book';
import { prepareBook } from '@/prisma/prepare-book';
import { addDays } from '@/shared/calendar/add-days';
import { unwrap } from '@/shared/result/result';
import { judge } from '@/shared/shelf-life/judge';
import { shiftSteps } from '@/shared/timeline/shift-steps';
import { RESIN } from '../support/stock-of-a-test';
import { by, day, must, TODAY } from '../support/test-book';

const FINISHES = 5;
const COATS = 4;
const TINS = 12;
const ROUNDS = 200;

const files = bookFiles(fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-rejudge-')));
await prepareBook(files);
const book = await openBook(files);
must(await setUpBook(book, by(), { name: 'Bench', timeZone: 'Europe/London', units: 'metric', currency: 'GBP' }));
const { jobId } = must(
  await addJob(book, by(), { name: 'Bench table', purpose: 'client', client: '', dayOfUse: TODAY, note: '' }),
);
for (let nr = 0; nr < FINISHES; nr += 1) {
  const { productId } = must(
    await teachProduct(book, by(), {
      ...RESIN,
      name: `Oil ${nr}`,
      kind: 'hardwax-oil',
      unit: 'uL',
      packageSize: 750_000,
      tareMg: undefined,
      system: undefined,
    }),
  );
  must(
    await receiveContainers(book, by(), {
      productId,
      lotCode: `L${nr}`,
      dates: { bestBefore: { date: day('2027-03-01'), precision: 'day', confirmed: true } },
      count: TINS,
      size: 750_000,
      receivedOn: TODAY,
    }),
  );
  must(
    await noteFinishSheet(book, by(), {
      productId,
      sheet: { from: 'sheet', coverageTenths: 100, recoatFromHours: 12, recoatToHours: 48, cureDays: 7 },
    }),
  );
  must(
    await planCoats(book, by(), {
      jobId,
      productId,
      partIds: [],
      faces: 2,
      areaMm2: 4e6,
      coats: COATS,
      coverageTenths: null,
      lossPercent: 0,
      firstDay: addDays(TODAY, 7 + nr),
    }),
  );
}
const job = await loadJob(book.read, jobId);
if (!job) throw new Error('The job is gone.');
const timeline = await readTimeline(book, job, TODAY);
const first = timeline.steps[0];
if (!first) throw new Error('Nothing is planned.');

const later = (ahead: number) => addDays(first.day, 1 + (ahead % 90));
const ours: number[] = [];
const whole: number[] = [];
const bare: number[] = [];
let verdicts = 0;
for (let nr = 0; nr < ROUNDS + 20; nr += 1) {
  const to = later(nr);
  let begun = performance.now();
  const moves = unwrap(
    shiftSteps(timeline.steps, { stepId: first.id, to, landing: 'open', push: true }, timeline.facts),
  );
  const judged = rejudge(timeline, moves);
  const pure = performance.now() - begun;
  verdicts = judged.steps.length + judged.stock.length;

  begun = performance.now();
  rejudge(await readTimeline(book, job, TODAY), moves);
  const read = performance.now() - begun;

  const candidates = judgeStock(timeline.stock, timeline.steps).flatMap((one) => {
    const line = timeline.stock.needs
      .flatMap(({ from }) => from)
      .find(({ line: { label } }) => label === one.label)?.line;
    return line ? [line.candidate] : [];
  });
  begun = performance.now();
  for (let at = 0; at < verdicts; at += 1) {
    const candidate = candidates[at % candidates.length];
    if (candidate) judge({ ...candidate, purpose: 'client', dayOfUse: to, today: TODAY });
  }
  const alone = performance.now() - begun;
  if (nr < 20) continue;
  ours.push(pure);
  whole.push(read);
  bare.push(alone);
}
const moved = rejudge(timeline, [{ stepId: first.id, to: day('2027-03-02') }]);
const stops = moved.stock.filter(({ now, was }) => now.word === 'stop' && was?.word === 'use').length;
if (stops === 0) throw new Error('A day past every tin changed nothing.');

const at = (all: number[], part: number) =>
  [...all].sort((a, b) => a - b)[Math.floor((all.length - 1) * part)] ?? Number.NaN;
const say = (all: number[]) => `median ${at(all, 0.5).toFixed(2)} ms, p95 ${at(all, 0.95).toFixed(2)} ms`;
console.log(`${verdicts} verdicts on ${timeline.steps.length} steps after a drag, ${ROUNDS} rounds`);
console.log(
  `  judged again: ${say(ours)}, ${(at(ours, 0.5) / at(bare, 0.5)).toFixed(1)}× the bare rules (${say(bare)})`,
);
const half = at(whole, 0.5);
console.log(
  `  with the book read anew: ${say(whole)} (goal: half of them under 50 ms, ${half < 50 ? 'met' : 'missed'})`,
);
await book.close();
fs.rmSync(files.folder, { recursive: true, force: true });
