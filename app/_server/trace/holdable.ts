import type { TraceNode } from '@/app/_server/trace/name-things';
import type { Traced } from '@/app/_server/trace/trace-from';

const isLeft = ({ kind, left }: TraceNode) => (kind === 'container' || kind === 'piece') && (left?.amount ?? 0) > 0;

/** What is left of a trace in the shop: containers with something in them and pieces on the shelf, and which are still free. */
export function leftOf({ nodes }: Pick<Traced, 'nodes'>): { left: TraceNode[]; free: TraceNode[] } {
  const left = nodes.filter(isLeft);
  return { left, free: left.filter(({ hold }) => hold === 'free') };
}
