import { buildProgram, type Settled } from '@/shared/allocation/build-program';
import type { Problem } from '@/shared/allocation/problem';
import { type AskProgram, greatestWhole, leastWhole, sumOf, type Values } from '@/shared/allocation/whole-values';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/**
 * The least shortage, in steps, day by day: the earliest day's is made least, then, with that held, the next one's. A day
 * that is not short in what stands already is not solved for. `values` is undefined when time ran out.
 */
export async function settleShort(
  problem: Problem,
  ask: AskProgram,
): Promise<{
  readonly short: ReadonlyMap<CalendarDate, number>;
  readonly bounds: ReadonlyMap<CalendarDate, number>;
  readonly values: Values | undefined;
}> {
  const days = [...new Set(problem.needs.map(({ day }) => day))].sort();
  const short = new Map<CalendarDate, number>();
  const bounds = new Map<CalendarDate, number>();
  const openDays = new Set(days);
  let values: Values | undefined;
  for (const day of days) {
    const settled: Settled = { short, openDays };
    const program = buildProgram(problem, { of: 'short', on: day }, settled, []);
    if (!values || Math.abs(sumOf(program.minimise, values)) > 1e-4) {
      const answer = await ask(program, values);
      if (answer.status === 'impossible') throw new Error('Every need can be short.');
      const least = Math.max(0, leastWhole(answer.bound));
      bounds.set(day, least);
      if (answer.status === 'out-of-time') return { short, bounds, values: undefined };
      values = answer.values;
      const value = Math.max(least, greatestWhole(answer.value));
      if (value > 0) short.set(day, value);
    }
    openDays.delete(day);
  }
  return { short, bounds, values };
}
