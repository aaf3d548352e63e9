import type { Program, ProgramAnswer, Term } from '@/shared/allocation/program';

/** The values of a solution, by the names of `buildProgram`. */
export type Values = ReadonlyMap<string, number>;

/** Solves one programme of a problem, from values that solve it already where there are any. */
export type AskProgram = (program: Program, from: Values | undefined) => Promise<ProgramAnswer>;

/** The value of a sum of variables. */
export function sumOf(terms: readonly Term[], values: Values): number {
  return terms.reduce((sum, { name, times }) => sum + times * (values.get(name) ?? 0), 0);
}

/** What a solver's sums are off by, at most: its tolerances, and the rounding of a double. */
const slack = (value: number) => 1e-3 + 1e-11 * Math.abs(value);

/** The least whole number that is not below a bound, and the greatest that is not above a value. */
export const leastWhole = (bound: number) => Math.ceil(bound - slack(bound)) + 0;
export const greatestWhole = (value: number) => Math.floor(value + slack(value)) + 0;
