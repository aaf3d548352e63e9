import { exactFlow } from '@/shared/allocation/exact-flow';
import type { Problem } from '@/shared/allocation/problem';

/**
 * Whether there is enough when neither systems, sets nor opened lives are asked about, only products and limits. Where there
 * is not, there is a shortage for certain; where there is, there may be one yet.
 */
export function enoughInAll(problem: Problem): boolean {
  const { slots, groups, surfaces, batches } = problem;
  const flow = exactFlow(problem, {
    opened: slots.map(({ group }) => groups[group]?.containers.length ?? 0),
    choices: batches.map(() => undefined),
    lots: surfaces.map(({ lots }) => new Set(lots)),
    short: new Map(),
  });
  return flow !== undefined;
}
