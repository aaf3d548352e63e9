import type { AllocationAsk, Take } from '@/shared/allocation/allocation-ask';
import { dayOfNeed } from '@/shared/allocation/day-of-need';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** A sealed container that is opened, and the day of its first use. */
export type Opens = { readonly containerId: string; readonly on: CalendarDate };

/** The sealed containers that some takes open, in the order of the containers. */
export function opensOf({ needs, containers, today }: AllocationAsk, takes: readonly Take[]): readonly Opens[] {
  const days = new Map(needs.map((need) => [need.id, dayOfNeed(need, today)]));
  return containers.flatMap(({ id, sealed }) => {
    const uses = takes.flatMap((take) => (take.containerId === id ? (days.get(take.needId) ?? []) : []));
    const [on] = [...uses].sort();
    return sealed && on ? [{ containerId: id, on }] : [];
  });
}
