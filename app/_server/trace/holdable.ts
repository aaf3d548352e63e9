import type { TraceNode } from '@/app/_server/trace/name-things';
import type { Traced } from '@/app/_server/trace/trace-from';

const isLeft = ({ kind, left }: TraceNode) => (kind === 'container' || kind === 'piece') && (left?.amount ?? 0) > 0;

/** What is on hold by a hold of its own, or of its lot. */
export const isHeld = ({ hold, lotHold }: Pick<TraceNode, 'hold' | 'lotHold'>): boolean =>
  (hold ?? 'free') !== 'free' || (lotHold ?? 'free') !== 'free';

/** What of a trace can be held: its lots, and what is left of it in the shop; and which of both are still free. */
export type Holdable = { left: TraceNode[]; free: TraceNode[]; lots: TraceNode[]; freeLots: TraceNode[] };

/**
 * What is left of a trace in the shop: containers with something in them and pieces on the shelf, and which are still free.
 * A lot is held beside them even where nothing of it is left, for what of it is still to come.
 */
export function leftOf({ nodes }: Pick<Traced, 'nodes'>): Holdable {
  const left = nodes.filter(isLeft);
  const lots = nodes.filter(({ kind }) => kind === 'lot');
  const free = (each: TraceNode) => !isHeld(each);
  return { left, free: left.filter(free), lots, freeLots: lots.filter(free) };
}
