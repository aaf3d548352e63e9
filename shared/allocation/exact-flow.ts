import { choiceOf, type Problem } from '@/shared/allocation/problem';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

/** What a solve has decided that is yes or no, or a count; amounts follow from it. */
export type Decisions = {
  /** How many containers are opened for each slot; 1 for a slot that is open. */
  readonly opened: readonly number[];
  /** The choice of each batch; undefined where it has none to make. */
  readonly choices: readonly (string | undefined)[];
  /** The lots each surface may have. */
  readonly lots: readonly ReadonlySet<string>[];
  /** Short amounts by day, in steps of the problem. */
  readonly short: ReadonlyMap<CalendarDate, number>;
};

type Arc = { readonly to: number; room: number; readonly waste: number; readonly order: number; readonly back: number };

/**
 * The amounts, in whole steps, that follow from what was decided: least waste, and of that the earliest to expire, found
 * in whole numbers by cheapest augmenting paths, so that no rounding of a solver's can lose a milligram. One list of
 * `[slot, amount]` for each need; undefined when the amounts cannot all be had so.
 */
export function exactFlow(
  problem: Problem,
  decisions: Decisions,
): readonly (readonly [number, number][])[] | undefined {
  const { needs, slots, groups, batches, step } = problem;
  const days = [...decisions.short].filter(([, amount]) => amount > 0);
  const firstSlot = 1 + needs.length;
  const firstDay = firstSlot + slots.length;
  const sink = firstDay + days.length;
  const arcs: Arc[][] = Array.from({ length: sink + 1 }, () => []);
  const join = (from: number, to: number, room: number, waste = 0, order = 0) => {
    const [there, back] = [arcs[from] ?? [], arcs[to] ?? []];
    there.push({ to, room, waste, order, back: back.length });
    back.push({ to: from, room: 0, waste: -waste, order: -order, back: there.length - 1 });
  };

  let wanted = 0;
  needs.forEach((need, nr) => {
    const amount = need.need.amount / step;
    wanted += amount;
    join(0, 1 + nr, amount);
    const batch = need.batch === undefined ? undefined : batches[need.batch];
    const choice = need.batch === undefined ? undefined : decisions.choices[need.batch];
    for (const at of need.slots) {
      const slot = slots[at];
      if (!slot || (batch && choice !== undefined && choiceOf(slot, batch) !== choice)) continue;
      if (!decisions.lots[need.surface]?.has(groups[slot.group]?.lot ?? '')) continue;
      join(1 + nr, firstSlot + at, amount);
    }
    days.forEach(([day], d) => {
      if (day === need.day) join(1 + nr, firstDay + d, amount);
    });
  });
  slots.forEach((slot, at) => {
    const group = groups[slot.group];
    const room = ((group?.each ?? 0) / step) * (decisions.opened[at] ?? 0);
    if (room > 0) join(firstSlot + at, sink, room, slot.wasted ? -(group?.weight ?? 0) : 0, group?.rank ?? 0);
  });
  days.forEach(([, amount], d) => {
    join(firstDay + d, sink, amount);
  });

  for (let sent = 0; sent < wanted; ) {
    const more = sendCheapest(arcs, sink, wanted - sent);
    if (more === 0) return undefined;
    sent += more;
  }
  return needs.map((_, nr) =>
    (arcs[1 + nr] ?? []).flatMap(({ to, back }): [number, number][] => {
      const drawn = to >= firstSlot && to < firstDay ? (arcs[to]?.[back]?.room ?? 0) : 0;
      return drawn > 0 ? [[to - firstSlot, drawn]] : [];
    }),
  );
}

/** Sends as much as fits along the cheapest path from 0 to the sink, by waste and then by order; 0 when there is none. */
function sendCheapest(arcs: readonly (readonly Arc[])[], sink: number, atMost: number): number {
  const waste = new Float64Array(arcs.length).fill(Infinity);
  const order = new Float64Array(arcs.length).fill(Infinity);
  const cameBy: (readonly [number, Arc] | undefined)[] = arcs.map(() => undefined);
  const waiting = new Set([0]);
  waste[0] = 0;
  order[0] = 0;
  for (const from of waiting) {
    waiting.delete(from);
    for (const arc of arcs[from] ?? []) {
      if (arc.room === 0) continue;
      const [w, o] = [(waste[from] ?? 0) + arc.waste, (order[from] ?? 0) + arc.order];
      const known = waste[arc.to] ?? Infinity;
      if (w > known || (w === known && o >= (order[arc.to] ?? Infinity))) continue;
      waste[arc.to] = w;
      order[arc.to] = o;
      cameBy[arc.to] = [from, arc];
      waiting.add(arc.to);
    }
  }
  const path: Arc[] = [];
  for (let at = sink; at !== 0; ) {
    const step = cameBy[at];
    if (!step) return 0;
    path.push(step[1]);
    at = step[0];
  }
  const sent = Math.min(atMost, ...path.map(({ room }) => room));
  for (const arc of path) {
    arc.room -= sent;
    const back = arcs[arc.to]?.[arc.back];
    if (back) back.room += sent;
  }
  return sent;
}
