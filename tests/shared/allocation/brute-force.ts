import type { AllocationAsk, Take } from '@/shared/allocation/allocation-ask';
import { checkAllocation } from '@/shared/allocation/check-allocation';
import { addLife } from '@/shared/calendar/add-life';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { milligrams } from '@/shared/units/stock-unit';

/** What an allocation comes to, worked out again from the rules: short by day, splits, changes, waste, opened, order. */
export function vectorOf(ask: AllocationAsk, takes: readonly Take[]): readonly number[] {
  const dayOf = (on: CalendarDate) => (on < ask.today ? ask.today : on);
  const sum = (of: (take: Take) => boolean) => takes.reduce((total, take) => total + (of(take) ? take.amount : 0), 0);
  const days = [...new Set(ask.needs.map(({ on }) => dayOf(on)))].sort();
  const short = days.map((day) =>
    ask.needs
      .filter(({ on }) => dayOf(on) === day)
      .reduce((total, { id, amount }) => total + amount - sum((take) => take.needId === id), 0),
  );

  // One surface and part, with products in common, if only by way of another need: grown until nothing more joins.
  const left = [...ask.needs];
  const lotCounts: number[] = [];
  for (let first = left.shift(); first; first = left.shift()) {
    const members = [first];
    for (let at = 0; at < left.length; ) {
      const one = left[at];
      const joins = members.some(
        (member) =>
          one?.surface === member.surface &&
          one.part === member.part &&
          one.productIds.some((product) => member.productIds.includes(product)),
      );
      if (one && joins) {
        members.push(one);
        left.splice(at, 1);
        at = 0;
      } else at += 1;
    }
    const lots = takes
      .filter(({ needId }) => members.some(({ id }) => id === needId))
      .map(({ containerId }) => ask.containers.find(({ id }) => id === containerId)?.lotId);
    const already = (ask.used ?? []).filter(({ surface, part, productId }) =>
      members.some((one) => one.surface === surface && one.part === part && one.productIds.includes(productId)),
    );
    lotCounts.push(new Set([...lots, ...already.map(({ lotId }) => lotId)]).size);
  }

  const byValue = ask.containers.every(({ left: has, price }) => has === 0 || price !== undefined);
  const limits = [...new Set(ask.containers.map(({ lastGoodDay }) => lastGoodDay ?? '9999'))].sort();
  let [waste, opened, order] = [0, 0, 0];
  for (const one of ask.containers) {
    const uses = ask.needs.filter(({ id }) => takes.some((take) => take.needId === id && take.containerId === one.id));
    const first = uses.map(({ on }) => dayOf(on)).sort()[0];
    const drawn = sum(({ containerId }) => containerId === one.id);
    const free = Math.max(0, one.left - (one.promisedTo ?? []).reduce((total, { amount }) => total + amount, 0));
    if (one.sealed && first) opened += 1;
    order += drawn * limits.indexOf(one.lastGoodDay ?? '9999');
    const ends = [one.lastGoodDay, one.sealed && first && one.openedLife ? addLife(first, one.openedLife) : undefined];
    const end = ends.filter((each) => each !== undefined).sort()[0];
    const isLost = one.held || (one.lastGoodDay !== undefined && one.lastGoodDay < ask.today);
    if (!isLost && end && end <= ask.wasteUntil) waste += (free - drawn) * (byValue ? (one.price ?? 0) : 1);
  }
  const splits = lotCounts.filter((count) => count > 1).length;
  const changes = lotCounts.reduce((total, count) => total + Math.max(0, count - 1), 0);
  return [...short, splits, changes, waste, opened, order];
}

/** Negative when `a` is better: the first place in which they differ decides. */
export function compareVectors(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((value, nr) => value !== b[nr]);
  return at < 0 ? 0 : (a[at] ?? 0) - (b[at] ?? 0);
}

/** The best vector of all by trying every whole amount, in steps, of every container for every need. */
export function bruteForce(ask: AllocationAsk, step: number): readonly number[] {
  let best: readonly number[] | undefined;
  const pairs = ask.needs.flatMap((need) => ask.containers.map((container) => ({ need, container })));
  const roomOf = new Map(ask.containers.map(({ id, left }) => [id, left as number]));
  const wantedOf = new Map(ask.needs.map(({ id, amount }) => [id, amount as number]));
  // Alone, a take that breaks a rule breaks it in company too.
  const alone = pairs.filter(
    ({ need, container }) =>
      checkAllocation(ask, [{ needId: need.id, containerId: container.id, amount: milligrams(step) }]).length === 0,
  );
  const takes: Take[] = [];
  tryFrom(0);
  if (!best) throw new Error('Taking nothing breaks no rule.');
  return best;

  function tryFrom(at: number): void {
    const pair = alone[at];
    if (!pair) {
      const vector = vectorOf(ask, takes);
      if ((!best || compareVectors(vector, best) < 0) && checkAllocation(ask, takes).length === 0) best = vector;
      return;
    }
    const [needId, containerId] = [pair.need.id, pair.container.id];
    const [room, wanted] = [roomOf.get(containerId) ?? 0, wantedOf.get(needId) ?? 0];
    for (let amount = Math.min(room, wanted); amount >= 0; amount -= step) {
      roomOf.set(containerId, room - amount);
      wantedOf.set(needId, wanted - amount);
      if (amount > 0) takes.push({ needId, containerId, amount: milligrams(amount) });
      tryFrom(at + 1);
      if (amount > 0) takes.pop();
    }
    roomOf.set(containerId, room);
    wantedOf.set(needId, wanted);
  }
}
