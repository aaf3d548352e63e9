import { nameThings, type TraceNode } from '@/app/_server/trace/name-things';
import type { TraceReader } from '@/app/_server/trace/trace-steps';
import { walkTrace } from '@/app/_server/trace/walk-trace';
import { type TraceEdge, type TraceKind, traceKey } from '@/shared/trace/trace-graph';

export type TraceStart = { readonly kind: TraceKind; readonly id: number };

export type Traced = {
  readonly start: TraceNode;
  readonly nodes: readonly TraceNode[];
  readonly edges: readonly TraceEdge[];
  /** Things that were reached and are not shown: there were too many. */
  readonly leftOut: number;
};

/** More things than anybody follows on a screen. */
const MOST_THINGS = 2_000;

/**
 * Where a lot, a container, a lift, a job, a piece, a sample or a fault came from and where it went, as the book stands; undefined
 * where there is no such thing. Entries that were reversed count for nothing.
 */
export async function traceFrom(
  tx: TraceReader,
  start: TraceStart,
  { wide = false, most = MOST_THINGS }: { wide?: boolean; most?: number } = {},
): Promise<Traced | undefined> {
  const walked = await walkTrace(tx, start, { wide, most });
  const { nodes, hanging } = await nameThings(tx, walked.found, most);
  const first = nodes.find(({ key }) => key === traceKey(start.kind, start.id));
  if (!first) return undefined;
  const there = new Set(nodes.map(({ key }) => key));
  const seen = new Set(walked.edges.map(({ from, to }) => `${from}>${to}`));
  const edges = [...walked.edges, ...hanging.filter(({ from, to }) => !seen.has(`${from}>${to}`))];
  return {
    start: first,
    nodes,
    edges: edges.filter(({ from, to }) => there.has(from) && there.has(to)),
    leftOut: walked.leftOut,
  };
}
