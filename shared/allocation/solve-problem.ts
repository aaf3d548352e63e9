import type { Take } from '@/shared/allocation/allocation-ask';
import { buildProgram, type Settled, type Stage } from '@/shared/allocation/build-program';
import { enoughInAll } from '@/shared/allocation/enough-in-all';
import { exactFlow } from '@/shared/allocation/exact-flow';
import { lotRows } from '@/shared/allocation/lot-rows';
import type { Problem } from '@/shared/allocation/problem';
import type { Program, ProgramAnswer, SolveProgram } from '@/shared/allocation/program';
import { wasteAtRest } from '@/shared/allocation/program-sums';
import { readDecisions } from '@/shared/allocation/read-decisions';
import { settleShort } from '@/shared/allocation/settle-short';
import { takesFrom } from '@/shared/allocation/takes-from';
import { tidyOrder } from '@/shared/allocation/tidy-order';
import { type AskProgram, greatestWhole, leastWhole, sumOf, type Values } from '@/shared/allocation/whole-values';
import { writeProgram } from '@/shared/allocation/write-program';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** What no allocation of a problem can be better than, in steps; lots as `splitWeight` puts splits and changes together. */
export type Bounds = {
  readonly short: ReadonlyMap<CalendarDate, number>;
  readonly lots: number;
  readonly waste: number;
  readonly opened: number;
  /** Undefined where the order of expiry was leaned to and not proved. */
  readonly order: number | undefined;
};

export type SolvedProblem = {
  readonly takes: readonly Take[] | undefined;
  readonly bounds: Bounds;
  readonly solves: number;
};

/** Every measure is a whole number of steps: what is within half a step of the best is the best. */
const CLOSE_ENOUGH = 0.5;

/**
 * Up to so many whole variables the order of expiry is proved too. Past that it takes longer than all the rest together,
 * and settles only which of two allocations that are as good in everything else is the tidier.
 */
const PROVE_ORDER_UP_TO = 60;

/**
 * The best takes for a problem, measure by measure: each is made least while those before it are held at their least. One
 * solve for each rather than one with weights: shortage and waste are amounts of many digits, and weights that keep them
 * apart from counts would be greater than a double can tell from rounding. Splits and changes of lot are small counts, so
 * they do share a solve.
 *
 * No shortage and one lot to a surface are tried first, since they are the rule and nothing is better; only where they
 * cannot be are the least shortage, day by day, and the fewest lots sought. It stops between measures, so that problems
 * that share their time take turns. `takes` is undefined when time ran out before there was any.
 */
export async function* solveProblem(
  problem: Problem,
  solve: SolveProgram,
  timeLimitSeconds: number,
): AsyncGenerator<void, SolvedProblem> {
  let solves = 0;
  const implied = lotRows(problem);
  const build = (stage: Stage, from: Settled) => buildProgram(problem, stage, from, implied);
  const ask: AskProgram = (program, from) => {
    solves += 1;
    return solve(writeProgram(program), { timeLimitSeconds, closeEnough: CLOSE_ENOUGH, from });
  };

  const noneShort: Settled = { short: new Map(), openDays: new Set() };
  const { whole } = build({ of: 'order' }, { ...noneShort, lots: 0 });
  const large = whole.size > PROVE_ORDER_UP_TO;
  const rest = wasteAtRest(problem);
  const bounds: { -readonly [K in keyof Bounds]: Bounds[K] } = {
    short: new Map(),
    lots: 0,
    waste: 0,
    opened: 0,
    order: undefined,
  };
  let settled: Settled = { ...noneShort, lots: 0 };
  let values: Values | undefined;

  const state = yield* solveAll();
  const takes = values && takesOf(problem, values, settled.short);
  return { takes, bounds: state === 'out-of-time' ? { ...bounds, order: bounds.order ?? 0 } : bounds, solves };

  async function* solveAll(): AsyncGenerator<void, 'done' | 'out-of-time'> {
    const possible = enoughInAll(problem);
    let state = possible ? await settleWaste() : 'impossible';
    if (state === 'impossible') {
      state = await settleShortAndLots(possible);
      if (state === 'done') state = await settleWaste();
    }
    yield;
    if (state === 'done') state = await settleOpened();
    yield;
    if (state === 'done' && large)
      values = await tidyOrder(problem, values, (kept, from) =>
        ask(build({ of: 'order' }, { ...settled, kept }), from),
      );
    else if (state === 'done') state = await settleOrder();
    return state === 'done' ? 'done' : 'out-of-time';
  }

  async function settleShortAndLots(possible: boolean): Promise<'done' | 'out-of-time'> {
    settled = noneShort;
    let answer: ProgramAnswer = possible
      ? await ask(build({ of: 'lots' }, settled), undefined)
      : { status: 'impossible' };
    if (answer.status === 'impossible') {
      const found = await settleShort(problem, ask);
      bounds.short = found.bounds;
      values = found.values;
      if (!found.values) return 'out-of-time';
      settled = { ...noneShort, short: found.short };
      answer = await ask(build({ of: 'lots' }, settled), values);
    }
    if (answer.status === 'impossible') return 'out-of-time';
    bounds.lots = Math.max(0, leastWhole(answer.bound));
    if (answer.status === 'out-of-time') return 'out-of-time';
    values = answer.values;
    settled = { ...settled, lots: Math.max(bounds.lots, greatestWhole(answer.value)) };
    return 'done';
  }

  async function settleWaste(): Promise<State> {
    const found = await settle({ of: 'waste' }, (program, at) => sumOf(program.minimise, at), rest);
    bounds.waste = found.least;
    if (found.state === 'done') settled = { ...settled, waste: found.value };
    return found.state;
  }

  async function settleOpened(): Promise<State> {
    const found = await settle({ of: 'opened' }, openedOf);
    bounds.opened = found.least;
    if (found.state === 'done') settled = { ...settled, opened: found.value };
    return found.state;
  }

  async function settleOrder(): Promise<State> {
    const found = await settle({ of: 'order' }, (program, at) => sumOf(program.minimise, at));
    bounds.order = found.least;
    return found.state;
  }

  /** One measure made least. What stands at nought already cannot be better, and is not solved for. */
  async function settle(
    stage: Stage,
    measure: (program: Program, values: Values) => number,
    constant = 0,
  ): Promise<{ readonly state: State; readonly least: number; readonly value: number }> {
    const program = build(stage, settled);
    if (values && Math.abs(measure(program, values) + constant) < 1e-4) return { state: 'done', least: 0, value: 0 };
    const answer = await ask(program, values);
    if (answer.status === 'impossible') return { state: 'impossible', least: 0, value: 0 };
    const least = Math.max(0, leastWhole(answer.bound) + constant);
    if (answer.status === 'out-of-time') return { state: 'out-of-time', least, value: least };
    values = answer.values;
    return { state: 'done', least, value: Math.max(least, greatestWhole(measure(program, values)) + constant) };
  }
}

type State = 'done' | 'impossible' | 'out-of-time';

function takesOf(problem: Problem, values: Values, short: Settled['short']): readonly Take[] | undefined {
  const decisions = readDecisions(problem, values, short);
  const amounts = exactFlow(problem, decisions);
  return amounts && takesFrom(problem, amounts, decisions.opened);
}

function openedOf({ whole }: Program, values: Values): number {
  return [...whole].reduce((sum, name) => sum + (name.startsWith('k') ? Math.round(values.get(name) ?? 0) : 0), 0);
}
