import type { AllocationAsk, AllocationContainer, Take } from '@/shared/allocation/allocation-ask';
import { barToUse } from '@/shared/allocation/bar-to-use';
import { batchesOf } from '@/shared/allocation/batches-of';
import { dayOfNeed } from '@/shared/allocation/day-of-need';
import { freeOf } from '@/shared/allocation/free-of';
import { surfacesOf } from '@/shared/allocation/surfaces-of';
import { usedLots } from '@/shared/allocation/used-lots';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** One reason why a container was allotted to a need, with the facts it rests on. */
export type TakeReason =
  | { readonly code: 'only-one-that-can' | 'open-already' | 'emptied' | 'lots-mixed' | 'lot-on-surface' }
  | { readonly code: 'first-to-expire'; readonly lastGoodDay: CalendarDate; readonly next: string | undefined }
  /** Others would expire sooner, but all that is free in them is allotted to these needs. */
  | {
      readonly code: 'sooner-ones-are-taken';
      readonly containerIds: readonly string[];
      readonly needIds: readonly string[];
    }
  | { readonly code: 'would-be-wasted'; readonly lastGoodDay: CalendarDate }
  | { readonly code: 'opened-here'; readonly on: CalendarDate }
  | { readonly code: 'opened-before'; readonly on: CalendarDate; readonly needId: string }
  | { readonly code: 'one-lot' | 'one-system' | 'one-set'; readonly withNeedIds: readonly string[] };

/**
 * Why a container is allotted to a need, read off the allocation: every reason that holds, the plainest first. It says what
 * the choice rests on; what another choice would cost is `explainChoice`. Throws when the take is not of the ask.
 */
export function reasonsForTake(ask: AllocationAsk, takes: readonly Take[], take: Take): readonly TakeReason[] {
  const { needs, containers, today } = ask;
  const at = needs.findIndex(({ id }) => id === take.needId);
  const [need, container] = [needs[at], containers.find(({ id }) => id === take.containerId)];
  if (!need || !container) throw new RangeError(`A take of what is not there: ${take.needId}, ${take.containerId}`);
  const needOf = new Map(needs.map((one) => [one.id, one]));
  const dayOf = (needId: string) => {
    const one = needOf.get(needId);
    return one ? dayOfNeed(one, today) : today;
  };
  const batch = batchesOf(needs).find((one) => one.needs.includes(at));
  const others = containers.filter(
    (one) =>
      one !== container &&
      !barToUse(need, one, { today, batch }) &&
      !ask.barred?.some((bar) => bar.needId === need.id && bar.containerId === one.id),
  );
  const endOf = (one: AllocationContainer) => one.lastGoodDay ?? '9999';
  const freeAfter = (one: AllocationContainer) =>
    takes.reduce(
      (left, { containerId, amount }) => left - (containerId === one.id ? amount : 0),
      freeOf(one) as number,
    );

  const reasons: TakeReason[] = [];
  if (others.length === 0) reasons.push({ code: 'only-one-that-can' });
  const sooner = others.filter((one) => endOf(one) < endOf(container));
  const next = [...others].sort((a, b) => (endOf(a) < endOf(b) ? -1 : 1))[0];
  if (others.length && container.lastGoodDay && sooner.length === 0) {
    reasons.push({ code: 'first-to-expire', lastGoodDay: container.lastGoodDay, next: next?.id });
  }
  if (sooner.length && sooner.every((one) => freeAfter(one) === 0)) {
    const containerIds = sooner.map(({ id }) => id);
    const needIds = [...new Set(takes.flatMap((one) => (containerIds.includes(one.containerId) ? [one.needId] : [])))];
    reasons.push({ code: 'sooner-ones-are-taken', containerIds, needIds });
  }
  if (container.lastGoodDay && container.lastGoodDay <= ask.wasteUntil) {
    reasons.push({ code: 'would-be-wasted', lastGoodDay: container.lastGoodDay });
  }
  if (!container.sealed) reasons.push({ code: 'open-already' });
  else {
    const uses = takes.filter(({ containerId }) => containerId === container.id);
    const first = uses.reduce((one, other) => (dayOf(other.needId) < dayOf(one.needId) ? other : one), take);
    const on = dayOf(first.needId);
    if (on === dayOf(need.id)) reasons.push({ code: 'opened-here', on });
    else reasons.push({ code: 'opened-before', on, needId: first.needId });
  }
  reasons.push(...togetherness());
  if (freeAfter(container) === 0) reasons.push({ code: 'emptied' });
  return reasons;

  function togetherness(): TakeReason[] {
    const served = (ids: readonly string[]) =>
      containers.filter((one) =>
        takes.some(({ needId, containerId }) => containerId === one.id && ids.includes(needId)),
      );
    const idsOf = (members: readonly number[]) => members.flatMap((nr) => (nr === at ? [] : (needs[nr]?.id ?? [])));
    const surface = surfacesOf(needs).find((members) => members.includes(at)) ?? [];
    const onSurface = idsOf(surface);
    const already = usedLots(ask, surface);
    const lots = new Set([...already, ...served([take.needId, ...onSurface]).map(({ lotId }) => lotId)]);
    const mixedWith = idsOf(batch?.needs ?? []);
    return [
      ...(lots.size > 1 ? [{ code: 'lots-mixed' as const }] : []),
      ...(already.includes(container?.lotId ?? '') ? [{ code: 'lot-on-surface' as const }] : []),
      ...(lots.size === 1 && served(onSurface).length ? [{ code: 'one-lot' as const, withNeedIds: onSurface }] : []),
      ...(mixedWith.length && !batch?.setDemanded ? [{ code: 'one-system' as const, withNeedIds: mixedWith }] : []),
      ...(batch?.setDemanded ? [{ code: 'one-set' as const, withNeedIds: mixedWith }] : []),
    ];
  }
}
