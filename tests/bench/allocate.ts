/**
 * `npx tsx tests/bench/allocate.ts`, or with `--quick`: how long it takes to allot 300 containers to the parts A and B of
 * 60 open lifts and prove that nothing is better, beside a person's first expired, first out by hand in the same run, and
 * what the difference is worth. Figures are printed; a goal missed is said, never failed, but an answer that breaks a rule
 * or is worse than by hand is.
 */
import os from 'node:os';
import { solveProgram, solveWithin } from '@/app/_server/allocation/solve-program';
import { type Allocation, allocate } from '@/shared/allocation/allocate';
import type { AllocationAsk, AllocationContainer, AllocationNeed } from '@/shared/allocation/allocation-ask';
import { checkAllocation } from '@/shared/allocation/check-allocation';
import { compareAllocations, compareMeasures } from '@/shared/allocation/compare-allocations';
import { firstExpiredByHand } from '@/shared/allocation/first-expired-by-hand';
import { addDays } from '@/shared/calendar/add-days';
import { unwrap } from '@/shared/result/result';
import { milligrams } from '@/shared/units/stock-unit';
import { containerOf, needOf, numbersFrom, TODAY } from '../shared/allocation/any-ask';

const quick = process.argv.includes('--quick');
const RUNS = quick ? 2 : 5;
const GOAL_SECONDS = 2;
const KINDS = {
  '60 lifts, plenty': { lifts: 60, scarce: false, odd: false },
  '60 lifts, plenty, weighed to the milligram': { lifts: 60, scarce: false, odd: true },
  '60 lifts, scarce': { lifts: 60, scarce: true, odd: false },
  '30 lifts, plenty': { lifts: 30, scarce: false, odd: false },
};

console.log(
  `${os.cpus().length} cores (${os.cpus()[0]?.model ?? 'unknown'}), Node ${process.version}, load ${os.loadavg()[0]?.toFixed(1)}`,
);
// The first calls load the solver and are slow while the engine learns its code; a server has long since made them.
for (let run = 97; run <= 99; run += 1)
  await solveOne(workshop(run, { lifts: 30, containers: 150, scarce: false, odd: false }));
for (const [name, kind] of Object.entries(KINDS)) {
  const times: { ours: number; own: number; hand: number }[] = [];
  const lines: string[] = [];
  for (let run = 1; run <= RUNS; run += 1) {
    const ask = workshop(run, { containers: 300, ...kind });
    const byHand = timed(() => firstExpiredByHand(ask));
    const cpu = process.cpuUsage();
    const begun = performance.now();
    const found = await solveOne(ask);
    const ours = performance.now() - begun;
    const own = process.cpuUsage(cpu).user / 1000;
    if (checkAllocation(ask, found.takes).length) throw new Error('The allocation breaks a rule.');
    const { better, differences } = compareAllocations(ask, found.takes, byHand.value);
    if (better === 'other') throw new Error('By hand is better.');
    times.push({ ours, own, hand: byHand.ms });
    const hurried = unwrap(await allocate(ask, solveWithin(GOAL_SECONDS), { timeLimitSeconds: GOAL_SECONDS }));
    const lost = compareMeasures(found.measures, hurried.measures).differences.map(({ measure }) => measure);
    const gap = found.gap ? `gap in ${found.gap.measure}: ${found.gap.value}, at least ${found.gap.least}` : 'proved';
    const worth = differences
      .filter(({ measure }) => measure !== 'order')
      .map(({ measure, one, other }) => `${measure} ${one} against ${other}`);
    lines.push(
      `  ${ours.toFixed(0)} ms (${own.toFixed(0)} ours), ${found.solves} programmes, ${gap}; ${worth.join(', ') || 'as by hand'}; in ${GOAL_SECONDS} s ${hurried.status}, ${lost[0] ? `${lost[0]} not the best yet` : 'the same'}`,
    );
  }
  const median = (of: (time: (typeof times)[number]) => number) =>
    times.map(of).sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN;
  const [ours, own, hand] = [median((time) => time.ours), median((time) => time.own), median((time) => time.hand)];
  console.log(
    `${name}: median ${ours.toFixed(0)} ms (goal ${GOAL_SECONDS * 1000} ms, ${ours < GOAL_SECONDS * 1000 ? 'met' : 'missed'}), ${own.toFixed(0)} ms of it ours; ${(ours / hand).toFixed(0)}× by hand (${hand.toFixed(1)} ms)`,
  );
  console.log(lines.join('\n'));
}

async function solveOne(ask: AllocationAsk): Promise<Allocation> {
  return unwrap(await allocate(ask, solveProgram, { timeLimitSeconds: 10 }));
}

/** Five systems of resin in lots and sets, the tins of a lot alike, a few open ones; lifts of tables over ten weeks. */
function workshop(
  seed: number,
  { lifts, containers, scarce, odd }: { lifts: number; containers: number; scarce: boolean; odd: boolean },
): AllocationAsk {
  const next = numbersFrom(seed);
  const upTo = (most: number) => Math.floor(next() * (most + 1));
  const grams = (count: number) => milligrams(odd ? count * 1000 + upTo(999) : count * 1000);
  const needs = Array.from({ length: lifts }, (_, nr): AllocationNeed[] => {
    const job = Math.floor(nr / 3);
    const system = job % 5;
    // Now and then either of two systems will do, or the maker wants both parts of one set.
    const systems = job % 7 === 3 ? [system, (system + 1) % 5] : [system];
    const on = addDays(TODAY, 3 + (job % 10) * 7 + (nr % 3) * 2);
    const amount = (scarce ? 1500 : 400) + 50 * upTo(40);
    const base = { on, jobName: `Table ${job}`, surface: `Table ${job}, top`, setDemanded: job % 6 === 5 };
    return (['A', 'B'] as const).map((part) =>
      needOf({
        id: `${nr}${part}`,
        ...base,
        part,
        what: `part ${part} of lift ${(nr % 3) + 1}`,
        productIds: systems.map((one) => `${one}${part}`),
        amount: grams(part === 'A' ? amount : Math.round(amount * 0.45)),
        pairsWith: part === 'A' ? `${nr}B` : `${nr}A`,
      }),
    );
  }).flat();
  const stock = Array.from({ length: containers }, (_, nr): AllocationContainer => {
    const [system, part] = [nr % 5, nr % 2 ? 'B' : 'A'] as const;
    const lot = Math.floor(nr / 50);
    const sealed = next() < 0.85;
    const [size, each] = part === 'A' ? [2500, 25] : [1125, 11];
    return containerOf({
      id: `c${nr}`,
      productId: `${system}${part}`,
      systemKey: `system ${system}`,
      part,
      lotId: `${system}${part}${lot}`,
      setId: `set ${system} ${lot}`,
      left: sealed ? milligrams(size * 1000) : grams(each * (5 + upTo(80))),
      sealed,
      openedLife: sealed ? { count: 6, unit: 'week' } : undefined,
      lastGoodDay: addDays(TODAY, sealed ? 30 + lot * 25 + system : 5 + upTo(50)),
      price: part === 'A' ? 2400 : 3100,
    });
  });
  return { today: TODAY, needs, containers: stock, wasteUntil: addDays(TODAY, 120) };
}

function timed<T>(run: () => T): { readonly value: T; readonly ms: number } {
  const begun = performance.now();
  const value = run();
  return { value, ms: performance.now() - begun };
}
