import { describe, expect, it } from 'vitest';
import { solveProgram } from '@/app/_server/allocation/solve-program';
import type { Program, Row, Term } from '@/shared/allocation/program';
import { writeProgram } from '@/shared/allocation/write-program';

/** Published programmes with known optima, through the writer and the solver that allocations use. */
async function solve(program: Partial<Program> & Pick<Program, 'minimise' | 'rows'>) {
  const text = writeProgram({ most: new Map(), whole: new Set(), ...program });
  return solveProgram(text, { timeLimitSeconds: 20, closeEnough: 1e-6 });
}
const term = (name: string, times: number): Term => ({ name, times });
const sum = (names: readonly string[], times = 1) => names.map((name) => term(name, times));
const row = (terms: readonly Term[], sense: Row['sense'], bound: number): Row => ({ terms, sense, bound });
const yesOrNo = (names: readonly string[]) => ({
  most: new Map(names.map((name) => [name, 1])),
  whole: new Set(names),
});

describe('published programmes come out at their published optima', () => {
  it('assigns five workers to four tasks at 265', async () => {
    // Google OR-Tools documentation, "Solving an Assignment Problem" (developers.google.com/optimization/assignment):
    // the table of costs; the least total, 70 + 55 + 95 + 45, stands on the page before it for the first four workers, and
    // the fifth does not better it.
    const costs = [
      [90, 80, 75, 70],
      [35, 85, 55, 65],
      [125, 95, 90, 95],
      [45, 110, 95, 115],
      [50, 100, 90, 100],
    ];
    const at = (worker: number, task: number) => `x${worker}_${task}`;
    const names = costs.flatMap((tasks, worker) => tasks.map((_, task) => at(worker, task)));
    const answer = await solve({
      minimise: costs.flatMap((tasks, worker) => tasks.map((cost, task) => term(at(worker, task), cost))),
      rows: [
        ...costs.map((tasks, worker) => row(sum(tasks.map((_, task) => at(worker, task))), '<=', 1)),
        ...[0, 1, 2, 3].map((task) => row(sum(costs.map((_, worker) => at(worker, task))), '=', 1)),
      ],
      ...yesOrNo(names),
    });
    expect(answer).toMatchObject({ status: 'best', value: 265, bound: 265 });
  });

  it('ships from two canneries to three markets at 153.675', async () => {
    // Dantzig, Linear Programming and Extensions (Princeton University Press, 1963), chapter 3.3, in the form of the GAMS
    // model library, TRNSPORT: capacities, demands, distances, 90 dollars a case and thousand miles. The optimum, 153.675
    // thousand dollars, is from memory.
    const capacity = [350, 600];
    const demand = [325, 300, 275];
    const distance = [
      [2.5, 1.7, 1.8],
      [2.5, 1.8, 1.4],
    ];
    const at = (plant: number, market: number) => `x${plant}_${market}`;
    const answer = await solve({
      minimise: distance.flatMap((miles, plant) => miles.map((d, market) => term(at(plant, market), (90 * d) / 1000))),
      rows: [
        ...capacity.map((most, plant) => row(sum(demand.map((_, market) => at(plant, market))), '<=', most)),
        ...demand.map((least, market) => row(sum(capacity.map((_, plant) => at(plant, market))), '>=', least)),
      ],
    });
    expect(answer.status === 'best' && answer.value).toBeCloseTo(153.675, 9);
    // A transport of whole amounts is whole at its corners: what `exactFlow` rests on.
    if (answer.status === 'best') for (const value of answer.values.values()) expect(Math.round(value)).toBe(value);
  });

  it('packs eleven items into four bins of 100', async () => {
    // Google OR-Tools documentation, "The Bin Packing Problem": weights, capacity and the answer, from memory.
    const weights = [48, 30, 19, 36, 36, 27, 42, 42, 36, 24, 30];
    const bins = [0, 1, 2, 3, 4, 5];
    const at = (item: number, bin: number) => `x${item}_${bin}`;
    const answer = await solve({
      minimise: sum(bins.map((bin) => `y${bin}`)),
      rows: [
        ...weights.map((_, item) => row(sum(bins.map((bin) => at(item, bin))), '=', 1)),
        ...bins.map((bin) =>
          row([...weights.map((w, item) => term(at(item, bin), w)), term(`y${bin}`, -100)], '<=', 0),
        ),
      ],
      ...yesOrNo([...bins.map((bin) => `y${bin}`), ...weights.flatMap((_, item) => bins.map((bin) => at(item, bin)))]),
    });
    expect(answer.status === 'best' && Math.round(answer.value)).toBe(4);
  });

  it('fills a knapsack of 165 with a value of 309', async () => {
    // Burkardt, KNAPSACK_01 data sets, P01 (Florida State University): weights, profits, optimum, from memory.
    const weights = [23, 31, 29, 44, 53, 38, 63, 85, 89, 82];
    const profits = [92, 57, 49, 68, 60, 43, 67, 84, 87, 72];
    const names = weights.map((_, nr) => `x${nr}`);
    const answer = await solve({
      minimise: profits.map((profit, nr) => term(`x${nr}`, -profit)),
      rows: [
        row(
          weights.map((weight, nr) => term(`x${nr}`, weight)),
          '<=',
          165,
        ),
      ],
      ...yesOrNo(names),
    });
    expect(answer.status === 'best' && Math.round(answer.value)).toBe(-309);
  });

  it('says of a programme that cannot be met that it is impossible', async () => {
    const answer = await solve({ minimise: [], rows: [row([term('x', 1)], '>=', 2), row([term('x', 1)], '<=', 1)] });
    expect(answer).toEqual({ status: 'impossible' });
  });
});
