import type { Allocation } from '@/shared/allocation/allocate';
import type { AllocationAsk } from '@/shared/allocation/allocation-ask';
import { type SayAllocation, sayDay, sayNames, sayStock, sayWanted } from '@/shared/allocation/say-context';
import { MEASURE_NAMES } from '@/shared/allocation/say-difference';
import { unusedPastLimit } from '@/shared/allocation/unused-past-limit';

/**
 * An allocation in a few short sentences: what is short, what is of more than one lot, what will be wasted, what is
 * opened, and whether it is proved to be the best there is.
 */
export function sayAllocation(ask: AllocationAsk, allocation: Allocation, how: SayAllocation): readonly string[] {
  const { short, measures, takes, opens, status, gap } = allocation;
  const needOf = new Map(ask.needs.map((need) => [need.id, need]));
  const containerOf = new Map(ask.containers.map((one) => [one.id, one]));
  const shortages = short.flatMap(({ needId, amount }) => {
    const need = needOf.get(needId);
    return need
      ? [`${need.jobName}, ${need.what}: ${sayWanted(amount, need.unit, how)} short on ${sayDay(need.on, how)}.`]
      : [];
  });
  const wasted = unusedPastLimit(ask, takes).flatMap(({ containerId, amount, lastGoodDay }) => {
    const one = containerOf.get(containerId);
    return one ? [`${sayStock(amount, one.unit, how)} in ${one.label} (to ${sayDay(lastGoodDay, how)})`] : [];
  });
  const split = measures.splitSurfaces;
  return [
    ...(ask.needs.length === 0 ? ['Nothing is asked for.'] : shortages.length ? shortages : ['Everything can be had.']),
    ...(split === 1
      ? ['One surface is of more than one lot.']
      : split
        ? [`${split} surfaces are of more than one lot.`]
        : []),
    ...(wasted.length ? [`Will pass its limit unused: ${sayNames(wasted)}.`] : []),
    ...(opens.length
      ? [
          `To open: ${sayNames(opens.map(({ containerId, on }) => `${containerOf.get(containerId)?.label ?? ''} on ${sayDay(on, how)}`))}.`,
        ]
      : []),
    status === 'proved'
      ? 'Proved: no other way is better.'
      : `Time ran out: another way may be better in ${MEASURE_NAMES[gap?.measure ?? 'order']}.`,
  ];
}
