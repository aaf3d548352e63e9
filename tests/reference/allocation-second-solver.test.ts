import solver from 'javascript-lp-solver';
import { describe, expect, it } from 'vitest';
import { solveProgram } from '@/app/_server/allocation/solve-program';
import { allocate } from '@/shared/allocation/allocate';
import type { AllocationAsk } from '@/shared/allocation/allocation-ask';
import { checkAllocation } from '@/shared/allocation/check-allocation';
import { dayOfNeed } from '@/shared/allocation/day-of-need';
import { addLife } from '@/shared/calendar/add-life';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { unwrap } from '@/shared/result/result';
import { milligrams } from '@/shared/units/stock-unit';
import { smallAsk } from '../shared/allocation/any-ask';
import { vectorOf } from '../shared/allocation/brute-force';

type Bound = { min?: number; max?: number };
type Sum = Map<string, number>;

/**
 * The same question put in another way to another solver (javascript-lp-solver, its own branch and bound): container by
 * container, a yes or no for every need and container, forbidden pairs of them for opened lives, systems and sets. No
 * groups, no slots, no opening days. One list of the least each measure can be, each with those before it held.
 */
function secondOpinion(ask: AllocationAsk, step: number): readonly number[] {
  const rows: { sum: Sum; bound: Bound }[] = [];
  const ints = new Set<string>();
  const dayOf = (on: CalendarDate) => (on < ask.today ? ask.today : on);
  const needs = ask.needs.map((need) => ({ ...need, day: dayOf(need.on), amount: need.amount / step }));
  const free = ask.containers.map(
    ({ left, promisedTo = [] }) => Math.max(0, left - promisedTo.reduce((sum, one) => sum + one.amount, 0)) / step,
  );
  const sumOf = (...terms: readonly (readonly [string, number])[]) => {
    const sum: Sum = new Map();
    for (const [name, times] of terms) sum.set(name, (sum.get(name) ?? 0) + times);
    return sum;
  };
  const row = (sum: Sum, bound: Bound) => rows.push({ sum, bound });
  const yes = (name: string) => {
    if (ints.has(name)) return;
    ints.add(name);
    row(sumOf([name, 1]), { max: 1 });
  };
  const pairs = needs.flatMap((need, n) =>
    ask.containers.flatMap((container, c) => {
      const take = { needId: need.id, containerId: container.id, amount: milligrams(step) };
      return checkAllocation(ask, [take]).length ? [] : [{ need, n, container, c, x: `x${n}_${c}`, y: `y${n}_${c}` }];
    }),
  );
  for (const { need, c, x, y } of pairs) {
    ints.add(x);
    yes(y);
    row(sumOf([x, 1], [y, -Math.min(need.amount, free[c] ?? 0)]), { max: 0 });
  }
  needs.forEach((need, n) => {
    ints.add(`s${n}`);
    const of = pairs.filter((pair) => pair.n === n).map(({ x }) => [x, 1] as const);
    row(sumOf(...of, [`s${n}`, 1]), { min: need.amount, max: need.amount });
  });
  free.forEach((amount, c) => {
    const of = pairs.filter((pair) => pair.c === c).map(({ x }) => [x, 1] as const);
    if (of.length) row(sumOf(...of), { max: amount });
  });
  // Two takes that may each be, but not both: the rules are asked, one pair at a time.
  pairs.forEach((one, nr) => {
    for (const other of pairs.slice(nr + 1)) {
      const both = [one, other].map(({ need, container }) => ({
        needId: need.id,
        containerId: container.id,
        amount: milligrams(step),
      }));
      const faults = checkAllocation(ask, both).filter(({ code }) => code !== 'over-drawn' && code !== 'over-met');
      if (faults.length) row(sumOf([one.y, 1], [other.y, 1]), { max: 1 });
    }
  });

  const objectives: Sum[] = [...new Set(needs.map(({ day }) => day))]
    .sort()
    .map((day) => sumOf(...needs.flatMap((need, n) => (need.day === day ? [[`s${n}`, 1] as const] : []))));
  const [splits, changes]: [Sum, Sum] = [new Map(), new Map()];
  const surfaces = new Map<string, number[]>();
  needs.forEach((need, n) => {
    // In these asks all needs of a surface and a part share a product.
    const key = `${need.surface} ${need.part ?? ''}`;
    surfaces.set(key, [...(surfaces.get(key) ?? []), n]);
  });
  [...surfaces.values()].forEach((members, nr) => {
    const of = pairs.filter(({ n }) => members.includes(n));
    const already = (ask.used ?? []).filter(({ surface, part, productId }) =>
      members.some((n) => {
        const need = needs[n];
        return need?.surface === surface && need.part === part && need.productIds.includes(productId);
      }),
    );
    const lots = [...new Set([...already, ...of.map(({ container }) => container)].map(({ lotId }) => lotId))];
    if (lots.length < 2) return;
    for (const lot of lots) yes(`u${nr}_${lot}`);
    for (const { lotId } of already) row(sumOf([`u${nr}_${lotId}`, 1]), { min: 1 });
    for (const { container, y } of of) row(sumOf([y, 1], [`u${nr}_${container.lotId}`, -1]), { max: 0 });
    yes(`z${nr}`);
    ints.add(`e${nr}`);
    row(sumOf(...lots.map((lot) => [`u${nr}_${lot}`, 1] as const), [`e${nr}`, -1]), { max: 1 });
    row(sumOf([`e${nr}`, 1], [`z${nr}`, -(lots.length - 1)]), { max: 0 });
    splits.set(`z${nr}`, 1);
    changes.set(`e${nr}`, 1);
  });
  const byValue = ask.containers.every(({ left, price }) => left === 0 || price !== undefined);
  const limits = [...new Set(ask.containers.map(({ lastGoodDay }) => lastGoodDay ?? '9999'))].sort();
  const [waste, opened, order]: [Sum, Sum, Sum] = [new Map(), new Map(), new Map()];
  ask.containers.forEach((container, c) => {
    const of = pairs.filter((pair) => pair.c === c);
    const { lastGoodDay, openedLife, sealed, held } = container;
    for (const { x } of of) order.set(x, limits.indexOf(lastGoodDay ?? '9999'));
    if (sealed && of.length) {
      yes(`o${c}`);
      opened.set(`o${c}`, 1);
      for (const { y } of of) row(sumOf([y, 1], [`o${c}`, -1]), { max: 0 });
    }
    if (held || (lastGoodDay && lastGoodDay < ask.today)) return;
    const always = lastGoodDay !== undefined && lastGoodDay <= ask.wasteUntil;
    // Opened by a need so early that what is left over is past its opened life in time to be waste.
    const early = of.filter(({ need }) => sealed && openedLife && addLife(need.day, openedLife) <= ask.wasteUntil);
    if (!always && early.length === 0) return;
    ints.add(`w${c}`);
    waste.set(`w${c}`, byValue ? (container.price ?? 0) / 100 : 1);
    const drawn = of.map(({ x }) => [x, 1] as const);
    const left = free[c] ?? 0;
    if (always) row(sumOf([`w${c}`, 1], ...drawn), { min: left });
    else for (const { y } of early) row(sumOf([`w${c}`, 1], ...drawn, [y, -left]), { min: 0 });
  });
  objectives.push(splits, changes, waste, opened, order);

  return objectives.map((objective) => {
    if (objective.size === 0) return 0;
    const least = Math.round(solveLeast(objective, rows, ints));
    row(objective, { max: least });
    return least;
  });
}

function solveLeast(objective: Sum, rows: readonly { sum: Sum; bound: Bound }[], ints: ReadonlySet<string>): number {
  const variables: Record<string, Record<string, number>> = {};
  const put = (name: string, key: string, times: number) => {
    variables[name] = { ...variables[name], [key]: times };
  };
  for (const name of ints) put(name, 'none', 0);
  for (const [name, times] of objective) put(name, 'value', times);
  rows.forEach(({ sum }, nr) => {
    for (const [name, times] of sum) put(name, `r${nr}`, times);
  });
  const answer = solver.Solve({
    optimize: 'value',
    opType: 'min',
    constraints: Object.fromEntries(rows.map(({ bound }, nr) => [`r${nr}`, bound])),
    variables,
    ints: Object.fromEntries([...ints].map((name) => [name, 1])),
  });
  const { feasible, result } = answer as { feasible: boolean; result: number };
  if (!feasible) throw new Error('The second solver finds nothing.');
  return result;
}

describe('a second solver, asked in another way', () => {
  it('comes to the same measures in 120 small cases', async () => {
    for (let seed = 1001; seed <= 1120; seed += 1) {
      const ask = smallAsk(seed);
      const found = unwrap(await allocate(ask, solveProgram, { timeLimitSeconds: 10 }));
      const step = ask.needs.some(({ amount }) => amount % 250)
        ? ask.needs.some(({ amount }) => amount % 7)
          ? 1
          : 7
        : 250;
      const ours = vectorOf(ask, found.takes);
      // Shortage, waste and order are amounts; waste may be money besides.
      const days = new Set(ask.needs.map((need) => dayOfNeed(need, ask.today))).size;
      const byValue = found.measures.wasteBy === 'value';
      const inSteps = ours.map((value, at) => {
        if (at < days || at === days + 4) return value / step;
        return at === days + 2 ? value / step / (byValue ? 100 : 1) : value;
      });
      expect({ seed, measures: inSteps }).toEqual({ seed, measures: secondOpinion(ask, step) });
    }
  });
});
