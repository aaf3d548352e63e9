import { kindOfKey, type TraceEdge, type TraceKey, type TraceKind } from '@/shared/trace/trace-graph';

const RANKS: Readonly<Record<Exclude<TraceKind, 'fault'>, number>> = {
  lot: 0,
  container: 1,
  lift: 2,
  // Beside the jobs: what a lift was poured for, and what was kept of it.
  sample: 3,
  job: 3,
  piece: 4,
};

/**
 * The column of each thing, counted from 0 without empty ones: lots, containers, lifts, jobs and samples, pieces, then what
 * was cut out of them, one column a cut, and faults last of all. An edge therefore always runs to the right, whatever order the
 * things come in; an edge that names a thing which is not there is passed over.
 *
 * `rankTrace(['lot:1', 'job:2'], [])` is `lot:1` in column 0 and `job:2` in column 1.
 */
export function rankTrace(keys: readonly TraceKey[], edges: readonly TraceEdge[]): ReadonlyMap<TraceKey, number> {
  const there = new Set(keys);
  const parents = new Map<TraceKey, TraceKey[]>();
  for (const { from, to } of edges) {
    if (kindOfKey(from) !== 'piece' || kindOfKey(to) !== 'piece' || !there.has(from)) continue;
    parents.set(to, [...(parents.get(to) ?? []), from]);
  }
  const depths = new Map<TraceKey, number>();
  const depthOf = (key: TraceKey): number => {
    const known = depths.get(key);
    if (known !== undefined) return known;
    // Set first, so that a ring, which no cut can make, ends.
    depths.set(key, 0);
    const depth = Math.max(0, ...(parents.get(key) ?? []).map((parent) => depthOf(parent) + 1));
    depths.set(key, depth);
    return depth;
  };
  const raw = new Map<TraceKey, number>();
  for (const key of keys) {
    const kind = kindOfKey(key);
    if (kind !== 'fault') raw.set(key, RANKS[kind] + (kind === 'piece' ? depthOf(key) : 0));
  }
  const last = Math.max(-1, ...raw.values()) + 1;
  for (const key of keys) if (!raw.has(key)) raw.set(key, last);
  const used = [...new Set(raw.values())].sort((a, b) => a - b);
  return new Map(keys.map((key) => [key, used.indexOf(raw.get(key) ?? 0)]));
}
