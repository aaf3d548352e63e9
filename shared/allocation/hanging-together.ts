import type { AllocationAsk } from '@/shared/allocation/allocation-ask';
import { batchesOf } from '@/shared/allocation/batches-of';
import { layOutProblems } from '@/shared/allocation/lay-out-problems';
import { surfacesOf } from '@/shared/allocation/surfaces-of';

/**
 * The ask with only those needs that hang together with one of them: through containers that both could draw from, through
 * batches and through surfaces. All containers stay, so that every measure of it reads like one of the whole.
 */
export function hangingTogether(ask: AllocationAsk, needId: string): AllocationAsk {
  const groups = [
    ...layOutProblems(ask).map(({ needs }) => needs.map(({ need }) => need.id)),
    ...[...batchesOf(ask.needs).map(({ needs }) => needs), ...surfacesOf(ask.needs)].map((members) =>
      members.flatMap((at) => ask.needs[at]?.id ?? []),
    ),
  ];
  const ids = new Set([needId]);
  for (let before = 0; before < ids.size; ) {
    before = ids.size;
    for (const group of groups) if (group.some((id) => ids.has(id))) for (const id of group) ids.add(id);
  }
  return { ...ask, needs: ask.needs.filter(({ id }) => ids.has(id)) };
}
