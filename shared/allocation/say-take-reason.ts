import type { AllocationAsk } from '@/shared/allocation/allocation-ask';
import type { TakeReason } from '@/shared/allocation/reasons-for-take';
import { type SayAllocation, sayDay, sayNames } from '@/shared/allocation/say-context';

/** A reason for a take in one short sentence: `Expires first, on 12 Dec; next is T-0013.` */
export function sayTakeReason(ask: AllocationAsk, reason: TakeReason, how: SayAllocation): string {
  const labels = (ids: readonly string[]) =>
    sayNames(ids.flatMap((id) => ask.containers.find((one) => one.id === id)?.label ?? []));
  const needs = (ids: readonly string[]) =>
    sayNames(ids.flatMap((id) => ask.needs.filter((one) => one.id === id).map((one) => `${one.jobName}, ${one.what}`)));
  switch (reason.code) {
    case 'only-one-that-can':
      return 'Nothing else on hand will do for it.';
    case 'first-to-expire':
      return `Expires first, on ${sayDay(reason.lastGoodDay, how)}${reason.next ? `; next is ${labels([reason.next])}` : ''}.`;
    case 'sooner-ones-are-taken':
      return `What expires sooner, ${labels(reason.containerIds)}, goes to ${needs(reason.needIds)}.`;
    case 'would-be-wasted':
      return `Unused, it would pass its limit on ${sayDay(reason.lastGoodDay, how)}.`;
    case 'open-already':
      return 'It is open already.';
    case 'opened-here':
      return `It is opened for this, on ${sayDay(reason.on, how)}.`;
    case 'opened-before':
      return `It is open by then: ${needs([reason.needId])} opens it on ${sayDay(reason.on, how)}.`;
    case 'one-lot':
      return `Keeps the surface to one lot, with ${needs(reason.withNeedIds)}.`;
    case 'lot-on-surface':
      return 'The surface is of this lot already, or that lot is promised to it.';
    case 'one-system':
      return `Of one system with ${needs(reason.withNeedIds)}.`;
    case 'one-set':
      return reason.withNeedIds.length ? `Of one set with ${needs(reason.withNeedIds)}.` : 'All of it is of one set.';
    case 'emptied':
      return 'It is used up.';
    case 'lots-mixed':
      return 'No one lot is enough for the surface: stir the lots together first, since the colour may differ.';
  }
}
