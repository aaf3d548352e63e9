import type { AllocationAsk, Take } from '@/shared/allocation/allocation-ask';
import { allocationBound } from '@/shared/allocation/allocation-bound';
import { checkAllocation } from '@/shared/allocation/check-allocation';
import { type AskError, checkAsk } from '@/shared/allocation/check-ask';
import { compareMeasures, type MeasureDifference } from '@/shared/allocation/compare-allocations';
import { firstExpiredByHand } from '@/shared/allocation/first-expired-by-hand';
import { layOutProblems } from '@/shared/allocation/lay-out-problems';
import { type Measures, measureAllocation } from '@/shared/allocation/measure-allocation';
import { type Opens, opensOf } from '@/shared/allocation/opens-of';
import type { Problem } from '@/shared/allocation/problem';
import type { SolveProgram } from '@/shared/allocation/program';
import { type Short, shortOf } from '@/shared/allocation/short-of';
import { type SolvedProblem, solveProblem } from '@/shared/allocation/solve-problem';
import { ok, type Result } from '@/shared/result/result';

export type Allocation = {
  /** `proved`: no allocation is better. `gap`: none was shown to be, and `gap` says where one might be. */
  readonly status: 'proved' | 'gap';
  /** The first measure that is not proved: what it is, and what it cannot be less than. */
  readonly gap:
    | { readonly measure: MeasureDifference['measure']; readonly value: number; readonly least: number }
    | undefined;
  /** Whether `proved` takes in the order of expiry. In a large workshop it is leaned to, not proved. */
  readonly orderIsProved: boolean;
  readonly takes: readonly Take[];
  readonly measures: Measures;
  /** What each need is short; those that are met are left out. */
  readonly short: readonly Short[];
  /** The sealed containers that are opened, and the day of their first use. */
  readonly opens: readonly Opens[];
  /** Programmes that were solved. */
  readonly solves: number;
};

/**
 * Allots the stock on hand to the needs of every open job at once, and proves it the best there is: least shortage, an
 * earlier day before a later; then the fewest surfaces of more than one lot, and the fewest changes of lot; then least
 * waste by expiry; then the fewest containers opened; of what is equal, what expires first goes first. Every need is met
 * to the small unit or reported short. Nothing is past its limit on the day it has to be good to (the limit's own day is
 * good), a lot that a surface is of already counts for that surface, a sealed
 * container's opened life counts from its first use, the parts of a batch are of one system and, where demanded, one set,
 * and no unit is taken twice. The time limit is for each programme. Fails with what is wrong with the ask; never because
 * there is too little.
 *
 * A lift of 3 kg on 10 Dec; an open tin of lot 1 with 1 kg, good to 15 Dec, and one of lot 2 with 4 kg that keeps: by hand
 * 1 kg of lot 1 and 2 kg of lot 2, which may show; here all 3 kg are of lot 2.
 */
export async function allocate(
  ask: AllocationAsk,
  solve: SolveProgram,
  { timeLimitSeconds }: { readonly timeLimitSeconds: number },
): Promise<Result<Allocation, AskError>> {
  const checked = checkAsk(ask);
  if (!checked.ok) return checked;
  const byHand = firstExpiredByHand(ask);
  const solved = await solveInTurns(layOutProblems(ask), (problem) => solveProblem(problem, solve, timeLimitSeconds));
  const found = solved.flatMap(({ problem, takes }) => {
    const ids = new Set(problem.needs.map(({ need }) => need.id));
    return takes ?? byHand.filter(({ needId }) => ids.has(needId));
  });
  const { bound, orderIsBound } = allocationBound(ask, solved);
  const bestByHand = compareMeasures(measureAllocation(ask, byHand), measureAllocation(ask, found)).better === 'one';
  const takes = inOrder(ask, bestByHand ? byHand : found);
  const faults = checkAllocation(ask, takes);
  if (faults.length) throw new Error(`An allocation broke a rule: ${JSON.stringify(faults.slice(0, 3))}`);

  const measures = measureAllocation(ask, takes);
  const [open] = compareMeasures(measures, bound).differences.filter(
    ({ measure }) => measure !== 'order' || orderIsBound,
  );
  const opens = opensOf(ask, takes);
  return ok({
    status: open ? 'gap' : 'proved',
    gap: open && { measure: open.measure, value: open.one, least: open.other },
    orderIsProved: orderIsBound && !open,
    takes,
    measures,
    short: shortOf(ask, takes),
    opens,
    solves: solved.reduce((sum, one) => sum + one.solves, 0),
  });
}

/** Every problem's first measure before any one's second: what time there is goes to what counts most. */
async function solveInTurns(
  problems: readonly Problem[],
  begin: (problem: Problem) => AsyncGenerator<void, SolvedProblem>,
): Promise<readonly (SolvedProblem & { readonly problem: Problem })[]> {
  const running = problems.map((problem) => ({ problem, turns: begin(problem), solved: [] as SolvedProblem[] }));
  for (let waiting = running; waiting.length; waiting = waiting.filter(({ solved }) => solved.length === 0)) {
    for (const one of waiting) {
      const turn = await one.turns.next();
      if (turn.done) one.solved.push(turn.value);
    }
  }
  return running.flatMap(({ problem, solved }) => solved.map((one) => ({ ...one, problem })));
}

function inOrder({ needs, containers }: AllocationAsk, takes: readonly Take[]): readonly Take[] {
  const needAt = new Map(needs.map(({ id }, nr) => [id, nr]));
  const containerAt = new Map(containers.map(({ id }, nr) => [id, nr]));
  const place = ({ needId, containerId }: Take) =>
    (needAt.get(needId) ?? 0) * containers.length + (containerAt.get(containerId) ?? 0);
  return [...takes].sort((a, b) => place(a) - place(b));
}
