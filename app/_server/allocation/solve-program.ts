import { setImmediate } from 'node:timers/promises';
import type { Highs, Model } from 'highs';
import type { ProgramAnswer, SolveProgram } from '@/shared/allocation/program';

let loaded: Promise<Highs> | undefined;

/**
 * Tolerances far below one step of stock, and no gap but the one that is asked for. Its searches for a first solution are
 * off: each solve begins from the last one's, and proving is what takes the time (measured by `tests/bench/allocate.ts`).
 */
const OPTIONS = {
  output_flag: false,
  mip_rel_gap: 0,
  mip_feasibility_tolerance: 1e-9,
  primal_feasibility_tolerance: 1e-9,
  mip_heuristic_run_feasibility_jump: false,
  mip_heuristic_run_root_reduced_cost: false,
  mip_heuristic_run_rins: false,
  mip_heuristic_run_rens: false,
};

/**
 * Solves a programme with HiGHS. Its WebAssembly is loaded with the first programme and kept. A solve holds the process,
 * so whatever else is waiting is let through before each. A solution is called best only on the solver's own bound.
 */
export const solveProgram: SolveProgram = async (lpText, { timeLimitSeconds, closeEnough, from }) => {
  loaded ??= import('highs').then(({ default: load }) => load());
  const highs = await loaded;
  await setImmediate();
  const options = { ...OPTIONS, time_limit: timeLimitSeconds, mip_abs_gap: closeEnough };
  const answer = run(highs, lpText, options, from);
  // Rounding can make its simplifications contradict a solution that is known, or call one best and name no bound.
  const isDoubtful =
    answer.status === 'impossible' ? from !== undefined : answer.status === 'best' && !Number.isFinite(answer.bound);
  return isDoubtful ? run(highs, lpText, { ...options, presolve: 'off' }, undefined) : answer;
};

/** The same, with so many seconds for all the programmes of one question together. */
export function solveWithin(seconds: number): SolveProgram {
  const end = performance.now() + seconds * 1000;
  return (lpText, options) => {
    const left = Math.max(0.01, (end - performance.now()) / 1000);
    return solveProgram(lpText, { ...options, timeLimitSeconds: Math.min(options.timeLimitSeconds, left) });
  };
}

function run(
  highs: Highs,
  lpText: string,
  options: Record<string, number | boolean | string>,
  from: ReadonlyMap<string, number> | undefined,
): ProgramAnswer {
  return highs.withModel({ format: 'lp', data: lpText }, (model) => {
    model.options.set(options);
    if (from) {
      const { numCols } = model.getDimensions();
      const colValue = Array.from({ length: numCols }, (_, at) => from.get(model.getColName(at)) ?? 0);
      model.setSolution({ colValue });
    }
    model.run();
    return read(highs, model);
  });
}

function read({ constants: { modelStatus, solutionStatus } }: Highs, model: Model): ProgramAnswer {
  const status = model.getModelStatus();
  if (status === modelStatus.infeasible) return { status: 'impossible' };
  const found = Number(model.info.get('primal_solution_status')) === solutionStatus.feasible;
  const value = model.getObjectiveValue();
  const isBest = status === modelStatus.optimal;
  const isMip = Number(model.info.get('mip_node_count')) >= 0;
  const bound = isMip ? Number(model.info.get('mip_dual_bound')) : isBest ? value : -Infinity;
  if (status === modelStatus.timeLimit && !found) return { status: 'out-of-time', bound };
  if (!found || (!isBest && status !== modelStatus.timeLimit)) {
    throw new Error(`The solver ended with status ${status} and no solution.`);
  }
  const { colValue } = model.getSolution();
  const values = new Map([...colValue].map((one, at) => [model.getColName(at), one]));
  return { status: isBest ? 'best' : 'some', value, bound, values };
}
