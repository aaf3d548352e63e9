import { lotRows } from '@/shared/allocation/lot-rows';
import { choiceOf, type Problem } from '@/shared/allocation/problem';
import type { Program, Row, Term } from '@/shared/allocation/program';
import { orderTerms, splitWeight, wasteAtRest, wasteTerms } from '@/shared/allocation/program-sums';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** What is made least in one solve, in the order in which they count. */
export type Stage =
  | { readonly of: 'short'; readonly on: CalendarDate }
  | { readonly of: 'lots' | 'waste' | 'opened' | 'order' };

/** What earlier solves have settled, in steps of the problem: it may not get worse. */
export type Settled = {
  /** Short amounts by day; a day that is not named has none. Undefined while shortage is still being looked for. */
  readonly short: ReadonlyMap<CalendarDate, number>;
  /** Days whose shortage is not settled yet. */
  readonly openDays: ReadonlySet<CalendarDate>;
  readonly lots?: number;
  readonly waste?: number;
  readonly opened?: number;
  /** Variables that keep the value they have. */
  readonly kept?: ReadonlyMap<string, number>;
};

/** Float rows of whole numbers are held to the number with this much to spare, in steps: far below one. */
const SPARE = 1e-3;

/**
 * The integer programme of a problem and a stage. Amounts are in units of the problem, objectives in its
 * steps. `x` is how much a need draws from a
 * slot, `k` how many containers of a group are opened for a slot, `b` the system or set a batch is of, `u` whether a
 * surface has some of a lot, `z` whether it is split and `e` its lots beyond the first, `s` what a need is short. A lot that
 * a surface has already is a yes from the first.
 *
 * `implied` are the rows of `lotRows`, for a caller that builds several programmes of one problem.
 *
 * Amounts need not be asked for as whole numbers: once the others are settled, what is left is a transport of whole
 * amounts between needs and slots, whose corners are whole.
 */
export function buildProgram(
  problem: Problem,
  stage: Stage,
  settled: Settled,
  implied: readonly Row[] = lotRows(problem),
): Program {
  const { needs, groups, slots, batches, surfaces, step, unit } = problem;
  const stepsInUnit = unit / step;
  const rows: Row[] = [];
  const most = new Map<string, number>();
  const whole = new Set<string>();
  const shortDays = new Set([...settled.short.keys(), ...settled.openDays]);
  const x = (need: number, slot: number): Term => ({ name: `x${need}_${slot}`, times: 1 });
  const row = (terms: readonly Term[], sense: Row['sense'], bound: number) => {
    if (terms.length) rows.push({ terms, sense, bound });
  };
  const binary = (name: string) => {
    whole.add(name);
    most.set(name, 1);
  };

  needs.forEach(({ need, day, slots: from }, nr) => {
    const amount = need.amount / unit;
    const short = shortDays.has(day) ? [{ name: `s${nr}`, times: 1 }] : [];
    row([...from.map((slot) => x(nr, slot)), ...short], '=', amount);
    for (const slot of from) most.set(`x${nr}_${slot}`, amount);
  });
  for (const [day, amount] of settled.short) row(inUnits(shortOn(day)), '<=', (amount + SPARE) / stepsInUnit);

  groups.forEach((group, nr) => {
    const each = group.each / unit;
    for (const slot of group.slots) {
      const drawn = (slots[slot]?.needs ?? []).map((need) => x(need, slot));
      if (!group.sealed) {
        row(drawn, '<=', each);
        continue;
      }
      const opened = `k${slot}`;
      whole.add(opened);
      most.set(opened, group.containers.length);
      row([...drawn, { name: opened, times: -each }], '<=', 0);
      // Says no more for whole numbers, but keeps the solver from opening a hundredth of a tin.
      for (const { name } of drawn) {
        const amount = most.get(name) ?? 0;
        if (amount < each && drawn.length > 1)
          row(
            [
              { name, times: 1 },
              { name: opened, times: -amount },
            ],
            '<=',
            0,
          );
      }
    }
    if (group.sealed && group.slots.length > 1) {
      row(
        group.slots.map((slot) => ({ name: `k${slot}`, times: 1 })),
        '<=',
        groups[nr]?.containers.length ?? 0,
      );
    }
  });

  batches.forEach((batch, nr) => {
    if (batch.choices.length < 2) return;
    const names = batch.choices.map((_, choice) => `b${nr}_${choice}`);
    for (const name of names) binary(name);
    row(
      names.map((name) => ({ name, times: 1 })),
      '<=',
      1,
    );
    needs.forEach((need, at) => {
      if (need.batch !== nr) return;
      batch.choices.forEach((choice, c) => {
        const of = need.slots.filter((slot) => choiceOf(slots[slot] ?? neverASlot(), batch) === choice);
        if (of.length)
          row([...of.map((slot) => x(at, slot)), { name: names[c] ?? '', times: -(need.need.amount / unit) }], '<=', 0);
      });
    });
  });

  const splits: Term[] = [];
  const changes: Term[] = [];
  const oneLotEach = settled.lots === 0;
  const allMet = shortDays.size === 0;
  surfaces.forEach(({ lots, used: already }, nr) => {
    if (lots.length < 2) return;
    lots.forEach((lot, l) => {
      binary(`u${nr}_${l}`);
      if (already.includes(lot)) row([{ name: `u${nr}_${l}`, times: 1 }], '=', 1);
      needs.forEach((need, at) => {
        if (need.surface !== nr) return;
        const of = need.slots.filter((slot) => groups[slots[slot]?.group ?? -1]?.lot === lot);
        const bound = { name: `u${nr}_${l}`, times: -(need.need.amount / unit) };
        // A surface of one lot has the whole of each need from it: that says more than that it has no more.
        if (oneLotEach && allMet) row([...of.map((slot) => x(at, slot)), bound], '=', 0);
        else if (of.length) row([...of.map((slot) => x(at, slot)), bound], '<=', 0);
      });
    });
    const used = lots.map((_, l) => ({ name: `u${nr}_${l}`, times: 1 }));
    if (oneLotEach) {
      row(used, allMet ? '=' : '<=', 1);
      return;
    }
    binary(`z${nr}`);
    row([...used, { name: `e${nr}`, times: -1 }], '<=', 1);
    row(
      [
        { name: `e${nr}`, times: 1 },
        { name: `z${nr}`, times: -(lots.length - 1) },
      ],
      '<=',
      0,
    );
    splits.push({ name: `z${nr}`, times: splitWeight(problem) });
    changes.push({ name: `e${nr}`, times: 1 });
  });
  if (oneLotEach && allMet) rows.push(...implied);
  if (settled.lots !== undefined && settled.lots > 0) row([...splits, ...changes], '<=', settled.lots + SPARE);

  const waste = wasteTerms(problem);
  if (settled.waste !== undefined) {
    row(inUnits(waste), '<=', (settled.waste - wasteAtRest(problem) + SPARE) / stepsInUnit);
  }
  const opened = [...whole].filter((name) => name.startsWith('k')).map((name) => ({ name, times: 1 }));
  if (settled.opened !== undefined) row(opened, '<=', settled.opened + SPARE);
  for (const [name, value] of settled.kept ?? []) row([{ name, times: 1 }], '=', value);

  const objectives: Record<Exclude<Stage['of'], 'short'>, () => readonly Term[]> = {
    lots: () => [...splits, ...changes],
    waste: () => waste,
    opened: () => opened,
    order: () => orderTerms(problem),
  };
  return { minimise: stage.of === 'short' ? shortOn(stage.on) : objectives[stage.of](), rows, most, whole };

  /** Sums are in steps; as rows they are held in units, like every other row. */
  function inUnits(terms: readonly Term[]): readonly Term[] {
    return terms.map(({ name, times }) => ({ name, times: times / stepsInUnit }));
  }

  function shortOn(day: CalendarDate): Term[] {
    return needs.flatMap((need, nr) => (need.day === day ? [{ name: `s${nr}`, times: stepsInUnit }] : []));
  }
}

function neverASlot(): never {
  throw new Error('A need draws from slots that are there.');
}
