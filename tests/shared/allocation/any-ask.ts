import type { AllocationAsk, AllocationContainer, AllocationNeed } from '@/shared/allocation/allocation-ask';
import { addDays } from '@/shared/calendar/add-days';
import { milligrams } from '@/shared/units/stock-unit';
import { day } from '../../support/day';

export const TODAY = day('2026-12-01');

/** A plain need and a plain container, to change what a test is about. */
export function needOf(changes: Partial<AllocationNeed> & { readonly id: string }): AllocationNeed {
  return {
    jobName: `Job ${changes.id}`,
    what: `lift ${changes.id}`,
    on: day('2026-12-10'),
    unit: 'mg',
    amount: milligrams(1000),
    productIds: ['resin'],
    surface: `top ${changes.id}`,
    ...changes,
  };
}

export function containerOf(changes: Partial<AllocationContainer> & { readonly id: string }): AllocationContainer {
  return {
    label: `T-${changes.id}`,
    productId: 'resin',
    unit: 'mg',
    lotId: 'L1',
    lotWords: `lot ${changes.lotId ?? 'L1'}`,
    left: milligrams(1000),
    sealed: false,
    held: false,
    place: 'shelf 1',
    ...changes,
  };
}

export function askOf(
  needs: readonly AllocationNeed[],
  containers: readonly AllocationContainer[],
  changes: Partial<AllocationAsk> = {},
): AllocationAsk {
  return { today: TODAY, needs, containers, wasteUntil: day('2026-12-31'), ...changes };
}

/** Numbers from 0 to 1 that are the same in every run (mulberry32, public domain). */
export function numbersFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/**
 * A small ask that has some of everything: two parts, two systems, sets, lots, holds, promises, limits, opened lives, days
 * to be good to that come after the day of use, and surfaces that are of a lot or two already.
 */
export function smallAsk(seed: number): AllocationAsk {
  const next = numbersFrom(seed);
  const upTo = (most: number) => Math.floor(next() * (most + 1));
  const oneOf = <T>(...choices: readonly T[]): T => choices[upTo(choices.length - 1)] ?? (choices[0] as T);
  const unit = oneOf(1, 7, 250);
  const paired = next() < 0.5;
  const needs: AllocationNeed[] = Array.from({ length: 2 + upTo(1) }, (_, nr) => {
    const part = paired ? (nr % 2 ? 'B' : 'A') : undefined;
    const on = addDays(TODAY, upTo(6) - 1);
    return needOf({
      id: `n${nr}`,
      on,
      goodTo: next() < 0.3 ? addDays(on, upTo(4)) : undefined,
      amount: milligrams((1 + upTo(2)) * unit),
      surface: oneOf('top', 'top', 'leg'),
      part,
      productIds: part ? oneOf([`x${part}`], [`x${part}`, `y${part}`]) : oneOf(['oil'], ['oil', 'wax']),
      pairsWith: paired && nr === 1 ? 'n0' : undefined,
      setDemanded: paired && next() < 0.3,
    });
  });
  const containers: AllocationContainer[] = Array.from({ length: 2 + upTo(2) }, (_, nr) => {
    const part = paired ? (nr % 2 ? 'B' : 'A') : undefined;
    const system = next() < 0.7 ? 'x' : 'y';
    const sealed = next() < 0.6;
    return containerOf({
      id: `c${nr}`,
      productId: part ? `${system}${part}` : oneOf('oil', 'oil', 'wax'),
      systemKey: part ? system : undefined,
      part,
      lotId: oneOf('L1', 'L2'),
      setId: next() < 0.7 ? oneOf('S1', 'S2') : undefined,
      left: milligrams((1 + upTo(2)) * unit),
      sealed,
      openedLife: sealed && next() < 0.6 ? { count: upTo(3), unit: 'day' } : undefined,
      lastGoodDay: next() < 0.7 ? addDays(TODAY, upTo(8) - 1) : undefined,
      held: next() < 0.05,
      promisedTo: next() < 0.1 ? [{ jobName: 'Promised', amount: milligrams(unit) }] : undefined,
      price: seed % 2 ? 100 * (1 + upTo(3)) : undefined,
    });
  });
  const used = needs.flatMap(({ surface, part, productIds }) =>
    next() < 0.8
      ? [
          {
            surface,
            part,
            productId: oneOf(...productIds, ...productIds, 'another'),
            lotId: oneOf('L1', 'L2', 'L2', 'L3'),
          },
        ]
      : [],
  );
  return askOf(needs, containers, { wasteUntil: addDays(TODAY, upTo(9)), used });
}
