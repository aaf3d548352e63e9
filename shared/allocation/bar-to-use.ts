import type { AllocationContainer, AllocationNeed } from '@/shared/allocation/allocation-ask';
import type { Batch } from '@/shared/allocation/batches-of';
import { judgedDayOfNeed } from '@/shared/allocation/day-of-need';
import { freeOf } from '@/shared/allocation/free-of';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

export type BarToUse =
  | { readonly code: 'other-product' | 'other-system' | 'no-set' | 'held' | 'empty' }
  | { readonly code: 'past-limit'; readonly lastGoodDay: CalendarDate }
  | { readonly code: 'promised'; readonly jobNames: readonly string[] };

/**
 * Why a container cannot serve a need by itself, whatever the others do; undefined when it can. What stands first here is
 * named first: another product, unit or part; another system, or none where one is wanted; no set where one is demanded;
 * held; empty; its limit before the day it has to be good to (the limit's own day is good); all of it promised.
 */
export function barToUse(
  need: AllocationNeed,
  container: AllocationContainer,
  { today, batch }: { readonly today: CalendarDate; readonly batch: Batch | undefined },
): BarToUse | undefined {
  if (!need.productIds.includes(container.productId) || need.unit !== container.unit) return { code: 'other-product' };
  if (need.part && need.part !== container.part) return { code: 'other-product' };
  if (need.systemKey !== undefined && need.systemKey !== container.systemKey) return { code: 'other-system' };
  if (batch && batch.needs.length > 1 && container.systemKey === undefined) return { code: 'other-system' };
  if (batch?.setDemanded && container.setId === undefined) return { code: 'no-set' };
  if (container.held) return { code: 'held' };
  if (container.left === 0) return { code: 'empty' };
  const { lastGoodDay, promisedTo = [] } = container;
  if (lastGoodDay && lastGoodDay < judgedDayOfNeed(need, today)) return { code: 'past-limit', lastGoodDay };
  if (freeOf(container) === 0) return { code: 'promised', jobNames: promisedTo.map(({ jobName }) => jobName) };
  return undefined;
}
