import { countCrossings } from '@/shared/trace/count-crossings';
import { rankTrace } from '@/shared/trace/rank-trace';
import type { TraceEdge, TraceKey } from '@/shared/trace/trace-graph';

/** Where a thing stands: columns and rows from 0; a row may be a half where a shorter column is centred. */
type TraceSpot = { readonly key: TraceKey; readonly column: number; readonly row: number };

/** A line of the picture, by way of a spot in every column it passes. */
type TraceLine = TraceEdge & { readonly through: readonly { readonly column: number; readonly row: number }[] };

export type TraceLayout = {
  readonly spots: readonly TraceSpot[];
  readonly lines: readonly TraceLine[];
  readonly columns: number;
  readonly rows: number;
};

type Chain = TraceEdge & { readonly slots: readonly string[] };

/** Sweeps there and back; more of them changed nothing in graphs of this depth. */
const SWEEPS = 6;

/**
 * Lays a trace out in columns, left to right, with few lines crossing: a thing is put where its neighbours in the column
 * before, then in the one after, have their middle (the barycentre), for some sweeps there and back, and the order with the
 * fewest crossings is kept. A line over more than one column keeps a row free in each that it passes. The same things in
 * the same order give the same picture; double things and edges count once; an edge to a thing that is not there is left out.
 *
 * One lot in one container in one lift of one job: four columns, one row, no crossing.
 *
 * Source: K. Sugiyama, S. Tagawa, M. Toda, "Methods for Visual Understanding of Hierarchical System Structures", IEEE
 * Trans. Systems, Man, and Cybernetics SMC-11(2), 1981 (from memory).
 */
export function layOutTrace(things: readonly TraceKey[], edges: readonly TraceEdge[]): TraceLayout {
  const keys = [...new Set(things)];
  const ranks = rankTrace(keys, edges);
  const columns: string[][] = Array.from({ length: Math.max(-1, ...ranks.values()) + 1 }, () => []);
  for (const key of keys) columns[ranks.get(key) ?? 0]?.push(key);

  const chains = chainsOf(edges, ranks);
  for (const { slots, from } of chains) {
    for (const [step, slot] of slots.entries()) {
      if (step > 0 && step < slots.length - 1) columns[(ranks.get(from) ?? 0) + step]?.push(slot);
    }
  }
  const links = chains.flatMap(({ slots }) => slots.slice(1).map((to, nr) => [slots[nr] ?? to, to] as const));
  const ordered = fewestCrossings(columns, links);

  const rows = Math.max(0, ...ordered.map((column) => column.length));
  const spots = new Map<string, { column: number; row: number }>();
  for (const [column, slots] of ordered.entries()) {
    for (const [nr, slot] of slots.entries()) spots.set(slot, { column, row: nr + (rows - slots.length) / 2 });
  }
  return {
    spots: keys.flatMap((key) => {
      const spot = spots.get(key);
      return spot ? [{ key, ...spot }] : [];
    }),
    lines: chains.map(({ from, to, slots }) => ({ from, to, through: slots.flatMap((slot) => spots.get(slot) ?? []) })),
    columns: ordered.length,
    rows,
  };
}

function chainsOf(edges: readonly TraceEdge[], ranks: ReadonlyMap<TraceKey, number>): Chain[] {
  const seen = new Set<string>();
  return edges.flatMap(({ from, to }) => {
    const [left, right] = [ranks.get(from), ranks.get(to)];
    const name = `${from}>${to}`;
    if (left === undefined || right === undefined || left >= right || seen.has(name)) return [];
    seen.add(name);
    const between = Array.from({ length: right - left - 1 }, (_, nr) => `${name}@${left + nr + 1}`);
    return [{ from, to, slots: [from, ...between, to] }];
  });
}

type Links = readonly (readonly [string, string])[];

function fewestCrossings(columns: readonly string[][], links: Links): readonly (readonly string[])[] {
  const before = neighbours(links.map(([from, to]) => [to, from] as const));
  const after = neighbours(links);
  let order: readonly (readonly string[])[] = columns;
  let best = { order, crossings: countCrossings(order, links) };
  for (let sweep = 0; sweep < SWEEPS && best.crossings > 0; sweep += 1) {
    order = sweep % 2 === 0 ? sweepOnce(order, before) : [...sweepOnce([...order].reverse(), after)].reverse();
    const crossings = countCrossings(order, links);
    if (crossings < best.crossings) best = { order, crossings };
  }
  return best.order;
}

function neighbours(links: Links): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const [from, to] of links) {
    const there = found.get(from);
    if (there) there.push(to);
    else found.set(from, [to]);
  }
  return found;
}

/** Each column in turn sorted by the middle of its neighbours in the one before it; what has none stays about where it is. */
function sweepOnce(order: readonly (readonly string[])[], of: ReadonlyMap<string, readonly string[]>) {
  const sorted: (readonly string[])[] = [];
  for (const column of order) {
    const fixed = sorted.at(-1);
    if (!fixed) {
      sorted.push(column);
      continue;
    }
    const at = new Map(fixed.map((slot, nr) => [slot, (nr + 0.5) / fixed.length]));
    const middle = (slot: string, nr: number) => {
      const places = (of.get(slot) ?? []).flatMap((each) => at.get(each) ?? []);
      if (places.length === 0) return (nr + 0.5) / column.length;
      return places.reduce((sum, place) => sum + place, 0) / places.length;
    };
    const aimed = column.map((slot, nr) => ({ slot, nr, aim: middle(slot, nr) }));
    sorted.push(aimed.sort((a, b) => a.aim - b.aim || a.nr - b.nr).map(({ slot }) => slot));
  }
  return sorted;
}
