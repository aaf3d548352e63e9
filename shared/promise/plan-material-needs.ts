import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { chooseContainers } from '@/shared/promise/choose-containers';
import { heldElsewhere } from '@/shared/promise/held-elsewhere';
import { inUnit } from '@/shared/promise/in-unit';
import { lotsOnSurfaces, surfaceOf } from '@/shared/promise/lots-on-surfaces';
import type { Coming, MaterialNeed, NeedStanding, OnHand, Part } from '@/shared/promise/material-need';
import { takeComing } from '@/shared/promise/take-coming';
import { splitCost, takePart } from '@/shared/promise/take-part';
import { assess } from '@/shared/shelf-life/assess';
import { suggestContainers } from '@/shared/shelf-life/suggest-containers';

/**
 * How each need stands against what is on hand, promised and ordered, the earliest day first: what one takes the next no
 * longer has. Promises stay where they are; what a job was promised for no need in particular goes to its needs in the
 * order of their days. What is used has to be good to the day that counts (`goodTo`), which may be later than the day it is
 * needed on. What is free is taken first to expire first, from one lot for one surface where any lot can give it: the lot
 * that is on it or promised to it already, where there is one. It goes on from what the job takes from already
 * (`chooseContainers`). Orders count from the day they are due, not before today.
 *
 * Example: 2 kg needed, 0.5 kg promised to it, 1 kg free, 5 kg due the day after it → reserved 0.5, have 1, short 0.5.
 */
export function planMaterialNeeds(
  needs: readonly MaterialNeed[],
  stock: readonly OnHand[],
  coming: readonly Coming[],
  today: CalendarDate,
): NeedStanding[] {
  const order = [...needs].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.id - b.id));
  const shelf = stock.map((container) => ({
    container,
    free: container.left - container.promised.reduce((sum, each) => sum + each.amount, 0),
    freeCost: container.shares?.free,
    promises: container.promised.map((promise, nr) => ({
      ...promise,
      left: promise.amount,
      cost: container.shares?.promises[nr],
    })),
  }));
  const orders = coming.filter((each) => each.on >= today).map((each) => ({ ...each, left: each.amount }));
  const begun = new Map<string, ReadonlySet<string>>();
  const mine = new Map<number, Part[]>();

  // Promises made for a need are its own; the loose ones of its job fill up what is left, earliest day first.
  const known = new Set(needs.map((need) => need.id));
  for (const loose of [false, true]) {
    for (const need of order) {
      for (const { container, promises } of shelf.filter(matches(need))) {
        for (const promise of promises) {
          const isLoose = promise.needId === null || !known.has(promise.needId);
          if (promise.jobId !== need.jobId || (loose ? !isLoose : promise.needId !== need.id)) continue;
          const held = sumOf(mine.get(need.id) ?? []);
          const wants = Math.max(0, need.amount - need.used - held);
          const part = takePart(container, promise, need, { wants, most: loose ? wants : Number.MAX_SAFE_INTEGER });
          if (part) mine.set(need.id, [...(mine.get(need.id) ?? []), part]);
        }
      }
    }
  }

  const own = order.map((need) => {
    const [on, goodTo] = [need.on, need.goodTo ?? need.on].map((day) => (day < today ? today : day));
    const dayOfUse = goodTo ?? today;
    const matching = shelf.filter(matches(need));
    const judged = new Map(
      matching.map(({ container }) => [
        container.stockId,
        assess({ ...container.candidate, purpose: need.purpose, dayOfUse, today }),
      ]),
    );
    const isGood = (stockId: number) => {
      const verdict = judged.get(stockId);
      return (
        verdict !== undefined && verdict.word !== 'stop' && !verdict.reasons.some((each) => UNFIT.includes(each.code))
      );
    };
    const withDay = (part: Part): Part => ({ ...part, lastGoodDay: judged.get(part.stockId)?.governing?.lastGoodDay });
    const promised = (mine.get(need.id) ?? []).map(withDay);
    const reserved = promised.filter((part) => isGood(part.stockId));
    const failing = promised.filter((part) => !isGood(part.stockId));
    return { need, on: on ?? today, dayOfUse, matching, judged, isGood, reserved, failing };
  });
  const lotOf = (stockId: number) => stock.find((container) => container.stockId === stockId)?.candidate.lot.id ?? '';
  const lots = lotsOnSurfaces(own.map((each) => ({ ...each, lots: each.reserved.map((part) => lotOf(part.stockId)) })));

  const found = new Map<number, NeedStanding>();
  for (const { need, on, dayOfUse, matching, judged, isGood, reserved, failing } of own) {
    let missing = Math.max(0, need.amount - need.used - sumOf(reserved));
    const surface = surfaceOf(need);
    const onSurface = new Set(lots.get(surface));
    const [lotInUse] = onSurface;
    const counted = matching.flatMap((each) => {
      const { container, free } = each;
      const left = inUnit(free, container.unit, need.unit, container.density, 'down');
      return left === undefined || left <= 0 ? [] : [{ each, left }];
    });
    const have: Part[] = [];
    let lotsMixed = false;
    if (missing > 0 && counted.length > 0) {
      const ask = {
        candidates: counted.map(({ each: { container }, left }) => ({
          ...container.candidate,
          container: { ...container.candidate.container, left },
        })),
        dayOfUse,
        today,
        purpose: need.purpose,
        colourShows: need.surface !== '' || counted.some(({ each }) => each.container.candidate.policy.colourShows),
      };
      // The lot is chosen for all that goes on the surface, not for its first layer alone.
      const whole = need.surface === '' ? missing : Math.max(missing, allOf(order, need, mine));
      const lotId = lotInUse ?? lotFor(suggestContainers({ ...ask, asked: whole }));
      const thing = `${need.jobId}/${[...need.productIds].sort().join()}`;
      const taps = begun.get(thing) ?? new Set(reserved.map((part) => String(part.stockId)));
      const simplyGood = new Set([...taps].filter((id) => judged.get(Number(id))?.word === 'use'));
      const suggestion = chooseContainers(
        { ...ask, asked: missing, lotId, lotInUse: lotInUse !== undefined },
        simplyGood,
      );
      begun.set(thing, new Set([...taps, ...suggestion.containers.map((take) => take.containerId)]));
      lotsMixed = suggestion.why === 'lots-mixed';
      for (const take of suggestion.containers) {
        const at = counted.find(({ each }) => String(each.container.stockId) === take.containerId)?.each;
        if (!at) continue;
        const stockAmount = Math.min(
          at.free,
          inUnit(take.take, need.unit, at.container.unit, at.container.density, 'up') ?? 0,
        );
        const [cost, rest] = splitCost(at.freeCost, stockAmount, at.free - stockAmount);
        at.free -= stockAmount;
        at.freeCost = rest;
        missing -= take.take;
        have.push({
          stockId: at.container.stockId,
          label: at.container.label,
          amount: take.take,
          stockAmount,
          cost,
          lastGoodDay: take.lastGoodDay,
        });
      }
    }
    for (const part of have) onSurface.add(lotOf(part.stockId));
    lots.set(surface, [...onSurface]);
    lotsMixed ||= need.surface !== '' && onSurface.size > 1 && reserved.length + have.length > 0;

    const elsewhere = heldElsewhere(
      need,
      matching.map((each) => each.container).filter((container) => isGood(container.stockId)),
    );

    const { arriving, rest } = takeComing({ ...need, on }, missing, orders);
    found.set(need.id, {
      needId: need.id,
      reserved,
      failing,
      have,
      elsewhere,
      arriving,
      short: rest,
      lotsMixed,
      uncounted: matching
        .filter(
          ({ container, free }) =>
            free > 0 && inUnit(1, container.unit, need.unit, container.density, 'up') === undefined,
        )
        .map(({ container }) => container.label),
    });
  }
  return needs.flatMap((need) => found.get(need.id) ?? []);
}

/** A container with one of these does not reach the day, whatever its word for an own piece or a test. */
const UNFIT: readonly string[] = ['past-limit', 'date-unknown', 'inspection-failed'];

const matches =
  (need: MaterialNeed) =>
  ({ container }: { container: OnHand }) =>
    need.productIds.includes(container.productId);

const sumOf = (parts: readonly Part[]) => parts.reduce((sum, part) => sum + part.amount, 0);

/** What all needs of one surface of one job still want of the same products, this one among them. */
function allOf(order: readonly MaterialNeed[], need: MaterialNeed, mine: ReadonlyMap<number, Part[]>): number {
  return order
    .filter(
      (each) =>
        each.jobId === need.jobId &&
        each.surface === need.surface &&
        each.unit === need.unit &&
        each.productIds.join() === need.productIds.join(),
    )
    .reduce((sum, each) => sum + Math.max(0, each.amount - each.used - sumOf(mine.get(each.id) ?? [])), 0);
}

function lotFor(suggestion: ReturnType<typeof suggestContainers>): string | undefined {
  return suggestion.why === 'one-lot' ? suggestion.containers[0]?.lotId : undefined;
}
