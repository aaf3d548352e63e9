/**
 * `npx tsx tests/bench/fit.ts`, or with `--quick` or `--fine`: how long it takes to ask 200 and 2,000 slabs for a top in one piece,
 * against trying every place of a grid one by one on some of the same slabs, whose answers must agree. Figures are
 * printed; a goal missed is said, never failed, but two answers that contradict each other are.
 */
import os from 'node:os';
import { fitOnePiece } from '@/shared/fit/fit-one-piece';
import { type FitRequest, readRequest, regionFor, type SlabToSearch } from '@/shared/fit/fit-request';
import { fitSlabs } from '@/shared/fit/fit-slabs';
import { holdsShape } from '@/shared/fit/holds-shape';
import type { HalfSizes, TopShape } from '@/shared/fit/top-shape';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { unwrap } from '@/shared/result/result';
import { bruteForce } from '../shared/fit/brute-force';
import { mm, numbersFrom, randomSlab } from '../shared/fit/random-slab';

const quick = process.argv.includes('--quick');
// Forty corners to a slab: twenty stations, both edges.
const KIND = { length: [1800, 3300], width: [800, 1300], waviness: 90, stations: 20 } as const;
const SIZES = quick ? [50, 200] : [200, 2_000];
// Coarser than the millimetre the search answers to, in the grid's favour: as fine as that it takes hours; `--fine` goes half way.
const [STEP, TURN] = process.argv.includes('--fine') ? [2, 0.2] : [5, 0.5];
const HALF = Math.round(5 / TURN);
const ANGLES = Array.from(
  { length: 2 * HALF + 1 },
  (_, nr) => ((nr % 2 ? -1 : 1) * Math.ceil(nr / 2) * TURN * Math.PI) / 180,
);
const GRID = { step: STEP * 1000, angles: ANGLES, around: 120 };
const SHAPES: readonly TopShape[] = [
  { kind: 'rectangle', length: mm(84 * 25.4), width: mm(40 * 25.4), cornerRadius: mm(10 * 25.4) },
  { kind: 'oval', length: mm(2100), width: mm(1000) },
  { kind: 'round', diameter: mm(1000) },
  { kind: 'superellipse', length: mm(2100), width: mm(1000), exponent: 2.5 },
];

console.log(
  `${os.cpus().length} cores (${os.cpus()[0]?.model ?? 'unknown'}), Node ${process.version}, load ${os.loadavg()[0]?.toFixed(1)}`,
);
const next = numbersFrom(20);
const slabs = Array.from({ length: Math.max(...SIZES) }, (_, nr) => randomSlab(`${nr}`, next, KIND));
for (const shape of SHAPES) {
  const request = unwrap(readRequest(asked(shape)));
  // The first calls are slow while the engine learns the code; a server or a worker has long since made them.
  for (const slab of slabs.slice(-40)) fitOnePiece(slab, unwrap(readRequest(asked(shape))));
  for (const count of SIZES) report(`${shape.kind}, ${count} slabs`, slabs.slice(0, count), asked(shape));
  // Three that make the top and three that do not, all long and wide enough over all: of the others the grid has no place
  // to try, and the search none to look at.
  const isYes = (slab: SlabToSearch) =>
    fitOnePiece(slab, unwrap(readRequest({ ...asked(shape), nearlyFrom: 1 }))).answer === 'yes';
  const roomy = slabs.slice(0, 400).filter((slab) => isRoomy(slab, request.sizes));
  const some = [...roomy.filter(isYes).slice(0, 3), ...roomy.filter((slab) => !isYes(slab)).slice(0, 3)];
  // Yes or no, and the best place for a yes; what is missing is a question the grid is not asked.
  const plain = unwrap(readRequest({ ...asked(shape), nearlyFrom: 1 }));
  const ours = timed(() => some.map((slab) => fitOnePiece(slab, plain)));
  const grid = timed(() => some.map((slab) => bruteForce(regionFor(slab, request), request.sizes, GRID)));
  some.forEach((slab, nr) => {
    const place = grid.value[nr];
    const real = place && holdsShape(regionFor(slab, request), request.sizes, { part: 'whole' }, place);
    if (real && ours.value[nr]?.answer !== 'yes') throw new Error(`Slab ${slab.id} has a place that was not found.`);
  });
  const both = some.filter((_, nr) => (ours.value[nr]?.answer === 'yes') === (grid.value[nr] !== undefined)).length;
  const ratio = grid.ms / ours.ms;
  console.log(
    `  against a grid of ${STEP} mm and ${TURN}° on ${some.length}: ${ratio.toFixed(0)}× quicker (goal 50×, ${ratio >= 50 ? 'met' : 'missed'}), ${both} of ${some.length} answers alike`,
  );
}

function asked(shape: TopShape): FitRequest {
  return { shape, grainWindow: 5, edgeAllowance: mm(10), trims: { start: mm(40), end: mm(40) }, filling: true };
}

function report(name: string, some: readonly SlabToSearch[], request: FitRequest): void {
  const read = unwrap(readRequest(request));
  const counts = { yes: 0, nearly: 0, no: 0 };
  const each: number[] = [];
  const cpu = process.cpuUsage();
  const begun = performance.now();
  let last = begun;
  for (const { fit } of fitSlabs(some, read)) {
    counts[fit.answer] += 1;
    const now = performance.now();
    each.push(now - last);
    last = now;
  }
  const ms = performance.now() - begun;
  const own = process.cpuUsage(cpu).user / 1000;
  each.sort((a, b) => a - b);
  const at = (part: number) => (each[Math.floor((each.length - 1) * part)] ?? 0).toFixed(1);
  const goal = some.length === 200 ? ` (goal under 1000 ms, ${ms < 1000 ? 'met' : 'missed'})` : '';
  console.log(
    `${name}: ${ms.toFixed(0)} ms${goal}, ${own.toFixed(0)} ms of it ours; median ${at(0.5)}, p95 ${at(0.95)}, slowest ${at(1)}; ${counts.yes} yes, ${counts.nearly} nearly, ${counts.no} no`,
  );
}

function isRoomy({ outline }: SlabToSearch, { a, b }: HalfSizes): boolean {
  const { left, right, bottom, top } = boundsOf(outline.ring);
  return right - left > 2 * a + 200_000 && top - bottom > 2 * b + 60_000;
}

function timed<T>(run: () => T): { readonly value: T; readonly ms: number } {
  const cpu = process.cpuUsage();
  const value = run();
  return { value, ms: process.cpuUsage(cpu).user / 1000 };
}
