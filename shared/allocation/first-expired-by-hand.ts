import type { AllocationAsk, AllocationContainer, Take } from '@/shared/allocation/allocation-ask';
import { barToUse } from '@/shared/allocation/bar-to-use';
import { batchesOf } from '@/shared/allocation/batches-of';
import { dayOfNeed } from '@/shared/allocation/day-of-need';
import { freeOf } from '@/shared/allocation/free-of';
import { goodUntil } from '@/shared/allocation/good-until';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { exactInteger } from '@/shared/units/exact-integer';
import type { StockUnit } from '@/shared/units/stock-unit';

type Shelf = AllocationContainer & { room: number; end: CalendarDate | undefined; shut: boolean };

/**
 * What a careful person does at the shelf: need by need in the order of their days, each from the container that expires
 * first, opened before sealed, the fuller first, then by label (the order of `suggestContainers`). It looks at no later
 * need and at no lot, and what it took it does not put back. The system or set of a batch is that of the first container
 * it takes for it. It breaks no rule; it is what an allocation has to be better than, and what is left when a solver runs
 * out of time. FEFO: WHO good distribution practices for medical products; 21 CFR 211.150(a).
 */
export function firstExpiredByHand(ask: AllocationAsk): readonly Take[] {
  const { needs, today } = ask;
  const batchAt = new Map(batchesOf(needs).flatMap((batch) => batch.needs.map((at) => [at, batch] as const)));
  const barred = new Set((ask.barred ?? []).map(({ needId, containerId }) => JSON.stringify([needId, containerId])));
  const shelf = ask.containers.map(
    (one): Shelf => ({ ...one, room: freeOf(one), end: one.lastGoodDay, shut: one.sealed }),
  );
  const choices = new Map<object, string>();
  const takes: Take[] = [];
  const byDay = [...needs.entries()].sort(([a, one], [b, other]) => compare(one.on, other.on) || a - b);
  for (const [at, need] of byDay) {
    const batch = batchAt.get(at);
    const day = dayOfNeed(need, today);
    let missing: number = need.amount;
    const offered = shelf.filter(
      (one) => !barToUse(need, one, { today, batch }) && !barred.has(JSON.stringify([need.id, one.id])),
    );
    for (const one of offered.sort(inOrder)) {
      if (missing === 0) break;
      const choice = JSON.stringify([one.systemKey, batch?.setDemanded ? one.setId : undefined]);
      if (one.room === 0 || (one.end && one.end < day)) continue;
      if (batch && (choices.get(batch) ?? choice) !== choice) continue;
      if (batch) choices.set(batch, choice);
      if (one.shut) {
        one.end = goodUntil(one, day);
        one.shut = false;
      }
      const amount = Math.min(one.room, missing);
      takes.push({ needId: need.id, containerId: one.id, amount: exactInteger<StockUnit>(amount) });
      one.room -= amount;
      missing -= amount;
    }
  }
  return takes;
}

function inOrder(a: Shelf, b: Shelf): number {
  return (
    compare(a.end ?? '9999', b.end ?? '9999') ||
    Number(a.shut) - Number(b.shut) ||
    b.room - a.room ||
    compare(a.label, b.label) ||
    compare(a.id, b.id)
  );
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
