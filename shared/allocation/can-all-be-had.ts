import type { AllocationAsk } from '@/shared/allocation/allocation-ask';
import { buildProgram } from '@/shared/allocation/build-program';
import { enoughInAll } from '@/shared/allocation/enough-in-all';
import { layOutProblems } from '@/shared/allocation/lay-out-problems';
import type { SolveProgram } from '@/shared/allocation/program';
import { writeProgram } from '@/shared/allocation/write-program';

/**
 * Whether every need can be met together, whatever the lots, the waste and the opened containers: `unknown` when time ran
 * out. What no container could give even if systems, sets and opened lives did not matter is found without a solver.
 */
export async function canAllBeHad(
  ask: AllocationAsk,
  solve: SolveProgram,
  { timeLimitSeconds }: { readonly timeLimitSeconds: number },
): Promise<'yes' | 'no' | 'unknown'> {
  const problems = layOutProblems(ask);
  const served = problems.reduce((count, { needs }) => count + needs.length, 0);
  if (served < ask.needs.length || !problems.every(enoughInAll)) return 'no';
  let known = true;
  for (const problem of problems) {
    const program = buildProgram(problem, { of: 'order' }, { short: new Map(), openDays: new Set() }, []);
    const answer = await solve(writeProgram({ ...program, minimise: [] }), { timeLimitSeconds, closeEnough: 0.5 });
    if (answer.status === 'impossible') return 'no';
    if (answer.status === 'out-of-time') known = false;
  }
  return known ? 'yes' : 'unknown';
}
