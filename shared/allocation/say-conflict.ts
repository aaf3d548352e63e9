import type { AllocationAsk } from '@/shared/allocation/allocation-ask';
import type { Conflict, ConflictLimit } from '@/shared/allocation/find-conflicts';
import { type SayAllocation, sayDay, sayNames, sayStock, sayWanted } from '@/shared/allocation/say-context';
import { sayLife } from '@/shared/calendar/say-life';

/**
 * What cannot be had together and why, in short sentences: the needs, what they want against what there is, and each limit
 * with its container.
 */
export function sayConflict(ask: AllocationAsk, conflict: Conflict, how: SayAllocation): readonly string[] {
  const needs = conflict.needIds.flatMap((id) => ask.needs.find((one) => one.id === id) ?? []);
  const names = sayNames(needs.map(({ jobName, what, on }) => `${jobName}, ${what} (${sayDay(on, how)})`));
  return [
    needs.length === 1 ? `${names} cannot be had in full.` : `These cannot all be had: ${names}.`,
    ...conflict.totals.map(({ part, unit, wanted, free }) => {
      const of = part ? ` of part ${part}` : '';
      return `${sayWanted(wanted, unit, how)}${of} wanted, ${sayStock(free, unit, how)} free that could serve.`;
    }),
    ...conflict.limits.map((limit) => sayLimitOfConflict(ask, limit, how)),
    ...(conflict.isSmallest ? [] : ['Time ran out before the fewest needs were found.']),
  ];
}

function sayLimitOfConflict(ask: AllocationAsk, { containerId, bar }: ConflictLimit, how: SayAllocation): string {
  const label = ask.containers.find(({ id }) => id === containerId)?.label ?? containerId;
  switch (bar.code) {
    case 'past-limit':
      return `${label} is good to ${sayDay(bar.lastGoodDay, how)} only.`;
    case 'promised':
      return `${label} is promised to ${sayNames(bar.jobNames)}.`;
    case 'held':
      return `${label} is held.`;
    case 'empty':
      return `${label} is empty.`;
    case 'other-product':
      return `${label} is another product.`;
    case 'other-system':
      return `${label} is of another system.`;
    case 'no-set':
      return `${label} belongs to no set.`;
    case 'barred':
      return `${label} was ruled out.`;
    case 'one-system':
      return `${label} goes only with its own system.`;
    case 'one-set':
      return `${label} goes only with its own set.`;
    case 'opened-life':
      return `${label} keeps ${sayLife(bar.openedLife)} once opened.`;
  }
}
